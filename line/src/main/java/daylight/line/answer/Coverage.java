package daylight.line.answer;

import daylight.line.book.Pass;
import daylight.line.book.Place;
import daylight.line.course.PlacedSight;
import daylight.line.course.Route;
import daylight.line.course.Run;
import daylight.line.measure.Measured;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How much of a line was seen with clear sight on one visit.
 *
 * @param share of the length that is known, from 0 to 1
 * @param metres that were seen
 * @param open runs of which nothing tells how far they go on
 * @param unseen stretches that were not seen clearly, in order along each reach
 */
record Coverage(double share, double metres, List<Run> open, List<Stretch> unseen) {
  /** Stretches shorter than this are not worth telling, metres. */
  private static final double WORTH_TELLING = 0.3;

  /**
   * A length is no better than a guess from this relative standard uncertainty on; common practice.
   */
  private static final double GUESSED = 0.05;

  /** A stretch of one reach. */
  record Stretch(Place from, Place to) {}

  static Coverage of(Case one) {
    double length = 0;
    double seen = 0;
    List<Stretch> unseen = new ArrayList<>();
    for (Run run : one.runs()) {
      double extent = Route.extent(run);
      length += extent;
      List<PlacedSight> clear = sights(one, run, Pass.Clarity.CLEAR);
      double at = 0;
      for (PlacedSight sight : clear) {
        double from = Math.max(at, sight.from().distance());
        double to = Math.min(extent, sight.to().distance());
        if (from - at > WORTH_TELLING) {
          unseen.add(new Stretch(run.at(at), run.at(from)));
        }
        if (to > from) {
          seen += to - from;
        }
        at = Math.max(at, to);
      }
      if (extent - at > WORTH_TELLING) {
        unseen.add(new Stretch(run.at(at), run.at(extent)));
      }
    }
    List<Run> open = one.runs().stream().filter(run -> !known(run.length())).toList();
    return new Coverage(length > 0 ? seen / length : 0, seen, open, unseen);
  }

  /** A length that is a guess does not tell how much of it was seen. */
  private static boolean known(@Nullable Measured length) {
    return length != null && length.sd() <= GUESSED * length.value();
  }

  /** Whether at least so much of a line was seen whose whole length is known. */
  boolean whole(double enough) {
    return open.isEmpty() && share >= enough;
  }

  private static List<PlacedSight> sights(Case one, Run run, Pass.Clarity clarity) {
    return one.line().sights().stream()
        .filter(s -> s.visit().equals(one.visit().label()))
        .filter(s -> s.clarity() == clarity)
        .filter(s -> s.from().reach().equals(run.reach().label()))
        .sorted(Comparator.comparingDouble(s -> s.from().distance()))
        .toList();
  }
}
