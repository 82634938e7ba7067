package daylight.line.course;

import daylight.line.book.Id;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What the rest contradicts and the course therefore does not lean on: spots, depths, and stretches
 * that turn more than a straight pipe does.
 */
record SetAside(Set<Id> spots, Set<Id> depths, List<Loose> loosened) {
  static final SetAside NOTHING = new SetAside(Set.of(), Set.of(), List.of());

  /** What is set aside counts as a measurement that is worse by this factor: hardly at all. */
  private static final double HARDLY = 1e3;

  /** An unseen bend may turn by this much, radians. */
  private static final double UNSEEN = Math.PI / 2;

  /**
   * A stretch of a limb, in metres of the first guess, that hides a bend or a slip of the counter.
   */
  record Loose(int limb, double from, double to) {}

  double spotFactor(Id mark) {
    return spots.contains(mark) ? HARDLY : 1;
  }

  double depthFactor(Id mark) {
    return depths.contains(mark) ? HARDLY : 1;
  }

  /** Variance of turning for each metre of a segment beyond that of a straight pipe. */
  double loose(int limb, double from, double length) {
    return spread(loosened, UNSEEN, limb, from, length);
  }

  private static double spread(
      List<Loose> stretches, double sd, int limb, double from, double length) {
    double variance = 0;
    double middle = from + length / 2;
    for (Loose stretch : stretches) {
      if (stretch.limb == limb && middle >= stretch.from && middle <= stretch.to) {
        variance += sd * sd / Math.max(length, stretch.to - stretch.from);
      }
    }
    return variance;
  }

  SetAside withSpot(Id mark) {
    Set<Id> more = new HashSet<>(spots);
    more.add(mark);
    return new SetAside(Set.copyOf(more), depths, loosened);
  }

  SetAside withDepth(Id mark) {
    Set<Id> more = new HashSet<>(depths);
    more.add(mark);
    return new SetAside(spots, Set.copyOf(more), loosened);
  }

  SetAside with(Loose stretch) {
    List<Loose> more = new ArrayList<>(loosened);
    more.add(stretch);
    return new SetAside(spots, depths, List.copyOf(more));
  }
}
