package daylight.line.fall;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.book.Finding;
import daylight.line.book.Pass;
import daylight.line.book.Place;
import daylight.line.book.Where;
import daylight.line.course.Draft;
import daylight.line.course.Line;
import daylight.line.course.PlacedFinding;
import daylight.line.course.PlacedSight;
import daylight.line.course.SplitMix64;
import daylight.line.course.TrueLine;
import daylight.line.measure.Reading;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What holds water, on levelled lines of known truth. What crews saw is drawn at other rates than
 * it is weighed by, so that the table is not its own judge: they miss and mistake something.
 */
class WaterWeigherTest {
  private static final String VISIT = "V1";
  private static final int MOST_TRIES = 20;

  /** A water of known cause as a crew noted it, on its line. */
  private record Case(Line line, PlacedFinding water) {
    Held held() {
      return new WaterWeigher(line, VISIT, Ponder.dry(line, new Draws(7, 300))).held(water);
    }
  }

  /** What came out of many; those are done of which no test is left to ask for. */
  private static final class Tally {
    private int of;
    private int done;
    private int found;
    private int mistaken;
    private int openWithoutTest;

    void take(Held held, WaterCause cause) {
      Optional<Held.Share> told = held.found();
      of++;
      done += told.isPresent() || held.tests().isEmpty() ? 1 : 0;
      found += told.filter(share -> share.cause() == cause).isPresent() ? 1 : 0;
      mistaken += told.filter(share -> share.cause() != cause).isPresent() ? 1 : 0;
      openWithoutTest += told.isEmpty() && held.tests().isEmpty() ? 1 : 0;
    }
  }

  @Test
  void aSampleOfEachCauseIsFound() {
    tallies(true, 9)
        .forEach(
            (cause, tally) ->
                assertThat(tally.found)
                    .as(cause.name())
                    .isGreaterThanOrEqualTo(tally.done * 2 / 3));
  }

  @Tag("long")
  @Test
  void eachCauseIsFoundWhereItsTestsWereDone() {
    tallies(true, 150)
        .forEach(
            (cause, tally) -> {
              assertThat(tally.done).as(cause.name()).isGreaterThan(40);
              assertThat(tally.found)
                  .as(cause.name())
                  .isGreaterThanOrEqualTo(tally.done * 85 / 100);
            });
  }

  @Test
  void whereNoTestWasDoneOneIsNamedAndFewAreMistaken() {
    Map<WaterCause, Tally> tallies = tallies(false, 9);

    assertThat(tallies.values()).allSatisfy(tally -> assertThat(tally.openWithoutTest).isZero());
    int mistaken = tallies.values().stream().mapToInt(tally -> tally.mistaken).sum();
    assertThat(mistaken)
        .isLessThanOrEqualTo(tallies.values().stream().mapToInt(tally -> tally.of).sum() / 5);
  }

  private static Map<WaterCause, Tally> tallies(boolean tested, int seeds) {
    Map<WaterCause, Tally> tallies = new EnumMap<>(WaterCause.class);
    for (int seed = 1; seed <= seeds; seed++) {
      for (WaterCause cause : WaterCause.values()) {
        Tally tally = tallies.computeIfAbsent(cause, _ -> new Tally());
        drawn(cause, seed, tested).forEach(one -> tally.take(one.held(), cause));
      }
    }
    return tallies;
  }

  private static List<Case> drawn(WaterCause cause, int seed, boolean tested) {
    SplitMix64 random = new SplitMix64(31L * seed + cause.name().hashCode());
    if (cause == WaterCause.GRADE) {
      Line line = TrueLine.pooled(seed).line();
      return line.findings().stream()
          .filter(placed -> placed.finding().kind().equals("standing-water"))
          .map(pool -> noted(line, pool.from(), lower(pool), cause, random, tested))
          .toList();
    }
    TrueLine one = TrueLine.levelled(seed);
    Line line = one.line();
    for (int turn = 1; turn <= MOST_TRIES; turn++) {
      Place drawn = one.drawn(100L * seed + turn);
      double length =
          line.findRun(drawn.reach()).orElseThrow().stations().getLast().place().distance();
      double begins = cause == WaterCause.TAILWATER ? length - 3 : drawn.distance();
      double ends = cause == WaterCause.TAILWATER ? length : begins + random.between(1, 2.5);
      Place from = new Place(drawn.reach(), begins);
      Place to = new Place(drawn.reach(), ends);
      boolean within = begins > 0.5 && (ends < length - 1 || cause == WaterCause.TAILWATER);
      if (within && trulyDry(one, from, to)) {
        return List.of(noted(line, from, to, cause, random, tested));
      }
    }
    return List.of();
  }

