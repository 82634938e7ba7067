package daylight.app.cli;

import daylight.app.Progress;
import daylight.footage.codec.Footage;
import daylight.footage.codec.Opening;
import daylight.footage.counter.CounterReader;
import daylight.footage.counter.Found;
import daylight.footage.counter.Window;
import daylight.line.measure.Argument;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
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
  private static final Pattern REGION =
      Pattern.compile("(\\d{1,5}),(\\d{1,5}),(\\d{1,5}),(\\d{1,5})");

  /** How it is told. */
  enum Form {
    SENTENCES,
    CSV,
    JSON
  }

  @Parameters(paramLabel = "VIDEO", description = "A recording in any usual format.")
  private Path video = Path.of("");

  @Option(
      names = "--csv",
      description = "Print one row a frame: time_s,distance_m,shown,state; time from the first.")
  private boolean csv;

  @Option(names = "--json", description = "Print one JSON object instead of sentences.")
  private boolean json;

  @Option(
      names = "--region",
      paramLabel = "X,Y,W,H",
      description = "Where the counter stands, in pixels from the top left; default: look for it.")
  private @Nullable String region;

  @Spec private @Nullable CommandSpec spec;

  @Override
  public Integer call() {
    StillConsole console = StillConsole.of(spec, json);
    Window window = null;
    if (region != null) {
      Matcher told = REGION.matcher(region.strip());
      if (!told.matches() || told.group(3).matches("0+") || told.group(4).matches("0+")) {
        return console.misunderstood(
            console.say("cli.counter.region", new Argument.Text(region.strip())));
      }
      window = new Window(number(told, 1), number(told, 2), number(told, 3), number(told, 4));
    }
    return switch (Footage.open(video, console.begin(Progress.Step.READING, video))) {
      case Opening.Refused(var why) -> console.refused(video, why);
      case Opening.Stopped() -> ExitCode.NOT_WRITTEN;
      case Opening.Opened(Footage footage) -> {
        try (footage) {
          yield read(footage, window, console);
        } catch (IOException e) {
          yield console.broken(video, e);
        }
      }
    };
  }

  private static int number(Matcher told, int group) {
    return Integer.parseInt(told.group(group));
  }

  private int read(Footage footage, @Nullable Window window, StillConsole console)
      throws IOException {
    if (window != null
        && (window.left() + window.width() > footage.recording().width()
            || window.top() + window.height() > footage.recording().height())) {
      return console.misunderstood(console.say("cli.counter.outside"));
    }
    CounterConsole said = console.counter(csv ? Form.CSV : json ? Form.JSON : Form.SENTENCES);
    return switch (CounterReader.read(
        footage, window, console.begin(Progress.Step.READING, video))) {
      case Found.Counter counter -> said.told(video, counter);
      case Found.None(var why) -> said.none(video, why);
      case Found.Stopped() -> ExitCode.NOT_WRITTEN;
    };
  }
}
