package daylight.line.course;

import daylight.line.book.Place;
import daylight.line.counter.Tracks;

/** A line of known truth for tests of the rooms that build on the course. */
public final class TrueLine {
  private final KnownProperty property;
  private final Line line;

  private TrueLine(KnownProperty property) {
    this.property = property;
    line = Estimator.estimate(property.book(), Tracks.NONE, KnownProperty.PRIORS);
  }

  /** How many classes there are. */
  public static int classes() {
    return LineClasses.ALL.size();
  }

  /** One of a class, from 0, made by what the estimator supposes. */
  public static TrueLine of(int sort, long seed) {
    return new TrueLine(KnownProperty.of(Nature.SUPPOSED, LineClasses.ALL.get(sort), seed));
  }

  /** One whose ponds were seen and noted, levelled, with 4 to 8 locates. */
  public static TrueLine wet(long seed) {
    LineSort sort = LineSort.of(1, 4, 8, LineSort.Way.LEVELLED, LineSort.Way.WET);
    return new TrueLine(KnownProperty.of(Nature.SUPPOSED, sort, seed));
  }

  /** A long flexible one, levelled, with 4 to 8 locates; many of those hold water, all noted. */
  public static TrueLine pooled(long seed) {
    LineSort sort =
        LineSort.of(
            1,
            4,
            8,
            LineSort.Way.LEVELLED,
            LineSort.Way.FLEXIBLE,
            LineSort.Way.LONG,
            LineSort.Way.WET);
    return new TrueLine(KnownProperty.of(Nature.SUPPOSED, sort, seed));
  }

  /** One that is levelled, with 4 to 8 locates, of whose water nothing was noted. */
  public static TrueLine levelled(long seed) {
    LineSort sort = LineSort.of(1, 4, 8, LineSort.Way.LEVELLED);
    return new TrueLine(KnownProperty.of(Nature.SUPPOSED, sort, seed));
  }

  /** One with 4 to 8 locates whose depths the receiver read, without levels and water. */
  public static TrueLine readOnly(long seed) {
    LineSort sort = LineSort.of(1, 4, 8);
    return new TrueLine(KnownProperty.of(Nature.SUPPOSED, sort, seed));
  }

  /** What was estimated. */
  public Line line() {
    return line;
  }

  /** True height of the invert. */
  public double up(Place place) {
    return property.truth(place).up();
  }

  /** A place drawn evenly over the whole length. */
  public Place drawn(long seed) {
    return property.drawnPlace(new SplitMix64(seed));
  }
}
