package daylight.footage.codec;

import static org.bytedeco.ffmpeg.global.avutil.av_version_info;

import daylight.footage.Chapter;
import daylight.footage.FootageTrouble;
import daylight.footage.Frame;
import daylight.footage.FrameTimes;
import daylight.footage.Make;
import daylight.footage.Recording;
import daylight.footage.Remark;
import daylight.footage.Watch;
import daylight.footage.Writ;
import daylight.line.measure.Argument;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.PrimitiveIterator;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.bytedeco.ffmpeg.avutil.AVFrame;

/**
 * A recording that can be looked at. Frames are exact: the one asked for, not one near it. The file
 * is only read. What it needs of memory does not grow with its length but for a few bytes a frame.
 * Used by one thread at a time; closed by whoever opened it.
 */
public final class Footage implements AutoCloseable {
  /** Its multiples leave rests that are spread as evenly as can be, whatever their number. */
  private static final double GOLDEN = 0.6180339887498949;

  /** So few frames are not worth a second decoder. */
  private static final int FEWEST_TO_SHARE = 6;

  private final Reel reel;
  private final Recording recording;
  private final Geometry geometry;
  private final List<Remark> notes;

  Footage(Reel reel, Recording recording, Geometry geometry, List<Remark> notes) {
    this.reel = reel;
    this.recording = recording;
    this.geometry = geometry;
    this.notes = List.copyOf(notes);
  }

  /**
   * Has the library that decodes brought on a thread of its own, for whoever will open a recording
   * but has other things to do first. Nothing depends on it.
   */
  public static void ahead() {
    Thread.ofPlatform().daemon().name("library").start(Footage::bring);
  }

  private static void bring() {
    try {
      Native.ready();
    } catch (LinkageError missing) {
      // Whoever opens a recording meets it again and says so.
    }
  }

  /** Opens a recording by its content and lists its frames, which reads the file once. */
  public static Opening open(Path file, Watch watch) {
    Native.ready();
    try {
      return new Opener(file, new Progress(watch)).open();
    } catch (CancellationException e) {
      return new Opening.Stopped();
    }
  }

  /** Which version of the library decodes: with another one frames may come out otherwise. */
  public static String library() {
    return av_version_info().getString();
  }

  /** What there is to know of it. */
  public Recording recording() {
    return recording;
  }

  /** What is worth knowing besides, such as an end that is missing. */
  public List<Remark> notes() {
    return notes;
  }

  /** When each frame appears. */
  public FrameTimes times() {
    return reel.index().times();
  }

  /**
   * The frame on display at a moment, seconds from the first frame; empty before the first and
   * after the last.
   */
  public Optional<Frame> at(double seconds) throws IOException {
    var number = times().shownAt(seconds);
    return number.isEmpty() ? Optional.empty() : frame(number.getAsInt());
  }

  /**
   * A frame by its number. Where it is damaged beyond decoding, the one before it, with its own
   * number; empty where there is none.
   *
   * @throws IllegalArgumentException if there is no such number
   */
  public Optional<Frame> frame(int number) throws IOException {
    requireFrame(number);
    Optional<AVFrame> shown = reel.wind(number, new Progress(Watch.NOBODY), 0, 0);
    if (shown.isEmpty()) {
      return Optional.empty();
    }
    try (Screen screen = new Screen(geometry)) {
      return Optional.of(shown(screen, shown.get()));
    }
  }

  /**
   * Several frames in one go, by rising number whatever the order they are asked in, each once.
   *
   * @return whether all were handed over; false if the watch stopped it
   */
  public boolean sweep(List<Integer> numbers, Watch watch, Consumer<Frame> taker)
      throws IOException {
    numbers.forEach(this::requireFrame);
    Progress progress = new Progress(watch);
    int done = 0;
    try (Screen screen = new Screen(geometry)) {
      List<Integer> rising = numbers.stream().distinct().sorted().toList();
      for (int number : rising) {
        Optional<AVFrame> shown = reel.wind(number, progress, done, rising.size());
        if (shown.isPresent()) {
          taker.accept(shown(screen, shown.get()));
        }
        progress.at(++done, rising.size());
      }
      return true;
    } catch (CancellationException e) {
      return false;
    }
  }

