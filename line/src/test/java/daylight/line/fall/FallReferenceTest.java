package daylight.line.fall;

import static daylight.line.course.Known.known;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.book.FieldBook;
import daylight.line.book.Level;
import daylight.line.book.Material;
import daylight.line.book.Node;
import daylight.line.book.Pass;
import daylight.line.book.Reach;
import daylight.line.counter.Tracks;
import daylight.line.course.Draft;
import daylight.line.course.Estimator;
import daylight.line.course.Line;
import daylight.line.course.Push;
import daylight.line.course.TestPriors;
import daylight.line.measure.Mark;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Falls and their limits against figures that were published or follow from a formula. */
class FallReferenceTest {
  private static final double INCH = 0.0254;

  private static FallRules.Row row(double from, double to, double slope, Mark mark) {
    return new FallRules.Row(from * INCH, to * INCH, List.of(), slope, "table", "source", mark);
  }

  /** International Plumbing Code, Table 704.1, as adopted by the city of Chicago (looked up). */
  private static final FallRules IPC =
      new FallRules(
          "ipc-704.1",
          "Table 704.1",
          List.of(
              row(0, 2.5, 1 / 48.0, Mark.LOOKED_UP),
              row(3, 6, 1 / 96.0, Mark.LOOKED_UP),
              row(8, 60, 1 / 192.0, Mark.LOOKED_UP)),
          null);

  /** International Residential Code, P3005.3, as quoted in a public forum (looked up). */
  private static final FallRules IRC =
      new FallRules(
          "irc-p3005.3",
          "P3005.3",
          List.of(row(0, 2.5, 0.02, Mark.LOOKED_UP), row(3, 60, 0.01, Mark.LOOKED_UP)),
          null);

  private static double limit(FallRules rules, double inches) {
    return rules.limit(inches * INCH, Reach.Use.SANITARY).orElseThrow().slope();
  }

  @Test
  void theTableOfTheInternationalPlumbingCode() {
    // In per cent, as printed beside the fractions: 2.083, 1.042, 0.521.
    assertThat(limit(IPC, 2)).isCloseTo(0.02083, within(5e-6));
    assertThat(limit(IPC, 3)).isCloseTo(0.01042, within(5e-6));
    assertThat(limit(IPC, 4)).isCloseTo(0.01042, within(5e-6));
    assertThat(limit(IPC, 8)).isCloseTo(0.00521, within(5e-6));
    assertThat(IPC.limit(7 * INCH, Reach.Use.SANITARY)).isEmpty();
  }

  @Test
  void twoPerCentPassesARuleOfTwoPerCentAndFailsOneOfAQuarterInchInAFoot() {
    Measured twoPerCent = new Measured(0.02, 1e-6);

    assertThat(twoPerCent.probabilityBelow(limit(IRC, 2))).isCloseTo(0.5, within(1e-9));
    assertThat(new Measured(0.020004, 1e-6).probabilityBelow(limit(IRC, 2))).isLessThan(1e-4);
    assertThat(new Measured(0.020004, 1e-6).probabilityBelow(limit(IPC, 2))).isGreaterThan(0.9999);
  }

  @Test
  void aPumpedLineAndAnUnknownBoreHaveNoLimit() {
    assertThat(IPC.limit(2 * INCH, Reach.Use.PUMPED)).isEmpty();
    assertThat(IPC.limit(null, Reach.Use.STORM)).isEmpty();
  }

  /** The standard normal distribution, as tabulated everywhere (from memory). */
  @Test
  void theProbabilityOfBeingBelowALimitIsThatOfTheNormalDistribution() {
    Measured slope = new Measured(0.01, 0.002);

    assertThat(slope.probabilityBelow(0.01)).isCloseTo(0.5, within(1e-12));
    assertThat(slope.probabilityBelow(0.012)).isCloseTo(0.841345, within(1e-6));
    assertThat(slope.probabilityBelow(0.01 - 1.959964 * 0.002)).isCloseTo(0.025, within(1e-6));
  }

