package daylight.report.draw;

import daylight.line.answer.Sight;
import daylight.line.book.Pass;
import daylight.line.book.Place;
import daylight.line.course.PlacedPass;
import daylight.line.course.PlacedSight;
import daylight.line.course.Route;
import daylight.report.markup.Tag;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** How well the judged visit saw a route, and how that looks on the stroke of a drain. */
final class SeenStroke {
  /** How wide the stroke of a drain is, and what is left open within it, points. */
  static final double STROKE = 4;

  private static final double CORE = 1.9;

  private SeenStroke() {}

  /**
   * Stretch by stretch, by the best of its passes.
   *
   * @param length of the route, metres
   */
  static List<Sight> of(Subject subject, Route route, double length) {
    String visit = subject.answers().visit();
    List<Sight> all = new ArrayList<>();
    for (PlacedPass pass : subject.line().passes()) {
      if (pass.visit().equals(visit)) {
        pass.legs().forEach(leg -> add(all, route, leg.from(), leg.to(), Sight.Seen.NOT_NOTED));
      }
    }
    for (PlacedSight sight : subject.line().sights()) {
      if (sight.visit().equals(visit)) {
        add(all, route, sight.from(), sight.to(), seen(sight.clarity()));
      }
    }
    return Sight.along(all, length);
  }

  private static void add(List<Sight> all, Route route, Place from, Place to, Sight.Seen seen) {
    OptionalDouble a = route.station(from);
    OptionalDouble b = route.station(to);
    if (a.isPresent() && b.isPresent()) {
      double first = Math.min(a.getAsDouble(), b.getAsDouble());
      double last = Math.max(a.getAsDouble(), b.getAsDouble());
      all.add(new Sight(first, last, seen));
    }
  }

  private static Sight.Seen seen(Pass.Clarity clarity) {
    return switch (clarity) {
      case CLEAR -> Sight.Seen.CLEAR;
      case POOR -> Sight.Seen.POOR;
      case BLIND -> Sight.Seen.BLIND;
    };
  }

  static Legend.Entry entry(Sight.Seen seen) {
    return switch (seen) {
      case CLEAR -> Legend.Entry.SEEN_CLEAR;
      case POOR -> Legend.Entry.SEEN_POOR;
      case BLIND, UNDER_WATER -> Legend.Entry.SEEN_BLIND;
      case NOT_NOTED -> Legend.Entry.SEEN_NOT_NOTED;
      case NOT_SEEN -> Legend.Entry.SEEN_NOT;
    };
  }

  /** What is laid upon the stroke of a drain: nothing where it was seen clearly. */
  static Tag core(Sight.Seen seen, String d) {
    Tag core =
        Tag.of("path")
            .with("d", d)
            .with("fill", "none")
            .with("stroke", Ink.PAPER)
            .with("stroke-width", CORE)
            .with("stroke-linejoin", "round");
    return switch (seen) {
      case CLEAR -> Tag.of("g");
      case POOR -> core.with("stroke-dasharray", "6 4");
      case BLIND, UNDER_WATER -> core.with("stroke-dasharray", "1.4 1.6");
      case NOT_NOTED -> core.with("stroke-dasharray", "1.9 9");
      case NOT_SEEN -> core;
    };
  }

  static Tag sign(Sight.Seen seen) {
    return Tag.of("g").add(Pen.path("M-9 0H9", Ink.DRAIN, STROKE)).add(core(seen, "M-9 0H9"));
  }
}
