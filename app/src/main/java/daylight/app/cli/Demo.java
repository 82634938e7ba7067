package daylight.app.cli;

import daylight.app.Job;
import daylight.app.Progress;
import daylight.app.demo.DemoBook;
import daylight.app.demo.DemoFilms;
import daylight.app.web.Opened;
import daylight.archive.ResultFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
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
      "Answer invented properties: writes the field book of each, makes its footage, and puts the",
      "answered line beside both, so that you can look at all of it."
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

  @Option(
      names = "--open",
      negatable = true,
      description =
          "Then show all of them in a browser of this machine until Ctrl-C; default: on a terminal.")
  private @Nullable Boolean open;

  @Spec private @Nullable CommandSpec spec;

  @Override
  public Integer call() throws InterruptedException {
    Console console = Console.of(spec, json);
    int worst = ExitCode.DONE;
    for (String property : PROPERTIES) {
      worst = Math.max(worst, write(console, book(property), property));
    }
    // What stands in the way of one book is told before the minute that footage takes.
    for (String property : worst == ExitCode.DONE ? PROPERTIES : List.<String>of()) {
      worst = Math.max(worst, answer(console, book(property), property));
    }
    if (worst == ExitCode.DONE && (open == null ? !json && ProgressLine.isTerminal() : open)) {
      return Open.serve(
          console,
          PROPERTIES.stream().map(to::resolve).map(book -> new Opened(book, settings())).toList(),
          0,
          false,
          true);
    }
    return worst;
  }

  private Job.Settings settings() {
    return Job.Settings.USUAL.in(Spoken.chosen(spec));
  }

  private Path book(String property) {
    return to.resolve(property).resolve("field-book.yaml");
  }

  /** Writes a book, if it is not there already; another book there is left as it is. */
  private static int write(Console console, Path book, String property) {
    try {
      byte[] bytes = DemoBook.handedOut(property);
      if (Files.exists(book)) {
        return Arrays.equals(Files.readAllBytes(book), bytes)
            ? ExitCode.DONE
            : console.inTheWay(book);
      }
      Files.createDirectories(book.resolveSibling("."));
      Files.write(book, bytes);
      return ExitCode.DONE;
    } catch (IOException e) {
      return console.notWritten(book, e);
    }
  }

  private int answer(Console console, Path book, String property) {
    try {
      film(console, book, property);
    } catch (IOException e) {
      return console.notWritten(book.resolveSibling("footage"), e);
    }
    return switch (Job.answer(book, settings(), console.progress())) {
      case Job.Outcome.Refused refused -> console.refused(refused);
      case Job.Outcome.Answered answered -> {
        Path results = book.resolveSibling("answered");
        SortedMap<String, byte[]> files = answered.files();
        yield switch (ResultFolder.write(results, files)) {
          case ResultFolder.Outcome.Written written ->
              console.answered(answered.handout(), files, written.folder());
          case ResultFolder.Outcome.Refused refused -> console.notWritten(results, refused);
          case ResultFolder.Outcome.NotWanted _ -> ExitCode.NOT_WRITTEN;
        };
      }
    };
  }

  /** Makes the footage that the book names, where it is not there yet. */
  private static void film(Console console, Path book, String property) throws IOException {
    DemoFilms.make(
        DemoBook.filmed(property),
        book.toAbsolutePath().resolveSibling(".").normalize(),
        console.progress().begin(Progress.Step.FILMING, property));
  }
}
