package daylight.app.cli;

import daylight.app.Progress;
import daylight.archive.ResultFolder;
import daylight.footage.Frame;
import daylight.footage.codec.Footage;
import daylight.footage.codec.Jpeg;
import daylight.footage.codec.Opening;
import daylight.line.measure.Parsed;
import daylight.line.measure.Quantities;
import daylight.line.measure.Reading;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What a recording is, and pictures from it. */
@Command(
    name = "still",
    mixinStandardHelpOptions = true,
    description = {
      "Say what a recording is, and take pictures from it: the very frame that is on display at a",
      "moment. Pictures are written into one folder, all or none. The recording is only read."
    })
final class Still implements Callable<Integer> {
  /** Minutes and seconds, or hours before them. */
  private static final Pattern CLOCK =
      Pattern.compile("(?:(\\d{1,3}):)?(\\d{1,4}):(\\d{1,2}(?:\\.\\d+)?)");

  @Parameters(paramLabel = "VIDEO", description = "A recording in any usual format.")
  private Path video = Path.of("");

  @Option(
      names = "--at",
      paramLabel = "MOMENT",
      description = "From the first frame, as 1:02.5, 62.5 s or 62.5; may be given several times.")
  private List<String> moments = new ArrayList<>();

  @Option(
      names = "--frame",
      paramLabel = "N",
      description = "A frame by its number, the first is 0; may be given several times.")
  private List<Integer> frames = new ArrayList<>();

  @Option(
      names = {"-o", "--out"},
      paramLabel = "DIR",
      description = "Folder for the pictures; default: the video's name with -stills, beside it.")
  private @Nullable Path out;

  @Option(names = "--json", description = "Print one JSON object instead of sentences.")
  private boolean json;

  @Spec private @Nullable CommandSpec spec;

  /**
   * A picture that was taken.
   *
   * @param file its name in the folder
   */
  record Taken(String file, int frame, double seconds) {}

  @Override
  public Integer call() {
    StillConsole console = StillConsole.of(spec, json);
    return switch (Footage.open(video, console.begin(Progress.Step.READING, video))) {
      case Opening.Refused(var why) -> console.refused(video, why);
      case Opening.Stopped() -> ExitCode.NOT_WRITTEN;
      case Opening.Opened(Footage footage) -> {
        try (footage) {
          yield take(footage, console);
        } catch (IOException e) {
          yield console.broken(video, e);
        }
      }
    };
  }

  private int take(Footage footage, StillConsole console) throws IOException {
    List<Integer> wanted = new ArrayList<>();
    for (String moment : moments) {
      OptionalInt frame = shownAt(footage, moment);
      if (frame.isEmpty()) {
        return console.misunderstood(
            "--at: "
                + moment
                + " is no moment of this recording, which runs "
                + StillConsole.clock(footage.recording().seconds()));
      }
      wanted.add(frame.getAsInt());
    }
    for (int frame : frames) {
      int last = footage.recording().frames() - 1;
      if (frame < 0 || frame > last) {
        return console.misunderstood("--frame: there are frames 0 to " + last + ", not " + frame);
      }
      wanted.add(frame);
    }
    SortedMap<String, byte[]> files = new TreeMap<>();
    List<Taken> taken = new ArrayList<>();
    footage.sweep(
        wanted,
        console.begin(Progress.Step.PICTURES, video),
        frame -> {
          String name = "frame-" + String.format(Locale.ROOT, "%06d", frame.number()) + ".jpg";
          files.put(name, jpeg(frame));
          taken.add(new Taken(name, frame.number(), frame.seconds()));
        });
    Path folder = out == null ? beside() : out;
    if (!files.isEmpty()
        && ResultFolder.write(folder, files) instanceof ResultFolder.Outcome.Refused refused) {
      return console.notWritten(folder, refused);
    }
    return console.taken(video, footage, folder, taken);
  }

  private static OptionalInt shownAt(Footage footage, String moment) {
    Matcher clock = CLOCK.matcher(moment.strip());
    if (clock.matches()) {
      double hours = clock.group(1) == null ? 0 : Double.parseDouble(clock.group(1));
      double minutes = Double.parseDouble(clock.group(2));
      double seconds = Double.parseDouble(clock.group(3));
      return footage.times().shownAt((hours * 60 + minutes) * 60 + seconds);
    }
    String text = moment.matches("[0-9.]+") ? moment + " s" : moment;
    return Quantities.duration(text) instanceof Parsed.Value<Reading>(Reading reading)
        ? footage.times().shownAt(reading.value())
        : OptionalInt.empty();
  }

  private static byte[] jpeg(Frame frame) {
    try {
      return Jpeg.of(frame.raster());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Path beside() {
    String name = String.valueOf(video.getFileName());
    int dot = name.lastIndexOf('.');
    return video.resolveSibling((dot > 0 ? name.substring(0, dot) : name) + "-stills");
  }
}