  /**
   * The brightness of several frames in one go, by rising number, each once; all of them cost one
   * decoding. A frame that is damaged beyond decoding is passed over.
   *
   * @param numbers rising
   * @return whether all were handed over; false if the watch stopped it
   */
  public boolean glance(IntStream numbers, int count, Watch watch, Consumer<Luma> taker)
      throws IOException {
    Progress progress = new Progress(watch);
    int done = 0;
    try (Luma.Glass glass = new Luma.Glass()) {
      for (PrimitiveIterator.OfInt each = numbers.iterator(); each.hasNext(); ) {
        int number = each.nextInt();
        requireFrame(number);
        Optional<AVFrame> shown = reel.wind(number, progress, done++, count);
        if (shown.isPresent() && reel.number() == number) {
          taker.accept(glass.look(number, shown.get()));
        }
      }
      return true;
    } catch (CancellationException e) {
      return false;
    }
  }

  /**
   * What is made of the brightness of several frames far apart, such as {@link #waypoints}, in the
   * order of the frames. A frame that is damaged beyond decoding is passed over.
   *
   * @param numbers rising
   * @param make called on two threads at once where that saves time
   */
  public <T> List<T> farApart(List<Integer> numbers, Function<Luma, T> make) throws IOException {
    numbers.forEach(this::requireFrame);
    if (numbers.size() < FEWEST_TO_SHARE || !reel.index().told()) {
      return FarApart.made(reel, numbers, make);
    }
    int half = numbers.size() / 2;
    FarApart<T> rest = FarApart.begin(reel, numbers.subList(half, numbers.size()), make);
    List<T> made = new ArrayList<>(FarApart.made(reel, numbers.subList(0, half), make));
    made.addAll(rest.made());
    return made;
  }

  /**
   * Frames spread over the recording that are quickly reached, at most so many, rising. In a long
   * one they are not evenly spread, so that what comes round evenly, such as a light that turns, is
   * not met in the same place each time.
   */
  public List<Integer> waypoints(int most) {
    int frames = times().count();
    List<Integer> keys =
        reel.index().keys().stream().map(Key::frame).filter(n -> n < frames).toList();
    boolean several = keys.size() >= most / 3;
    List<Integer> from = several ? keys : IntStream.range(0, frames).boxed().toList();
    int count = Math.min(most, from.size());
    return IntStream.range(0, count)
        .mapToObj(i -> from.get((int) ((i + (several ? i * GOLDEN % 1 : 0)) * from.size() / count)))
        .toList();
  }

  /**
   * Copies the pictures, without sound, into a film of that make; with frame times kept where the
   * make keeps them. For a browser: {@link Make#VP8_WEBM} or {@link Make#VP9_WEBM}.
   *
   * @return whether it was written; false if the watch stopped it, and then there is no file
   */
  public boolean copy(Path target, Make make, Watch watch) throws IOException {
    return copy(target, make, 0, false, watch) instanceof Writ.Written;
  }

  /**
   * The same from a frame on, with the recording's own sound where that is wanted and there is one.
   * Nothing else goes along: no place, device, day or other tag.
   *
   * <p>Refused: sound that the make's container cannot hold as it is.
   *
   * @param from the number of the first frame
   */
  public Writ copy(Path target, Make make, int from, boolean sound, Watch watch)
      throws IOException {
    requireFrame(from);
    try (Heard heard = sound ? Heard.of(reel.again(), times().secondsOf(from)) : Heard.NOTHING) {
      Optional<String> unfit = heard.unfit(make);
      if (unfit.isPresent()) {
        return new Writ.Refused(
            Remark.of(
                FootageTrouble.SOUND_NOT_FOR,
                new Argument.Text(unfit.get()),
                new Argument.Text(make.extension())));
      }
      new Proxy(reel, geometry, recording)
          .write(target, make, from, heard.sound(), new Progress(watch));
      return new Writ.Written();
    } catch (CancellationException e) {
      return new Writ.Stopped();
    }
  }

