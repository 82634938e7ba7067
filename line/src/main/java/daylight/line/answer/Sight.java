package daylight.line.answer;

import daylight.line.book.Pass;
import daylight.line.book.Place;
import daylight.line.course.PlacedFinding;
import daylight.line.course.PlacedPass;
import daylight.line.course.PlacedSight;
import daylight.line.course.Route;
import daylight.line.course.Run;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * How well a stretch of a route was seen on a visit, by the pass that saw it best, from whichever
 * end that came.
 *
 * @param from station of its upstream end, metres
 * @param to station of its downstream end, metres
 */
public record Sight(double from, double to, Seen seen) {
  /** Stretches shorter than this are not worth telling, metres; common practice, no source. */
  private static final double WORTH_TELLING = 0.3;

  private static final String WATER = "standing-water";

  /** How well, the best first. */
  public enum Seen {
    CLEAR,
    POOR,
    BLIND,
    /** Blind because the lens was under water. */
    UNDER_WATER,
    /** A camera went through, and nobody noted how well it saw. */
    NOT_NOTED,
    /** No camera came there. */
    NOT_SEEN
  }

  /** The whole of a route as far as it is known, stretch by stretch. */
  static List<Sight> of(Case one, Route route) {
    List<Sight> all = new ArrayList<>();
    for (Run run : route.runs()) {
      passed(one, route, run, all);
      noted(one, route, run, all);
    }
    return along(all, route.length());
  }

  /**
   * What is known of a whole length from sights that overlap and leave gaps: of several the best
   * counts, and what is between them was not seen.
   *
   * @param length metres
   */
  public static List<Sight> along(List<Sight> all, double length) {
    TreeSet<Double> cuts = new TreeSet<>(List.of(0.0, length));
    for (Sight sight : all) {
      cuts.add(Math.clamp(sight.from(), 0, length));
      cuts.add(Math.clamp(sight.to(), 0, length));
    }
    List<Sight> merged = new ArrayList<>();
    double from = cuts.removeFirst();
    for (double to : cuts) {
      add(merged, new Sight(from, to, best(all, (from + to) / 2)));
      from = to;
    }
    return merged;
  }

  private static void passed(Case one, Route route, Run run, List<Sight> all) {
    for (PlacedPass pass : one.line().passes()) {
      if (pass.visit().equals(one.visit().label())) {
        for (PlacedPass.Leg leg : pass.legs()) {
          if (leg.from().reach().equals(run.reach().label())) {
            double a = route.station(leg.from()).orElse(0);
            double b = route.station(leg.to()).orElse(0);
            all.add(new Sight(Math.min(a, b), Math.max(a, b), Seen.NOT_NOTED));
          }
        }
      }
    }
  }

  private static void noted(Case one, Route route, Run run, List<Sight> all) {
    for (PlacedSight sight : one.line().sights()) {
      if (sight.visit().equals(one.visit().label())
          && sight.from().reach().equals(run.reach().label())) {
        double from = route.station(sight.from()).orElse(0);
        double to = route.station(sight.to()).orElse(0);
        switch (sight.clarity()) {
          case CLEAR -> all.add(new Sight(from, to, Seen.CLEAR));
          case POOR -> all.add(new Sight(from, to, Seen.POOR));
          case BLIND -> {
            if (drowned(one, sight)) {
              all.add(new Sight(from, to, Seen.UNDER_WATER));
            } else {
              all.addAll(blind(one, route, run, from, to));
            }
          }
        }
      }
    }
  }

  /** Whether the pass ended under water, and this is the stretch it ended in. */
  private static boolean drowned(Case one, PlacedSight sight) {
    boolean under =
        one.visit().passes().stream()
            .filter(pass -> pass.label().equals(sight.pass()) && pass.end() != null)
            .map(Pass::end)
            .anyMatch(end -> end != null && end.why() == Pass.Why.UNDER_WATER);
    return under
        && one.line().passes().stream()
            .filter(pass -> pass.visit().equals(sight.visit()) && pass.pass().equals(sight.pass()))
            .filter(pass -> !pass.legs().isEmpty())
            .map(pass -> pass.legs().getLast().to())
            .anyMatch(last -> touches(sight, last));
  }

  private static boolean touches(PlacedSight sight, Place last) {
    return last.reach().equals(sight.from().reach())
        && last.distance() >= sight.from().distance() - WORTH_TELLING
        && last.distance() <= sight.to().distance() + WORTH_TELLING;
  }

  /** What is blind, cut where standing water that was noted begins and ends. */
  private static List<Sight> blind(Case one, Route route, Run run, double from, double to) {
    List<Sight> parts = new ArrayList<>();
    parts.add(new Sight(from, to, Seen.BLIND));
    for (PlacedFinding placed : one.findings()) {
      if (placed.finding().kind().equals(WATER)
          && placed.to() != null
          && placed.from().reach().equals(run.reach().label())) {
        double a = Math.max(from, route.station(placed.from()).orElse(0));
        double b = Math.min(to, route.station(placed.to()).orElse(0));
        if (b > a) {
          parts.clear();
          parts.add(new Sight(from, a, Seen.BLIND));
          parts.add(new Sight(a, b, Seen.UNDER_WATER));
          parts.add(new Sight(b, to, Seen.BLIND));
        }
      }
    }
    return parts;
  }

  private static Seen best(List<Sight> all, double station) {
    return all.stream()
        .filter(one -> one.from() <= station && station <= one.to())
        .map(Sight::seen)
        .min(Enum::compareTo)
        .orElse(Seen.NOT_SEEN);
  }

  private static void add(List<Sight> merged, Sight next) {
    Sight before = merged.isEmpty() ? null : merged.getLast();
    if (before == null) {
      merged.add(next);
    } else if (before.seen() == next.seen() || next.isSliver()) {
      merged.set(merged.size() - 1, new Sight(before.from(), next.to(), before.seen()));
    } else if (before.isSliver()) {
      merged.removeLast();
      add(merged, new Sight(before.from(), next.to(), next.seen()));
    } else {
      merged.add(next);
    }
  }

  /** Too short to tell; what was seen clearly is never eaten up by what was not. */
  private boolean isSliver() {
    return to - from < WORTH_TELLING && seen != Seen.CLEAR;
  }
}
