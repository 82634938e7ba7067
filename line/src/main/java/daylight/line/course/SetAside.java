package daylight.line.course;

import daylight.line.book.Id;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What the rest contradicts and the course therefore does not lean on: spots, depths, and stretches
 * that turn more than a straight pipe does.
 */
record SetAside(Set<Id> spots, Set<Id> depths, List<Loose> loosened) {
  static final SetAside NOTHING = new SetAside(Set.of(), Set.of(), List.of());

  /** What is setAside counts as a measurement that is worse by this factor: hardly at all. */
  private static final double HARDLY = 1e3;

  /** An unseen bend may turn by this much, radians. */
  private static final double UNSEEN = Math.PI / 2;

  /** A stretch of a limb, in metres of the first guess, that hides a bend. */
  record Loose(int limb, double from, double to) {}

  double spotFactor(Id mark) {
    return spots.contains(mark) ? HARDLY : 1;
  }

  double depthFactor(Id mark) {
    return depths.contains(mark) ? HARDLY : 1;
  }

  /** Variance of turning for each metre of a segment beyond that of a straight pipe. */
  double loose(int limb, double from, double length) {
    double variance = 0;
    for (Loose stretch : loosened) {
      double middle = from + length / 2;
      if (stretch.limb == limb && middle >= stretch.from && middle <= stretch.to) {
        variance += UNSEEN * UNSEEN / Math.max(length, stretch.to - stretch.from);
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
    List<Loose> more = new java.util.ArrayList<>(loosened);
    more.add(stretch);
    return new SetAside(spots, depths, List.copyOf(more));
  }
}