  /**
   * What the sound is written in, in plain words, where a make's container cannot hold it as it is;
   * empty where it can or there is none.
   */
  public Optional<String> unfitSound(Make make) throws IOException {
    try (Heard heard = Heard.of(reel.again(), 0)) {
      return heard.unfit(make);
    }
  }

  /**
   * Copies pictures and sound as they are, packet by packet, into an MP4 file with chapters; no
   * picture is written anew. Nothing else goes along: no place, device, day or other tag.
   *
   * <p>Refused: pictures or sound that MP4 cannot hold, and containers that do not tell the time of
   * each frame, which MP4 must.
   *
   * @param chapters by rising time, one after the other
   */
  public Writ chaptered(Path target, List<Chapter> chapters, Watch watch) throws IOException {
    return chaptered(target, Excerpt.WHOLE, chapters, watch);
  }

  /**
   * The same of a part of it, which begins where pictures can be taken as they are.
   *
   * @param from the number of its first frame: one of {@link #cleanCut}, or 0 for the whole
   * @param sound whether its sound goes along
   * @param chapters counted from that frame
   */
  public Writ chaptered(Path target, int from, boolean sound, List<Chapter> chapters, Watch watch)
      throws IOException {
    requireFrame(from);
    return chaptered(target, excerpt(from, sound), chapters, watch);
  }

  private Excerpt excerpt(int from, boolean sound) {
    if (from == 0) {
      return new Excerpt(null, sound);
    }
    return new Excerpt(
        reel.index().keys().stream()
            .filter(key -> key.frame() == from)
            .findFirst()
            .orElseThrow(() -> new IllegalArgumentException("no clean cut at frame " + from)),
        sound);
  }

  private Writ chaptered(Path target, Excerpt excerpt, List<Chapter> chapters, Watch watch)
      throws IOException {
    Part part = Part.of(target);
    try (Input input = reel.again();
        Copying copying = new Copying(input, part.file(), excerpt)) {
      Optional<String> unfit =
          input.wrapping().tellsTimes()
              ? copying.unfit()
              : Optional.of(recording.codec() + ", " + recording.container());
      if (unfit.isPresent()) {
        return new Writ.Refused(
            Remark.of(FootageTrouble.NOT_FOR_MP4, new Argument.Text(unfit.get())));
      }
      copying.begin(chapters);
      copying.copy(new Progress(watch), times().count());
      part.finish();
      return new Writ.Written();
    } catch (CancellationException e) {
      return new Writ.Stopped();
    } finally {
      part.forget();
    }
  }

  /**
   * The first frame from a frame on at which a copy can begin with the pictures as they are: one
   * that needs none before it. Empty where there is none, or where the file does not tell.
   */
  public OptionalInt cleanCut(int from) {
    requireFrame(from);
    if (from == 0) {
      return OptionalInt.of(0);
    }
    return reel.index().told()
        ? reel.index().keys().stream().mapToInt(Key::frame).filter(key -> key >= from).findFirst()
        : OptionalInt.empty();
  }

  /** For proofs: the frame as decoded. */
  Optional<AVFrame> decoded(int number) throws IOException {
    return reel.wind(number, new Progress(Watch.NOBODY), 0, 0);
  }

  /** For proofs: the same, as {@link #farApart} comes to it. */
  Optional<AVFrame> leapt(int number) throws IOException {
    return reel.leap(number, new Progress(Watch.NOBODY), 0, 0);
  }

  private Frame shown(Screen screen, AVFrame frame) throws IOException {
    int number = reel.number();
    return new Frame(number, times().secondsOf(number), screen.show(frame));
  }

  private void requireFrame(int number) {
    if (number < 0 || number >= times().count()) {
      throw new IllegalArgumentException(
          "frames are numbered from 0 to " + (times().count() - 1) + ", asked for " + number);
    }
  }

  @Override
  public void close() {
    reel.close();
  }
}
