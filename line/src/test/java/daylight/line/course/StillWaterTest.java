package daylight.line.course;

import static daylight.line.course.Draft.metres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.book.FieldBook;
import daylight.line.book.Finding;
import daylight.line.book.Id;
import daylight.line.book.Pass;
import daylight.line.book.Place;
import daylight.line.book.Where;
import daylight.line.measure.Measured;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The surface of still water is level, and the line knows it. */
class StillWaterTest {
  private static final Place FROM = new Place("R1", 8);
  private static final Place TO = new Place("R1", 13);

  private static Push watered(Map<String, String> words, Map<String, Double> sizes) {
    return Flat.push()
        .finding(
            "standing-water",
            new Where.FromTo(metres(8), metres(13)),
            Finding.Moving.PUSHING,
            sizes,
            words,
            null);
  }

  private static Measured across(Push push) {
    FieldBook book = Flat.book(push, 3, 17);
    return Flat.line(book).fall(FROM, TO).orElseThrow();
  }

  @Test
  void bothEdgesOfStillWaterAreOfOneHeight() {
    Measured dry = across(Flat.push());
    Measured wet = across(watered(Map.of("still", "yes"), Map.of()));

    assertThat(dry.value()).isCloseTo(0.1, within(0.02));
    // Two edges, each judged to 10 mm.
    assertThat(wet.value()).isCloseTo(0, within(0.03));
    assertThat(wet.sd()).isCloseTo(0.014, within(0.002));
  }

  @Test
  void waterOfWhichNobodySaidThatItStandsStillTellsNothing() {
    assertThat(across(watered(Map.of(), Map.of()))).isEqualTo(across(Flat.push()));
    assertThat(across(watered(Map.of("still", "no"), Map.of()))).isEqualTo(across(Flat.push()));
  }

  @Test
  void behindADamOnlyItsUpperEdgeIsAtTheLevelOfTheWater() {
    Measured dry = across(Flat.push());
    Measured held = across(watered(Map.of("still", "yes", "held-by", "roots"), Map.of()));
    Push rooted = watered(Map.of("still", "yes"), Map.of()).seen("roots", 13.2, Map.of());

    assertThat(held).isEqualTo(dry);
    assertThat(across(rooted)).isEqualTo(dry);
  }

  @Test
  void behindADamItsDepthAndItsUpperEdgeStillTell() {
    Push push =
        watered(Map.of("still", "yes", "held-by", "roots"), Map.of())
            .finding(
                "standing-water",
                new Where.AtCable(metres(12.5)),
                Finding.Moving.PUSHING,
                Map.of("depth", 0.06),
                Map.of("still", "yes"),
                null);
    FieldBook book = Flat.book(push, 3, 17);

    Measured fall = Flat.line(book).fall(FROM, new Place("R1", 12.5)).orElseThrow();

    assertThat(fall.value()).isCloseTo(0.06, within(0.01));
    assertThat(fall.sd()).isLessThan(0.02);
  }

  @Test
  void theDepthOfABellyLowersItsMiddle() {
    Push push = watered(Map.of("still", "yes"), Map.of("depth", 0.05));
    Line line = Flat.line(Flat.book(push, 3, 17));

    Measured down = line.fall(FROM, new Place("R1", 10.5)).orElseThrow();
    Measured up = line.fall(new Place("R1", 10.5), TO).orElseThrow();

    assertThat(down.value()).isBetween(0.015, 0.06);
    assertThat(up.value()).isBetween(-0.06, -0.015);
  }

  /** Where the camera stopped in the water, nobody saw where it ends. */
  @Test
  void whereThePushEndedTheWaterMayGoOn() {
    Push push =
        new Push("P1", "N1", "R1")
            .end(13, Pass.Why.UNDER_WATER, null)
            .finding(
                "standing-water",
                new Where.FromTo(metres(8), metres(13)),
                Finding.Moving.PUSHING,
                Map.of(),
                Map.of("still", "yes"),
                null);
    FieldBook wet = Flat.book(push, 3, 12);
    FieldBook dry =
        Flat.book(new Push("P1", "N1", "R1").end(13, Pass.Why.UNDER_WATER, null), 3, 12);

    assertThat(Flat.line(wet).fall(FROM, TO)).isEqualTo(Flat.line(dry).fall(FROM, TO));
  }

  @Test
  void theFindingHasItsShareInTheFall() {
    FieldBook book = Flat.book(watered(Map.of("still", "yes"), Map.of()), 3, 17);

    assertThat(Flat.line(book).why(new Wanted.Fall(FROM, TO)))
        .anyMatch(
            share ->
                share.source() instanceof Source.OfEntry(Id id, Source.Sort sort, Source.Part part)
                    && id.label().equals("P1-F1")
                    && sort == Source.Sort.FINDING
                    && part == Source.Part.DEPTH);
  }

