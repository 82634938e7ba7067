package daylight.line.cause;

import daylight.line.book.Pass;
import daylight.line.course.PlacedSight;
import daylight.line.course.Route;
import daylight.line.course.Run;
import daylight.line.measure.Measured;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** How much of the pipe in question was seen. */
final class Sight {
  /** A length that is less sure than this, relative, is a guess; common practice, no source. */
  private static final double GUESSED = 0.05;

  private Sight() {}

  /**
   * The share of the length in question that the visit saw with clear sight; nothing where nobody
   * knows how far the pipe goes on.
   */
  static double share(Scene scene, List<Where.Span> spans) {
    if (spans.stream().anyMatch(span -> goesOn(scene, span))) {
      return 0;
    }
    double length = 0;
    double seen = 0;
    for (Where.Span span : spans) {
      Optional<Run> run = scene.line().findRun(span.reach());
      double end = Math.min(span.to(), run.map(Route::extent).orElse(0.0));
      length += Math.max(0, end - span.from());
      double at = span.from();
      for (PlacedSight sight : clear(scene, span.reach())) {
        double from = Math.max(at, sight.from().distance());
        double to = Math.min(end, sight.to().distance());
        seen += Math.max(0, to - from);
        at = Math.max(at, to);
      }
    }
    return length > 0 ? Math.min(1, seen / length) : 0;
  }

  private static boolean goesOn(Scene scene, Where.Span span) {
    Measured length = scene.line().findRun(span.reach()).map(Run::length).orElse(null);
    boolean known = length != null && length.sd() <= GUESSED * length.value();
    return Double.isInfinite(span.to()) && !known;
  }

  private static List<PlacedSight> clear(Scene scene, String reach) {
    return scene.line().sights().stream()
        .filter(sight -> sight.visit().equals(scene.visit().label()))
        .filter(sight -> sight.clarity() == Pass.Clarity.CLEAR)
        .filter(sight -> sight.from().reach().equals(reach))
        .sorted(Comparator.comparingDouble(sight -> sight.from().distance()))
        .toList();
  }
}
