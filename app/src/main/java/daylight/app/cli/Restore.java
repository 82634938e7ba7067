package daylight.app.cli;

import daylight.archive.store.Archive;
import daylight.line.measure.Argument;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** An archive back from its file. */
@Command(
    name = "restore",
    mixinStandardHelpOptions = true,
    description = "Bring an archive back from its file, into a folder that is empty or not there.")
final class Restore implements Callable<Integer> {
  @Parameters(paramLabel = "FILE", description = "What backup wrote.")
  private Path file = Path.of("archive.zip");

  @Mixin private ArchiveChoice archive = new ArchiveChoice();

  @Spec private @Nullable CommandSpec spec;

  @Override
  public Integer call() {
    CommandSpec here = ArchiveChoice.known(spec);
    return Archive.restore(file, archive.folder())
        .map(why -> archive.refused(here, why, ExitCode.NOT_WRITTEN))
        .orElseGet(
            () -> {
              Argument where = new Argument.Text(archive.folder().toString());
              archive.say(here, "cli.archive.restored", where);
              archive.json(
                  here, JsonReply.reply("restored").put("folder", archive.folder().toString()));
              return ExitCode.DONE;
            });
  }
}
