package daylight.report.draw;

import daylight.line.book.Pass;
import daylight.line.course.PlacedPass;
import daylight.line.course.PlacedSight;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * How well a stretch was seen by the pass that saw it best.
 *
 * @param from station of its upstream end, metres
 * @param to station of its downstream end, metres
 */
record StripSight(double from, double to, Seen seen) {
  /** As in the answers, a gap shorter than this is not worth telling, metres. */
  private static final double WORTH_TELLING = 0.3;

  /** How well, the best first. */
  enum Seen {
    CLEAR,
    POOR,
    BLIND,
    /** A camera went through, and nobody noted how well it saw. */
    NOT_NOTED,
    /** No camera came there. */
    NOT_SEEN
  }

  /** The whole strip, stretch by stretch. */
  static List<StripSight> of(StripRoute strip) {
    List<StripSight> all = new ArrayList<>();
    for (PlacedPass pass : strip.passes()) {
      for (PlacedPass.Leg leg : pass.legs()) {
        if (strip.holds(leg.from())) {
          double a = strip.station(leg.from());
          double b = strip.station(leg.to());
          all.add(new StripSight(Math.min(a, b), Math.max(a, b), Seen.NOT_NOTED));
        }
      }
    }
    for (PlacedSight sight : strip.sights()) {
      all.add(
          new StripSight(
              strip.station(sight.from()), strip.station(sight.to()), seen(sight.clarity())));
    }
    return merged(all, strip.length());
  }

  private static Seen seen(Pass.Clarity clarity) {
    return switch (clarity) {
      case CLEAR -> Seen.CLEAR;
      case POOR -> Seen.POOR;
      case BLIND -> Seen.BLIND;
    };
  }

  private static List<StripSight> merged(List<StripSight> all, double length) {
    TreeSet<Double> cuts = new TreeSet<>(List.of(0.0, length));
    for (StripSight one : all) {
      cuts.add(Math.clamp(one.from(), 0, length));
      cuts.add(Math.clamp(one.to(), 0, length));
    }
    List<StripSight> merged = new ArrayList<>();
    double from = cuts.removeFirst();
    for (double to : cuts) {
      add(merged, new StripSight(from, to, best(all, (from + to) / 2)));
      from = to;
    }
    return merged;
  }

  private static Seen best(List<StripSight> all, double station) {
    return all.stream()
        .filter(one -> one.from() <= station && station <= one.to())
        .map(StripSight::seen)
        .min(Enum::compareTo)
        .orElse(Seen.NOT_SEEN);
  }

  private static void add(List<StripSight> merged, StripSight next) {
    StripSight before = merged.isEmpty() ? null : merged.getLast();
    if (before == null) {
      merged.add(next);
    } else if (before.seen() == next.seen() || next.isSliver()) {
      merged.set(merged.size() - 1, new StripSight(before.from(), next.to(), before.seen()));
    } else if (before.isSliver()) {
      merged.removeLast();
      add(merged, new StripSight(before.from(), next.to(), next.seen()));
    } else {
      merged.add(next);
    }
  }

  /** A gap in what is known that is too short to tell. */
  private boolean isSliver() {
    return to - from < WORTH_TELLING && seen.compareTo(Seen.BLIND) > 0;
  }
}
