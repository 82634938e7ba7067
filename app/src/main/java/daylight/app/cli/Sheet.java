package daylight.app.cli;

import daylight.app.BookInFilm;
import daylight.app.Progress;
import daylight.footage.Frame;
import daylight.footage.Raster;
import daylight.footage.Thumbnail;
import daylight.footage.codec.Footage;
import daylight.footage.codec.Jpeg;
import daylight.footage.counter.Found;
import daylight.line.counter.Passages;
import daylight.line.counter.Sought;
import daylight.line.counter.Track;
import daylight.line.counter.Track.State;
import daylight.line.measure.Argument;
import daylight.line.measure.Reading;
import daylight.line.measure.Shown;
import daylight.report.captions.Counted;
import daylight.report.captions.FindingChapters;
import daylight.report.page.ContactSheet;
import daylight.report.page.ContactSheet.Place;
import daylight.report.shots.Picture;
import daylight.report.words.Words;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Small pictures along the line on one page. */
@Command(
    name = "sheet",
    mixinStandardHelpOptions = true,
    description = {
      "Small pictures along the line on one page that opens anywhere: one every so far by the counter",
      "of the recording, on the way out, and with a book one for each finding, marked by its label.",
      "Where the counter could not be read there is no picture, and that is said."
    })
final class Sheet implements Callable<Integer> {
  private static final double FIVE_FEET = 1.524;
  private static final double ONE_AND_A_HALF = 1.5;
  private static final double ROUNDING = 1e-6;
  private static final int MOST = 400;
  private static final int ACROSS = 320;

  @Mixin private Video video = new Video();
  @Mixin private Target target = new Target();
  @Mixin private ByBook byBook = new ByBook();

  @Option(
      names = "--every",
      paramLabel = "DISTANCE",
      description = "A picture every so far; default: 5 ft or 1.5 m.")
  private @Nullable String every;

  @Option(
      names = "--to",
      paramLabel = "FILE",
      description = "Where to: FILE.html; default: the name with -sheet.html, beside it.")
  private @Nullable Path to;

  @Spec private @Nullable CommandSpec spec;

  /**
   * A picture to be taken.
   *
   * @param metres where on the counter, for the order
   * @param frame its number; negative where there is none
   */
  private record Wanted(double metres, String place, @Nullable String found, int frame) {}

  @Override
  public Integer call() {
    VideoConsole console = VideoConsole.of(spec, video.json());
    Path file = to == null ? video.beside("-sheet.html") : to;
    return byBook.open(
        console,
        video,
        target.wrong(console, "--to", file, video.file(), List.of("html")),
        every,
        (footage, told, step) ->
            video.counter(
                footage, console, counter -> make(footage, console, file, told, counter, step)));
  }

  private int make(
      Footage footage,
      VideoConsole console,
      Path file,
      @Nullable BookInFilm told,
      Found.Counter counter,
      @Nullable Reading step)
      throws IOException {
    Shown shown = byBook.shown(told, counter);
    Words words = Words.of(console.words().language(), shown);
    Counted counted = ByBook.counted(counter, footage, told);
    double usual = shown == Shown.METRES ? ONE_AND_A_HALF : FIVE_FEET;
    List<Wanted> wanted = new ArrayList<>();
    if (!alongTheLine(counted, step == null ? usual : step.value(), words, wanted)) {
      return console.misunderstood(console.say("cli.sheet.many", new Argument.Count(MOST)));
    }
    if (told != null) {
      found(footage, told, counted, words, wanted);
    }
    wanted.sort(Comparator.comparingDouble(Wanted::metres));
    Map<Integer, Picture> pictures = new HashMap<>();
    boolean whole =
        footage.sweep(
            wanted.stream().map(Wanted::frame).filter(frame -> frame >= 0).toList(),
            console.begin(Progress.Step.PICTURES, video.file()),
            frame -> pictures.put(frame.number(), small(frame)));
    if (!whole) {
      return console.stopped();
    }
    List<Place> places = new ArrayList<>();
    for (Wanted one : wanted) {
      Picture picture = pictures.get(one.frame());
      places.add(
          new Place(
              one.place(),
              picture == null ? null : footage.times().secondsOf(one.frame()),
              one.found(),
              picture));
    }
    String title = String.valueOf(video.file().getFileName());
    String page = ContactSheet.page(title, about(told, counter, words), places, words);
    Target.write(file, page.getBytes(StandardCharsets.UTF_8));
    return console.sheet(
        file, (int) places.stream().filter(place -> place.picture() != null).count());
  }

  /** False where there would be too many. */
  private static boolean alongTheLine(
      Counted counted, double step, Words words, List<Wanted> wanted) {
    Passages passages = counted.passages();
    List<Track.Sample> samples = counted.track().samples();
    double most = 0;
    for (Track.Sample one : samples) {
      most = one.state() == State.UNKNOWN ? most : Math.max(most, one.counter());
    }
    if (most / step > MOST) {
      return false;
    }
    for (int i = 0; i * step <= most + ROUNDING; i++) {
      double metres = i * step;
      switch (passages.find(metres, Sought.Which.FIRST)) {
        case Sought.At at -> {
          Track.Sample shown = samples.get(at.sample());
          String place =
              shown.state() == State.READ
                  ? words.length(shown.counter())
                  : words.say("caption.bridged", new Argument.Length(shown.counter()));
          wanted.add(new Wanted(metres, place, null, at.sample()));
        }
        // Before the counter's own beginning there is nothing to be missed.
        case Sought.Beyond _, Sought.NothingKnown _ -> {}
        default -> wanted.add(new Wanted(metres, words.length(metres), null, -1));
      }
    }
    return true;
  }

  private void found(
      Footage footage, BookInFilm told, Counted counted, Words words, List<Wanted> wanted) {
    for (FindingChapters.Seen seen : told.findings(counted).seen()) {
      int frame = footage.times().shownAt(seen.seconds()).orElse(-1);
      Double at = seen.counter();
      wanted.add(
          new Wanted(
              at == null ? Double.MAX_VALUE : at,
              at == null ? "" : words.length(at),
              FindingChapters.title(seen, words),
              frame));
    }
  }

  private static String about(@Nullable BookInFilm told, Found.Counter counter, Words words) {
    String about = words.word("sheet.about");
    if (counter.bare()) {
      about += " " + words.word("cli.counter.bare");
    }
    return told != null && told.book().site().invented()
        ? about + " " + words.word("cli.invented")
        : about;
  }

  private static Picture small(Frame frame) {
    Raster raster = Thumbnail.of(frame.raster(), ACROSS);
    try {
      return new Picture(raster.width(), raster.height(), Jpeg.of(raster));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