  /** Whether no water stands there by the grade, as the pipe truly lies. */
  private static boolean trulyDry(TrueLine one, Place from, Place to) {
    for (Catchment catchment : Catchment.of(one.line())) {
      double[] up = catchment.places().stream().mapToDouble(one::up).toArray();
      double[] deep = new double[up.length];
      catchment.fill(up, deep, new int[up.length]);
      for (int i = 0; i < up.length; i++) {
        Place place = catchment.places().get(i);
        boolean here =
            place.reach().equals(from.reach())
                && place.distance() >= from.distance() - 0.5
                && place.distance() <= to.distance() + 0.5;
        if (here && deep[i] > 0) {
          return false;
        }
      }
    }
    return true;
  }

  private static Place lower(PlacedFinding pool) {
    Place to = pool.to();
    return to == null ? pool.from() : to;
  }

  private static Case noted(
      Line line, Place from, Place to, WaterCause cause, SplitMix64 random, boolean tested) {
    Map<String, String> words = new TreeMap<>();
    boolean runsOff = cause == WaterCause.NOT_SETTLED;
    words.put("still", random.chance(runsOff ? 0.4 : 0.9) ? "yes" : "no");
    boolean dam = random.chance(cause == WaterCause.DAM ? 0.9 : 0.1);
    if (tested) {
      words.put("after-waiting", random.chance(runsOff ? 0.95 : 0.05) ? "gone" : "stays");
      words.put(
          "outlet",
          random.chance(cause == WaterCause.TAILWATER ? 0.95 : 0.03) ? "drowned" : "free");
      if (dam) {
        boolean gone = random.chance(cause == WaterCause.DAM ? 0.92 : runsOff ? 0.5 : 0.06);
        words.put("after-cleaning", gone ? "gone" : "stays");
      }
    }
    PlacedFinding water = placed("W", "standing-water", from, to, words);
    List<PlacedFinding> findings = new ArrayList<>(List.of(water));
    if (dam) {
      findings.add(placed("D", "roots", to, null, Map.of()));
    }
    PlacedSight sight =
        new PlacedSight(
            VISIT, "P1", to, new Place(to.reach(), to.distance() + 3), Pass.Clarity.CLEAR);
    boolean seen = random.chance(0.85);
    return new Case(
        new Line(
            line.survey(),
            line.levels(),
            line.runs(),
            findings,
            seen ? List.of(sight) : List.of(),
            line.passes(),
            line.locates(),
            line.gaps(),
            line.doubts(),
            line.joint()),
        water);
  }

  private static PlacedFinding placed(
      String label,
      String kind,
      Place from,
      @org.jspecify.annotations.Nullable Place to,
      Map<String, String> words) {
    Finding finding =
        new Finding(
            Draft.id("finding", label),
            kind,
            new Where.AtCable(new Reading(from.distance(), null, "")),
            Finding.Moving.PUSHING,
            null,
            new TreeMap<>(),
            new TreeMap<>(words),
            null,
            List.of(),
            List.of(),
            null);
    return new PlacedFinding(VISIT, "P1", finding, from, to, 0.1);
  }

  /** Of two signs of which one is always there, the shares make one; of others, at most one. */
  @ParameterizedTest
  @CsvSource({
    "STILL,MOVING,true",
    "STAYED_AFTER_WAITING,GONE_AFTER_WAITING,true",
    "STAYED_AFTER_CLEANING,GONE_AFTER_CLEANING,true",
    "TO_THE_END,ENDS_BEFORE,true",
    "OUTLET_DROWNED,OUTLET_FREE,true",
    "DAM_AT_ITS_END,CLEAR_AT_ITS_END,false"
  })
  void oppositeSignsShareTheWatersOfACause(WaterSign one, WaterSign other, boolean always) {
    for (WaterCause cause : WaterCause.values()) {
      double both = one.of(cause) + other.of(cause);
      assertThat(both).isLessThanOrEqualTo(1 + 1e-12);
      assertThat(both).isGreaterThan(always ? 1 - 1e-12 : 0.5);
    }
  }

  @Test
  void theCausesMakeOneTogetherAndTheLikeliestComesFirst() {
    Held held = drawn(WaterCause.DAM, 3, true).getFirst().held();

    assertThat(held.shares()).hasSize(4);
    assertThat(held.shares().stream().mapToDouble(Held.Share::probability).sum())
        .isCloseTo(1, org.assertj.core.api.Assertions.within(1e-12));
    assertThat(held.shares().getFirst().probability())
        .isGreaterThanOrEqualTo(held.shares().getLast().probability());
  }
}
