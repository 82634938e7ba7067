package daylight.app.cli;

import daylight.app.Progress;
import daylight.app.track.CounterCache;
import daylight.app.track.Seen;
import daylight.footage.codec.Footage;
import daylight.footage.codec.Opening;
import daylight.footage.counter.Found;
import daylight.footage.counter.Window;
import daylight.line.measure.Argument;
import java.io.IOException;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * The recording that a command is about: opened for it, its counter read where that is wanted, and
 * told why where either cannot be. Ctrl-C ends the work with nothing half-written.
 */
final class Video {
  private static final Pattern REGION =
      Pattern.compile("(\\d{1,5}),(\\d{1,5}),(\\d{1,5}),(\\d{1,5})");

  @Parameters(paramLabel = "VIDEO", description = "A recording in any usual format.")
  private Path file = Path.of("");

  @Option(
      names = "--region",
      paramLabel = "X,Y,W,H",
      description = "Where the counter stands, in pixels from the top left; default: look for it.")
  private @Nullable String region;

  @Option(names = "--json", description = "Print one JSON object instead of sentences.")
  private boolean json;

  private Seen seen = Seen.of(file);
  private CounterCache cache = CounterCache.usual();

  /** What a command does with a thing that had to be brought first. */
  interface Work<T> {
    /** Returns the exit code. */
    int with(T thing) throws IOException;
  }

  Path file() {
    return file;
  }

  boolean json() {
    return json;
  }

  /** Its name beside it with another ending. */
  Path beside(String ending) {
    String name = String.valueOf(file.getFileName());
    int dot = name.lastIndexOf('.');
    return file.resolveSibling((dot > 0 ? name.substring(0, dot) : name) + ending);
  }

  /** Opens the recording; whoever works with it need not close it. */
  int open(VideoConsole console, Work<Footage> work) {
    seen = Seen.of(file);
    try (Halt halt = Halt.begin()) {
      console.endBy(halt);
      return switch (Footage.open(file, console.begin(Progress.Step.READING, file))) {
        case Opening.Refused(var why) -> console.refused(file, why);
        case Opening.Stopped() -> console.stopped();
        case Opening.Opened(Footage footage) -> {
          try (footage) {
            yield work.with(footage);
          } catch (IOException e) {
            yield console.broken(file, e);
          }
        }
      };
    }
  }

  /** Brings the counter of the recording as {@link #counter} does; reads it anew each time. */
  int counterAnew(Footage footage, VideoConsole console, Work<Found.Counter> work)
      throws IOException {
    cache = new CounterCache(null);
    return counter(footage, console, work);
  }

  /**
   * Brings the counter of the recording, as it was read before, else read now; without one the
   * command ends.
   */
  int counter(Footage footage, VideoConsole console, Work<Found.Counter> work) throws IOException {
    return counter(footage, console, work, none -> console.noCounter(file, none.why()));
  }

  /** The same where something can be done without a counter, too. */
  int counter(
      Footage footage, VideoConsole console, Work<Found.Counter> work, Work<Found.None> otherwise)
      throws IOException {
    Window window = null;
    if (region != null) {
      Matcher told = REGION.matcher(region.strip());
      if (!told.matches() || told.group(3).matches("0+") || told.group(4).matches("0+")) {
        return console.misunderstood(
            console.say("cli.counter.region", new Argument.Text(region.strip())));
      }
      window = new Window(number(told, 1), number(told, 2), number(told, 3), number(told, 4));
      if (window.left() + window.width() > footage.recording().width()
          || window.top() + window.height() > footage.recording().height()) {
        return console.misunderstood(console.say("cli.counter.outside"));
      }
    }
    return switch (cache.read(
        seen, footage, window, () -> console.begin(Progress.Step.COUNTING, file))) {
      case Found.Counter counter -> work.with(counter);
      case Found.None none -> otherwise.with(none);
      case Found.Stopped() -> console.stopped();
    };
  }

  private static int number(Matcher told, int group) {
    return Integer.parseInt(told.group(group));
  }
}
