package daylight.line.fall;

import daylight.line.book.Finding;
import daylight.line.book.Pass;
import daylight.line.book.Place;
import daylight.line.course.Line;
import daylight.line.course.PlacedFinding;
import daylight.line.course.PlacedSight;
import daylight.line.course.Run;
import daylight.line.measure.Reading;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Weighs what holds water that was seen: each cause by how often it is met and how often it looks
 * as this water did (Bayes). How likely the grade holds it comes from profiles drawn from all that
 * is known of the heights but the water itself, so that the water is not its own witness.
 */
final class WaterWeigher {
  /** Where heights are not known, water is so often held by the grade; common practice. */
  private static final double BY_GRADE = 0.4;

  /** Of water that the grade does not hold, how much each holds; common practice, no source. */
  private static final Map<WaterCause, Double> OTHERWISE =
      Map.of(
          WaterCause.DAM, 0.45,
          WaterCause.TAILWATER, 0.20,
          WaterCause.NOT_SETTLED, 0.35);

  /**
   * Pipes settle in ways that no drawn profile has, and stand up to what one has: whatever the
   * heights say, so much is left for the other; common practice, no source.
   */
  private static final double LEFT = 0.1;

  /** So near to the end of the water something dams it, metres; common practice, no source. */
  private static final double AT_ITS_END = 0.5;

  /** So near to the end of the line water stands to its end, metres; common practice. */
  private static final double AT_THE_END = 0.3;

  /** Nothing ran for so long: half an hour empties any small drain; common practice, seconds. */
  private static final double LONG = 1800;

  private static final double SHORT = 600;

  private final Line line;
  private final String visit;
  private final Ponding dry;

  /**
   * On a line.
   *
   * @param visit the label of the visit whose findings and sight count
   * @param dry where water would stand by the grade, as if none had been seen
   */
  WaterWeigher(Line line, String visit, Ponding dry) {
    this.line = line;
    this.visit = visit;
    this.dry = dry;
  }

  /** What holds a water. */
  Held held(PlacedFinding water) {
    List<WaterSign> signs = signs(water);
    Double byGrade = byGrade(water);
    double grade = byGrade == null ? BY_GRADE : LEFT + (1 - 2 * LEFT) * byGrade;
    List<Held.Share> weights = new ArrayList<>();
    double sum = 0;
    for (WaterCause cause : WaterCause.values()) {
      double weight = OTHERWISE.containsKey(cause) ? (1 - grade) * OTHERWISE.get(cause) : grade;
      for (WaterSign sign : signs) {
        weight *= sign.of(cause);
      }
      weights.add(new Held.Share(cause, weight));
      sum += weight;
    }
    double all = sum;
    List<Held.Share> shares =
        weights.stream()
            .map(share -> new Held.Share(share.cause(), share.probability() / all))
            .sorted(Comparator.comparingDouble(Held.Share::probability).reversed())
            .toList();
    return new Held(shares, byGrade, signs, tests(shares, signs, byGrade));
  }

  /** In the middle of the water, where it is deepest or nearly so. */
  private @Nullable Double byGrade(PlacedFinding water) {
    Place from = water.from();
    Place to = lower(water);
    Place middle =
        from.reach().equals(to.reach())
            ? new Place(from.reach(), (from.distance() + to.distance()) / 2)
            : from;
    return dry.at(middle).map(Ponding.Spot::deeper).orElse(null);
  }

  private static Place lower(PlacedFinding water) {
    Place to = water.to();
    return to == null ? water.from() : to;
  }

  private List<WaterSign> signs(PlacedFinding water) {
    List<WaterSign> signs = new ArrayList<>();
    Finding finding = water.finding();
    said(finding, "still").ifPresent(yes -> signs.add(yes ? WaterSign.STILL : WaterSign.MOVING));
    rested(finding).ifPresent(signs::add);
    String cleaned = finding.words().get("after-cleaning");
    if (cleaned != null) {
      signs.add(
          cleaned.equals("gone") ? WaterSign.GONE_AFTER_CLEANING : WaterSign.STAYED_AFTER_CLEANING);
    }
    if (finding.words().containsKey("held-by")) {
      signs.add(WaterSign.HOLDER_NOTED);
    } else {
      end(water).ifPresent(signs::add);
    }
    String outlet = finding.words().get("outlet");
    if (outlet != null) {
      signs.add(outlet.equals("drowned") ? WaterSign.OUTLET_DROWNED : WaterSign.OUTLET_FREE);
    }
    if (water.to() != null) {
      signs.add(toTheEnd(lower(water)) ? WaterSign.TO_THE_END : WaterSign.ENDS_BEFORE);
    }
    return signs;
  }

