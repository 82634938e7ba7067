package daylight.app;

import daylight.footage.Frame;
import daylight.footage.Raster;
import daylight.footage.Thumbnail;
import daylight.footage.Watch;
import daylight.footage.codec.Footage;
import daylight.footage.codec.Jpeg;
import daylight.line.counter.Passages;
import daylight.line.counter.Sought;
import daylight.line.counter.Track;
import daylight.line.counter.Track.State;
import daylight.line.measure.Argument;
import daylight.line.measure.Shown;
import daylight.report.captions.Counted;
import daylight.report.captions.FindingChapters;
import daylight.report.page.ContactSheet;
import daylight.report.page.ContactSheet.Place;
import daylight.report.shots.Picture;
import daylight.report.words.Words;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Small pictures from a recording along the line, with what a book says of it. */
public final class PictureSheet {
  /** So many pictures go on one page at most. */
  public static final int MOST = 400;

  private static final double FIVE_FEET = 1.524;
  private static final double ONE_AND_A_HALF = 1.5;
  private static final double ROUNDING = 1e-6;
  private static final int ACROSS = 320;

  private final Footage footage;
  private final Counted counted;
  private final @Nullable BookInFilm told;
  private final Manner manner;
  private final Words words;
  private final List<Wanted> wanted = new ArrayList<>();

  private PictureSheet(
      Footage footage, Counted counted, @Nullable BookInFilm told, Manner manner, Words words) {
    this.footage = footage;
    this.counted = counted;
    this.told = told;
    this.manner = manner;
    this.words = words;
  }

  /**
   * How.
   *
   * @param title of the page
   * @param step a picture every so far, metres; null for 5 ft or 1.5 m
   * @param first the number of the first frame that may be shown
   * @param bare whether the counter shows no unit of its own
   */
  public record Manner(String title, @Nullable Double step, int first, boolean bare) {}

  /** What came of it. */
  public sealed interface Outcome {
    /** A page with so many pictures. */
    record Made(String page, int pictures) implements Outcome {}

    /** With that step there would be too many pictures. */
    record TooMany() implements Outcome {}

    /** Nobody waits for it any longer. */
    record Stopped() implements Outcome {}
  }

  /**
   * A picture to be taken.
   *
   * @param metres where on the counter, for the order
   * @param frame its number; negative where there is none
   */
  private record Wanted(double metres, String place, @Nullable String found, int frame) {}

  /**
   * Takes the pictures and sets the page.
   *
   * @param told null without a book
   */
  public static Outcome make(
      Footage footage,
      Counted counted,
      @Nullable BookInFilm told,
      Manner manner,
      Words words,
      Watch watch)
      throws IOException {
    return new PictureSheet(footage, counted, told, manner, words).make(watch);
  }

  private Outcome make(Watch watch) throws IOException {
    double usual = words.shown() == Shown.METRES ? ONE_AND_A_HALF : FIVE_FEET;
    Double step = manner.step();
    if (!alongTheLine(step == null ? usual : step)) {
      return new Outcome.TooMany();
    }
    if (told != null) {
      found(told);
    }
    wanted.sort(Comparator.comparingDouble(Wanted::metres));
    Map<Integer, Picture> pictures = new HashMap<>();
    boolean whole =
        footage.sweep(
            wanted.stream().map(Wanted::frame).filter(frame -> frame >= 0).toList(),
            watch,
            frame -> pictures.put(frame.number(), small(frame)));
    if (!whole) {
      return new Outcome.Stopped();
    }
    List<Place> places = new ArrayList<>();
    double start = footage.times().secondsOf(manner.first());
    for (Wanted one : wanted) {
      Picture picture = pictures.get(one.frame());
      places.add(
          new Place(
              one.place(),
              picture == null ? null : footage.times().secondsOf(one.frame()) - start,
              one.found(),
              picture));
    }
    return new Outcome.Made(
        ContactSheet.page(manner.title(), about(), places, words),
        (int) places.stream().filter(place -> place.picture() != null).count());
  }

  /** False where there would be too many. */
  private boolean alongTheLine(double step) {
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
          wanted.add(new Wanted(metres, place, null, Math.max(at.sample(), manner.first())));
        }
        // Before the counter's own beginning there is nothing to be missed.
        case Sought.Beyond _, Sought.NothingKnown _ -> {}
        default -> wanted.add(new Wanted(metres, words.length(metres), null, -1));
      }
    }
    return true;
  }

  private void found(BookInFilm book) {
    for (FindingChapters.Seen seen : book.findings(counted).seen()) {
      int frame = footage.times().shownAt(seen.seconds()).orElse(-1);
      Double at = seen.counter();
      wanted.add(
          new Wanted(
              at == null ? Double.MAX_VALUE : at,
              at == null ? "" : words.length(at),
              FindingChapters.title(seen, words),
              frame < manner.first() ? -1 : frame));
    }
  }

  private String about() {
    String about = words.word("sheet.about");
    if (manner.bare()) {
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
