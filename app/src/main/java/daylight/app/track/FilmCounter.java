package daylight.app.track;

import daylight.app.OnScreen;
import daylight.footage.counter.Found;
import daylight.footage.counter.Reading;
import daylight.line.book.FieldBook;
import daylight.line.book.Kit;
import daylight.line.counter.Track;
import daylight.line.counter.Track.State;
import daylight.line.measure.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What the counter of a recording showed, in the unit it counts in.
 *
 * @param track a sample a frame
 * @param leaps the samples that first show it set anew
 * @param step what its last place is worth, metres
 */
public record FilmCounter(Track track, Set<Integer> leaps, double step) {
  public FilmCounter {
    leaps = Set.copyOf(leaps);
  }

  /** As the screen has it; without a unit there, its unit is a guess. */
  public static FilmCounter of(Found.Counter counter) {
    return of(counter, 1);
  }

  /** As a book has it: a counter that shows no unit counts in the camera's, else in the book's. */
  public static FilmCounter of(Found.Counter counter, FieldBook book, Kit kit) {
    Unit written = written(counter, book, kit);
    return of(
        counter,
        counter.bare() && written != null
            ? OnScreen.likeliest(written).metres() / OnScreen.unit(counter.metresPerStep()).metres()
            : 1);
  }

  /** The unit that a book says a counter counts in; null where it says none. */
  static @Nullable Unit written(Found.Counter counter, FieldBook book, Kit kit) {
    Kit.Burned profile = kit.counter();
    Unit counts = profile == null ? null : profile.unit();
    return counter.bare() && counts != null ? counts : book.units().distance();
  }

  private static FilmCounter of(Found.Counter counter, double factor) {
    List<Track.Sample> samples = new ArrayList<>();
    for (Reading one : counter.readings()) {
      double metres = one.state() == State.UNKNOWN ? 0 : one.metres() * factor;
      samples.add(new Track.Sample(one.seconds(), metres, one.state()));
    }
    return new FilmCounter(
        new Track("", samples), Set.copyOf(counter.leaps()), counter.metresPerStep() * factor);
  }
}
