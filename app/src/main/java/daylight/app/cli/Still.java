package daylight.app.cli;

import daylight.app.Progress;
import daylight.archive.ResultFolder;
import daylight.footage.Frame;
import daylight.footage.codec.Footage;
import daylight.footage.codec.Jpeg;
import daylight.footage.counter.Found;
import daylight.line.counter.Passages;
import daylight.line.counter.Sought;
import daylight.line.measure.Dimension;
import daylight.line.measure.Reading;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What a recording is, and pictures from it. */
@Command(
    name = "still",
    mixinStandardHelpOptions = true,
    description = {
      "Say what a recording is, and take pictures from it: the very frame that is on display at a",
      "moment, or that shows a distance by the counter burned into it. Pictures are written into one",
      "folder, all or none. The recording is only read. Exit code 1 if the counter did not show the",
      "distance."
    })
final class Still implements Callable<Integer> {
  @Mixin private Video video = new Video();

  @Option(
      names = "--at",
      paramLabel = "WHERE",
      description = {
        "A moment from the first frame, as 1:02.5, 62.5 s or 62.5, or a distance with its unit,",
        "as 52.8ft, 16.1 m or 12' 7\"; may be given several times."
      })
  private List<String> wheres = new ArrayList<>();

  @Option(
      names = "--which",
      paramLabel = "TIME",
      description = {
        "Of the times that the counter showed a distance: ${COMPLETION-CANDIDATES} (the nearest",
        "place where the camera rested). Default: ${DEFAULT-VALUE}."
      },
      defaultValue = "first")
  private Sought.Which which = Sought.Which.FIRST;

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

  @Spec private @Nullable CommandSpec spec;

  /**
   * A picture that was taken.
   *
   * @param file its name in the folder
   * @param at what distance led there; null for none
   */
  record Taken(String file, int frame, double seconds, @Nullable StillAt at) {}

  @Override
  public Integer call() {
    VideoConsole console = VideoConsole.of(spec, video.json());
    return video.open(console, footage -> look(footage, console));
  }

  private int look(Footage footage, VideoConsole console) throws IOException {
    Map<Integer, @Nullable StillAt> wanted = new LinkedHashMap<>();
    List<String> distances = new ArrayList<>();
    for (String where : wheres) {
      OptionalInt frame = Moment.frame(footage.times(), where);
      if (frame.isPresent()) {
        wanted.putIfAbsent(frame.getAsInt(), null);
      } else if (Moment.isDistance(where)) {
        distances.add(where);
      } else {
        return console.misunderstood(
            console.say(
                "cli.still.no_moment",
                Given.text(where),
                Given.text(VideoConsole.clock(footage.recording().seconds()))));
      }
    }
    for (int frame : frames) {
      int last = footage.recording().frames() - 1;
      if (frame < 0 || frame > last) {
        return console.misunderstood("--frame: there are frames 0 to " + last + ", not " + frame);
      }
      wanted.putIfAbsent(frame, null);
    }
    return distances.isEmpty()
        ? take(footage, console, wanted)
        : video.counter(
            footage, console, counter -> seek(footage, console, counter, distances, wanted));
  }

  private int seek(
      Footage footage,
      VideoConsole console,
      Found.Counter counter,
      List<String> distances,
      Map<Integer, @Nullable StillAt> wanted)
      throws IOException {
    Passages passages = StillAt.passages(counter);
    List<String> missing = new ArrayList<>();
    for (String distance : distances) {
      Given given = new Given();
      Reading asked = given.quantity(Dimension.LENGTH, "--at", distance);
      if (asked == null) {
        throw new IllegalStateException("it was a distance before: " + distance);
      }
      Sought sought = passages.find(asked.value(), which);
      if (sought instanceof Sought.At at) {
        wanted.put(
            at.sample(),
            new StillAt(distance, given.shown(), which, at, counter.readings().get(at.sample())));
      } else {
        missing.add(
            StillAt.missing(
                console.words(), video.file(), distance, given.shown(), sought, counter));
      }
    }
    if (!missing.isEmpty()) {
      return console.open("not-shown", "not-shown", String.join("\n", missing));
    }
    if (counter.bare() && !console.json()) {
      console.line(console.say("cli.counter.bare"));
    }
    return take(footage, console, wanted);
  }

  private int take(Footage footage, VideoConsole console, Map<Integer, @Nullable StillAt> wanted)
      throws IOException {
    SortedMap<String, byte[]> files = new TreeMap<>();
    List<Taken> taken = new ArrayList<>();
    boolean whole =
        footage.sweep(
            List.copyOf(wanted.keySet()),
            console.begin(Progress.Step.PICTURES, video.file()),
            frame -> {
              String name = "frame-" + String.format(Locale.ROOT, "%06d", frame.number()) + ".jpg";
              files.put(name, jpeg(frame));
              taken.add(
                  new Taken(name, frame.number(), frame.seconds(), wanted.get(frame.number())));
            });
    if (!whole) {
      return console.stopped();
    }
    Path folder = out == null ? video.beside("-stills") : out;
    if (!files.isEmpty()
        && ResultFolder.write(folder, files) instanceof ResultFolder.Outcome.Refused refused) {
      return console.notWritten(folder, refused);
    }
    return console.taken(video.file(), footage, folder, taken);
  }

  private static byte[] jpeg(Frame frame) {
    try {
      return Jpeg.of(frame.raster());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
