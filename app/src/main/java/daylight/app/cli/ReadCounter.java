package daylight.app.cli;

import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Reads the counter that is burned into a recording. */
@Command(
    name = "counter",
    mixinStandardHelpOptions = true,
    description = {
      "Find the distance counter that is burned into a recording and read it on every frame. What",
      "was read, what was bridged and what is not known are told apart. Exit code 1 if there is no",
      "figure that is convincingly a distance."
    })
final class ReadCounter implements Callable<Integer> {
  /** How it is told. */
  enum Form {
    SENTENCES,
    CSV,
    JSON
  }

  @Mixin private Video video = new Video();

  @Option(
      names = "--csv",
      description = "Print one row a frame: time_s,distance_m,shown,state; time from the first.")
  private boolean csv;

  @Spec private @Nullable CommandSpec spec;

  @Override
  public Integer call() {
    VideoConsole console = VideoConsole.of(spec, video.json());
    Form form = csv ? Form.CSV : video.json() ? Form.JSON : Form.SENTENCES;
    return video.open(
        console,
        footage ->
            video.counterAnew(
                footage, console, found -> console.counter(form).told(video.file(), found)));
  }
}
