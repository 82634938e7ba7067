package daylight.app.cli;

import daylight.line.measure.Argument;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The archive in one file. */
@Command(
    name = "backup",
    mixinStandardHelpOptions = true,
    description = "Save the whole archive into one file, as it is now; it may go on being used.")
final class Backup implements Callable<Integer> {
  @Parameters(paramLabel = "FILE", description = "The file to write; it must not be there yet.")
  private Path file = Path.of("archive.zip");

  @Mixin private ArchiveChoice archive = new ArchiveChoice();

  @Spec private @Nullable CommandSpec spec;

  @Override
  public Integer call() {
    CommandSpec here = ArchiveChoice.known(spec);
    return archive.open(
        here,
        false,
        open ->
            open.backup(file)
                .map(why -> archive.refused(here, why, ExitCode.NOT_WRITTEN))
                .orElseGet(
                    () -> {
                      archive.say(here, "cli.archive.saved", new Argument.Text(file.toString()));
                      archive.json(here, JsonReply.reply("saved").put("file", file.toString()));
                      return ExitCode.DONE;
                    }));
  }
}