  /**
   * Where the greatest depth lies nobody says; what the middle of a pool has of it is what pools on
   * pipes that wander at random have, whichever pipe it is.
   */
  @ParameterizedTest
  @EnumSource(names = {"FLEXIBLE", "LEVELLED"})
  void theMiddleOfAPoolHasTheShareOfItsDepthThatIsSupposed(LineSort.Way way) {
    LineSort sort = LineSort.of(0, 1, 1, LineSort.Way.LONG, way);
    List<Double> shares = new ArrayList<>();
    for (int seed = 1; seed <= 80; seed++) {
      KnownProperty property = KnownProperty.of(Nature.SUPPOSED, sort, seed);
      for (StandingWater.Pool pool : new StandingWater(property).pools()) {
        double level = up(property, pool.to());
        double middle = level - up(property, (pool.from() + pool.to()) / 2);
        shares.add(middle / pool.deepest());
      }
    }
    double mean = shares.stream().mapToDouble(share -> share).average().orElse(0);
    double square =
        shares.stream().mapToDouble(share -> (share - mean) * (share - mean)).average().orElse(0);

    assertThat(shares).hasSizeGreaterThan(20);
    assertThat(mean).isCloseTo(Pond.MIDDLE, within(0.06));
    assertThat(Math.sqrt(square)).isCloseTo(Pond.MIDDLE_SD, within(0.05));
  }

  private static double up(KnownProperty property, double distance) {
    return property.truth(new Tools.Spot(0, distance)).up();
  }

  /**
   * The fall from edge to edge, which truly is none, is known at least five times as well as
   * without the water, on the median pool (ten times when measured on 30); and over all pools it
   * errs to neither side.
   */
  @Test
  void itNarrowsTheBottomByAFactorAndBiasesItToNeitherSide() {
    LineSort sort =
        LineSort.of(2, 4, 8, LineSort.Way.FLEXIBLE, LineSort.Way.LONG, LineSort.Way.WET);
    List<Double> narrower = new ArrayList<>();
    List<Double> errors = new ArrayList<>();
    for (int seed = 1; seed <= 12; seed++) {
      KnownProperty property = KnownProperty.of(Nature.SUPPOSED, sort, seed);
      Line line = Flat.line(property.book());
      for (StandingWater.Pool pool : new StandingWater(property).pools()) {
        List<Place> edges = List.of(new Place("R1", pool.from()), new Place("R1", pool.to()));
        Profile wet = line.profile(edges).orElseThrow();
        narrower.add(spread(line.dryProfile(edges).orElseThrow()) / spread(wet));
        errors.add((wet.up(0) - wet.up(1)) / spread(wet));
      }
    }
    double mean = errors.stream().mapToDouble(error -> error).average().orElseThrow();

    assertThat(errors).hasSizeGreaterThan(10);
    assertThat(narrower.stream().sorted().toList().get(narrower.size() / 2)).isGreaterThan(5);
    assertThat(Math.abs(mean)).isLessThan(3.29 / Math.sqrt(errors.size()));
  }

  private static double spread(Profile edges) {
    return Math.sqrt(edges.covariance(0, 0) + edges.covariance(1, 1) - 2 * edges.covariance(0, 1));
  }

  @Test
  void waterBehindADamLeavesTheProfileAsItIsWithoutIt() {
    Line line =
        Flat.line(Flat.book(watered(Map.of("still", "yes", "held-by", "roots"), Map.of()), 3, 17));
    List<Place> places = List.of(FROM, new Place("R1", 10.5), TO);

    Profile wet = line.profile(places).orElseThrow();
    Profile dry = line.dryProfile(places).orElseThrow();

    for (int i = 0; i < places.size(); i++) {
      assertThat(wet.up(i)).isCloseTo(dry.up(i), within(1e-6));
    }
  }

  /**
   * On lines as supposed and otherwise, with water up to the true lips: what is stated of the fall
   * between the edges of a pool, which truly is none, holds; and depths are as true as ever.
   */
  @ParameterizedTest
  @EnumSource
  void fallsAcrossPoolsAreAsUnsureAsTheySay(Nature nature) {
    LineSort sort = LineSort.of(2, 1, 3, LineSort.Way.FLEXIBLE, LineSort.Way.WET);
    int held = 0;
    int of = 0;
    for (int seed = 1; seed <= 60; seed++) {
      KnownProperty property = KnownProperty.of(nature, sort, seed);
      Line line = Flat.line(property.book());
      for (StandingWater.Pool pool : new StandingWater(property).pools()) {
        Measured fall =
            line.fall(new Place("R1", pool.from()), new Place("R1", pool.to())).orElseThrow();
        held += Math.abs(fall.value()) <= 1.96 * fall.sd() ? 1 : 0;
        of++;
        assertThat(fall.sd()).isLessThan(0.03);
      }
    }
    assertThat(of).isGreaterThan(5);
    // Chance alone takes 95 % this low once in two thousand.
    assertThat(held).isGreaterThanOrEqualTo((int) (of * 0.95 - 3.29 * Math.sqrt(of * 0.0475)));
  }
}
