package daylight.app.cli;

import daylight.app.Job;
import daylight.archive.ResultFolder;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The main job on properties that were made up. */
@Command(
    name = "demo",
    mixinStandardHelpOptions = true,
    description = {
      "Answer invented properties: writes the field book of each and the answered line beside it, so",
      "that you can look at both."
    })
final class Demo implements Callable<Integer> {
  private static final List<String> PROPERTIES =
      List.of("shop-roof-drain", "house-sewer", "wash-down-pit");

  @Option(
      names = "--to",
      paramLabel = "DIR",
      description = "Folder to write into; default: ${DEFAULT-VALUE}.",
      defaultValue = "daylight-demo")
  private Path to = Path.of("daylight-demo");

  @Option(names = "--json", description = "Print a JSON object for each instead of sentences.")
  private boolean json;

  @Spec private @Nullable CommandSpec spec;

  @Override
  public Integer call() {
    Console console = Console.of(spec, json);
    int worst = ExitCode.DONE;
    for (String property : PROPERTIES) {
      worst = Math.max(worst, answer(console, property));
    }
    return worst;
  }

  private int answer(Console console, String property) {
    Path folder = to.resolve(property);
    Path book = folder.resolve("field-book.yaml");
    try (InputStream in = Job.class.getResourceAsStream("demo/" + property + ".yaml")) {
      if (in == null) {
        throw new IllegalStateException("no demo property " + property);
      }
      Files.createDirectories(folder);
      Files.write(book, in.readAllBytes());
    } catch (IOException e) {
      return console.notWritten(book, e);
    }
    return switch (Job.answer(book, Job.Settings.USUAL, console.progress())) {
      case Job.Outcome.Refused refused -> console.refused(refused);
      case Job.Outcome.Answered answered -> {
        Path results = folder.resolve("answered");
        SortedMap<String, byte[]> files = answered.files();
        yield switch (ResultFolder.write(results, files)) {
          case ResultFolder.Outcome.Written written ->
              console.answered(answered.handout(), files, written.folder());
          case ResultFolder.Outcome.Refused refused -> console.notWritten(results, refused);
        };
      }
    };
  }
}
