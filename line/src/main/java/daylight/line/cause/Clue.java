package daylight.line.cause;

import daylight.line.book.Pass;
import daylight.line.book.Place;
import daylight.line.book.Reported;
import daylight.line.book.Test;
import daylight.line.course.PlacedFinding;
import daylight.line.fall.FallStretch;
import daylight.line.measure.Measured;
import daylight.line.proving.HoldLimit;
import org.jspecify.annotations.Nullable;

/** Something that speaks for a cause or against it. */
public sealed interface Clue {
  /** How strongly: above one for the cause, below one against it, one for neither. */
  double times();

  /** Something found where it matters. */
  record Found(double times, PlacedFinding finding) implements Clue {}

  /**
   * Something of those kinds that was found where it does not matter: another branch, upstream, or
   * far away.
   */
  record Elsewhere(PlacedFinding finding, CauseTable.Reach where) implements Clue {
    @Override
    public double times() {
      return 1;
    }
  }

  /**
   * All of it was seen clearly, and nothing of those kinds was there.
   *
   * @param share of its length that was seen clearly
   */
  record NotFound(double times, double share) implements Clue {}

  /** Something stopped the camera. */
  record Stopped(double times, Pass pass, Pass.End end) implements Clue {}

  /** A stretch that is too flat, runs backward, or, where it falls enough, the flattest. */
  record Slope(double times, Sign sign, FallStretch stretch) implements Clue {}

  /** Water, dye or smoke that came or did not. */
  record Tried(double times, Sign sign, Test test, Test.@Nullable Seen seen) implements Clue {}

  /** The line was filled, and held or not by the limit that decides. */
  record Filled(double times, Sign sign, Test test, HoldLimit by) implements Clue {}

  /** How deep it lies. */
  record Depth(double times, Sign sign, Place place, Measured depth) implements Clue {}

  /** When it shows. */
  record Shows(double times, Reported.When when) implements Clue {}
}