  private static Optional<Boolean> said(Finding finding, String word) {
    return Optional.ofNullable(finding.words().get(word)).map(said -> said.equalsIgnoreCase("yes"));
  }

  /** Looking again says more than how long nothing had run. */
  private static Optional<WaterSign> rested(Finding finding) {
    String waited = finding.words().get("after-waiting");
    if (waited != null) {
      return Optional.of(
          waited.equals("gone") ? WaterSign.GONE_AFTER_WAITING : WaterSign.STAYED_AFTER_WAITING);
    }
    Reading since = finding.quantities().get("since");
    if (since == null || (since.value() > SHORT && since.value() < LONG)) {
      return Optional.empty();
    }
    return Optional.of(since.value() >= LONG ? WaterSign.LONG_UNUSED : WaterSign.JUST_USED);
  }

  private Optional<WaterSign> end(PlacedFinding water) {
    Place end = lower(water);
    boolean dammed =
        line.findings().stream()
            .filter(other -> other.visit().equals(visit) && other.finding().mayDam())
            .anyMatch(other -> near(other.from(), other.to(), end));
    if (dammed) {
      return Optional.of(WaterSign.DAM_AT_ITS_END);
    }
    boolean clear =
        line.sights().stream()
            .filter(sight -> sight.visit().equals(visit))
            .filter(sight -> sight.clarity() == Pass.Clarity.CLEAR)
            .anyMatch(sight -> beyond(sight, end));
    return clear ? Optional.of(WaterSign.CLEAR_AT_ITS_END) : Optional.empty();
  }

  private static boolean near(Place from, @Nullable Place to, Place end) {
    Place last = to == null ? from : to;
    return from.reach().equals(end.reach())
        && from.distance() - AT_ITS_END <= end.distance()
        && end.distance() <= last.distance() + AT_ITS_END;
  }

  /** Whether the pipe was seen right behind the water, half a metre at least. */
  private static boolean beyond(PlacedSight sight, Place end) {
    return sight.from().reach().equals(end.reach())
        && sight.from().distance() <= end.distance()
        && sight.to().distance() >= end.distance() + AT_ITS_END;
  }

  /** Whether a place is where its line lets the water out, as far as it is known. */
  private boolean toTheEnd(Place place) {
    Run run = line.findRun(place.reach()).orElseThrow();
    boolean last =
        line.runs().stream()
            .noneMatch(other -> other.reach().upstream().equals(run.reach().downstream()));
    return last
        && !run.stations().isEmpty()
        && run.stations().getLast().place().distance() - place.distance() <= AT_THE_END;
  }

  /** What was not done yet and bears on a cause that is left. */
  private static List<WaterTest> tests(
      List<Held.Share> shares, List<WaterSign> signs, @Nullable Double byGrade) {
    List<WaterTest> tests = new ArrayList<>();
    Held.Share first = shares.getFirst();
    if (first.probability() >= Held.FOUND) {
      // That nothing holds it is found by exclusion only; looking again proves it.
      return first.cause() == WaterCause.NOT_SETTLED
              && !signs.contains(WaterSign.GONE_AFTER_WAITING)
          ? List.of(WaterTest.WAIT)
          : tests;
    }
    Set<WaterCause> left = EnumSet.of(shares.get(0).cause(), shares.get(1).cause());
    shares.stream()
        .filter(share -> share.probability() >= Held.WORTH)
        .forEach(share -> left.add(share.cause()));
    boolean waited =
        signs.contains(WaterSign.STAYED_AFTER_WAITING)
            || signs.contains(WaterSign.GONE_AFTER_WAITING);
    if (left.contains(WaterCause.NOT_SETTLED) && !waited) {
      tests.add(WaterTest.WAIT);
    }
    boolean outlet =
        signs.contains(WaterSign.OUTLET_DROWNED) || signs.contains(WaterSign.OUTLET_FREE);
    if (left.contains(WaterCause.TAILWATER) && !outlet) {
      tests.add(WaterTest.SEE_OUTLET);
    }
    boolean cleaned =
        signs.contains(WaterSign.GONE_AFTER_CLEANING)
            || signs.contains(WaterSign.STAYED_AFTER_CLEANING);
    if (left.contains(WaterCause.DAM) && !cleaned) {
      tests.add(WaterTest.CLEAN);
    }
    boolean sure = byGrade != null && (byGrade < Held.WORTH || byGrade > 1 - Held.WORTH);
    if (left.contains(WaterCause.GRADE) && !sure) {
      tests.add(WaterTest.LEVEL);
    }
    return tests;
  }
}
