package daylight.line.dig;

import daylight.line.book.Place;
import daylight.line.book.Reach;
import daylight.line.course.Line;
import daylight.line.course.PlacedFinding;
import daylight.line.course.PlacedPass;
import java.util.Comparator;
import java.util.Locale;

/**
 * Whether the pipe is of iron at a place: what the reach is said to be of, until a change of
 * material was seen on the way down to there.
 */
final class Ferrous {
  private static final String CHANGE = "material-change";

  private Ferrous() {}

  static boolean at(Line line, Reach reach, Place place) {
    return line.findings().stream()
        .filter(seen -> seen.finding().kind().equals(CHANGE))
        .filter(seen -> seen.from().reach().equals(place.reach()))
        .filter(seen -> seen.from().distance() <= place.distance())
        .filter(seen -> seen.finding().words().containsKey("becomes"))
        .filter(seen -> down(line, seen))
        .max(Comparator.comparingDouble(seen -> seen.from().distance()))
        .map(seen -> iron(String.valueOf(seen.finding().words().get("becomes"))))
        .orElse(reach.material().ferrous());
  }

  private static boolean iron(String becomes) {
    String word = becomes.toLowerCase(Locale.ROOT);
    return word.contains("iron") || word.contains("steel");
  }

  /** What a pipe becomes is told in the direction of the push. */
  private static boolean down(Line line, PlacedFinding seen) {
    return line.passes().stream()
        .filter(pass -> pass.visit().equals(seen.visit()) && pass.pass().equals(seen.pass()))
        .flatMap(pass -> pass.legs().stream())
        .filter(leg -> leg.from().reach().equals(seen.from().reach()))
        .findFirst()
        .map(PlacedPass.Leg::down)
        .orElse(true);
  }
}