  /**
   * Two independent depths of standard uncertainty σ a length L apart give a slope good to √2·σ/L
   * (propagation of variance, Ghilani, Adjustment Computations, ch. 6, from memory): for 0.05 m
   * over 10 m, 0.7 %.
   */
  @Test
  void twoIndependentHeightsGiveASlopeGoodToRootTwoSigmaOverLength() {
    double sd = 0.05;
    Draft draft = drain();
    draft.level(height("N1", 99, sd)).level(height("N2", 98.8, sd));

    FallStretch whole = known(Faller.of(line(draft.book()), "V1", IPC).whole("R1"));

    assertThat(whole.slope().value()).isCloseTo(0.02, within(0.0015));
    assertThat(whole.slope().sd()).isCloseTo(Math.sqrt(2) * sd / 10, within(3e-4));
    assertThat(known(whole.limit()).slope()).isEqualTo(1 / 96.0);
    assertThat(whole.belowLimit())
        .isCloseTo(whole.slope().probabilityBelow(1 / 96.0), within(1e-12));
    assertThat(whole.adverse()).isLessThan(0.01);
  }

  /** A drain 10 m long that nothing but the level of both its inverts tells the height of. */
  private static Draft drain() {
    return new Draft()
        .landmark("A", true)
        .landmark("B", true)
        .tape("A", "B", 10)
        .node("N1", Node.Kind.ACCESS)
        .node("N2", Node.Kind.OUTLET)
        .along("N1", 3, 2)
        .along("N2", 3, 12)
        .reach(Draft.pipe("R1", "N1", "N2", "main", Material.PVC, 0.1))
        .pass(
            new Push("P1", "N1", "R1")
                .end(10.04, Pass.Why.OUTLET_REACHED, "N2")
                .stretch("standing-water", 4, 6, java.util.Map.of("depth", 0.03)));
  }

  private static Level height(String node, double metres, double sd) {
    return new Level.Height(
        Draft.id("level", node),
        new Level.Mark(node, Level.Part.INVERT),
        new Reading(metres, sd, metres + " m"));
  }

  private static Line line(FieldBook book) {
    return Estimator.estimate(book, Tracks.NONE, TestPriors.shipped());
  }

  @Test
  void waterSeenFillsAShareOfTheBore() {
    WaterSeen water = Faller.of(line(drain().book()), "V1", IPC).water().getFirst();

    assertThat(known(water.depth()).value()).isEqualTo(0.03);
    assertThat(water.share()).isCloseTo(0.3, within(1e-12));
    assertThat(water.from().distance()).isCloseTo(4, within(0.1));
    assertThat(water.still()).isNull();
  }

  @Test
  void withoutHeightsThereIsNoStretch() {
    assertThat(Faller.of(line(drain().book()), "V1", IPC).stretches()).isEmpty();
  }

  @Test
  void whereNobodyKnowsWhichWayTheWaterGoesNothingRunsBackward() {
    Draft draft =
        new Draft()
            .landmark("A", true)
            .landmark("B", true)
            .tape("A", "B", 10)
            .node("N1", Node.Kind.ACCESS)
            .node("N2", Node.Kind.END)
            .along("N1", 3, 2)
            .along("N2", 3, 12);
    Reach pipe = Draft.pipe("R1", "N1", "N2", "main", Material.PVC, 0.1);
    draft.reach(
        new Reach(
            pipe.id(),
            pipe.line(),
            pipe.from(),
            pipe.to(),
            new Reach.Water.Unknown("dry"),
            pipe.use(),
            pipe.material(),
            pipe.bore(),
            null));
    draft.pass(new Push("P1", "N1", "R1").end(10.04, Pass.Why.ENOUGH, "N2"));
    draft.level(height("N1", 98.8, 0.005)).level(height("N2", 99, 0.005));

    Optional<FallStretch> whole =
        Optional.ofNullable(Faller.of(line(draft.book()), "V1", IPC).whole("R1"));

    assertThat(whole.orElseThrow().adverse()).isZero();
    assertThat(whole.orElseThrow().belowLimit()).isLessThan(0.01);
  }
}
