package daylight.line.flow;

import static daylight.line.flow.GravityTest.sure;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import daylight.line.measure.Measured;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A pump on its pipe against worked examples, and what comes where it does not pump. */
class PumpingTest {
  private static final double FOOT = 0.3048;
  private static final double INCH = 0.0254;
  private static final double GPM = 3.785411784e-3 / 60;
  private static final Measured NEW = sure(1);

  private static Discharge.Piece piece(
      double feet, double inches, FrictionLaw law, double figure, double fittings) {
    return new Discharge.Piece(
        sure(feet * FOOT), sure(inches * INCH), new Roughness(law, sure(figure)), sure(fittings));
  }

  private static Operation.Pumps pumps(Operation operation) {
    if (operation instanceof Operation.Pumps pumps) {
      return pumps;
    }
    throw new AssertionError("it does not pump: " + operation);
  }

  private static PumpCurve feetAndGallons(double a, double b) {
    return new PumpCurve.Parabola(a * FOOT, b * FOOT / (GPM * GPM));
  }

  /**
   * Sump-scale case (standards 4, derived): 1.610 in, 60 ft, lift 8 ft, ΣK 6, C 150, H = 22 −
   * 0.0052 Q²: 35.84 gpm, 15.32 ft, 5.65 ft/s.
   */
  @Test
  void aSumpPump() {
    Discharge pipe =
        new Discharge(
            sure(8 * FOOT), List.of(piece(60, 1.610, FrictionLaw.HAZEN_WILLIAMS, 150, 6)));
    Operation.Pumps at = pumps(Pumping.of(feetAndGallons(22, 0.0052), NEW, pipe, 1.3e-6));
    assertThat(at.flow().value().value() / GPM).isCloseTo(35.84, within(0.04));
    assertThat(at.head().value().value() / FOOT).isCloseTo(15.32, within(0.02));
    assertThat(at.speed() / FOOT).isCloseTo(5.65, within(0.01));
    assertThat(at.regime()).isEqualTo(Regime.TURBULENT);
    // Water of 15.32 ft = 4.67 m head is 45.8 kJ in a cubic metre; twice that at one half.
    assertThat(at.energy(1)).isCloseTo(45_780, withPercentage(0.5));
    assertThat(at.energy(0.5)).isCloseTo(2 * at.energy(1), within(1e-6));
  }

  /**
   * White, <em>Fluid Mechanics</em>, Ex. 11.6 (from memory, recomputed): H = 490 − 0.26 Q² ft with
   * Q in 1000 gpm, lift 120 ft, 1500 ft of 16 in, f 0.030: 15.2 thousand gpm at 430 ft. The
   * roughness is the one of which a rough pipe has that f.
   */
  @Test
  void aPumpOfAWaterworks() {
    double rough = 3.7 * Math.pow(10, -1 / (2 * Math.sqrt(0.030))) * 16 * INCH;
    Discharge pipe =
        new Discharge(
            sure(120 * FOOT),
            List.of(
                new Discharge.Piece(
                    sure(1500 * FOOT),
                    sure(16 * INCH),
                    new Roughness(FrictionLaw.DARCY_WEISBACH, sure(rough)),
                    null)));
    Operation.Pumps at = pumps(Pumping.of(feetAndGallons(490, 0.26e-6), NEW, pipe, 1e-9));
    assertThat(at.flow().value().value() / GPM / 1000).isCloseTo(15.234, within(0.01));
    assertThat(at.head().value().value() / FOOT).isCloseTo(429.7, within(0.2));
  }

  /**
   * Two parabolas meet at Q = √((c − a)/(b + d)) (xon.sdsu.edu/onlinepumppipesystemequations.html,
   * looked up); here all loss is in the fittings.
   */
  @Test
  void twoParabolas() {
    double bore = 0.05;
    Discharge pipe =
        new Discharge(
            sure(3),
            List.of(
                new Discharge.Piece(
                    sure(1e-9),
                    sure(bore),
                    new Roughness(FrictionLaw.DARCY_WEISBACH, sure(1e-5)),
                    sure(20))));
    double area = Math.PI / 4 * bore * bore;
    double b = 20 / (2 * Water.GRAVITY * area * area);
    double d = 4e5;
    Operation.Pumps at = pumps(Pumping.of(new PumpCurve.Parabola(9, d), NEW, pipe, 1e-6));
    assertThat(at.flow().value().value()).isCloseTo(Math.sqrt(6 / (b + d)), within(1e-9));
    assertThat(at.head().value().value()).isCloseTo(9 - d * 6 / (b + d), within(1e-6));
  }

  @Test
  void aCurveThroughPointsNeverRisesAndMeetsThem() {
    List<PumpCurve.Point> points =
        List.of(
            new PumpCurve.Point(0, 8.5),
            new PumpCurve.Point(0.0005, 8.4),
            new PumpCurve.Point(0.0017, 6.6),
            new PumpCurve.Point(0.003, 3.4),
            new PumpCurve.Point(0.0034, 0));
    PumpCurve curve = PumpCurve.through(points);
    points.forEach(p -> assertThat(curve.head(p.flow())).isCloseTo(p.head(), within(1e-12)));
    double before = 9;
    for (double flow = 0; flow <= 0.0034; flow += 1e-5) {
      assertThat(curve.head(flow)).isLessThanOrEqualTo(before + 1e-12);
      before = curve.head(flow);
    }
    assertThat(curve.shutOff()).isEqualTo(8.5);
    assertThat(PumpCurve.through(points.subList(2, 5)).shutOff()).isEqualTo(6.6);
  }

  /** Points of a parabola, read off it densely, lead to its operating point. */
  @Test
  void pointsOfAParabolaAreNearlyIt() {
    PumpCurve parabola = feetAndGallons(22, 0.0052);
    List<PumpCurve.Point> points = new java.util.ArrayList<>();
    for (int gpm = 0; gpm <= 60; gpm += 10) {
      points.add(new PumpCurve.Point(gpm * GPM, parabola.head(gpm * GPM)));
    }
    Discharge pipe =
        new Discharge(
            sure(8 * FOOT), List.of(piece(60, 1.610, FrictionLaw.HAZEN_WILLIAMS, 150, 6)));
    double exact = pumps(Pumping.of(parabola, NEW, pipe, 1.3e-6)).flow().value().value();
    double read =
        pumps(Pumping.of(PumpCurve.through(points), NEW, pipe, 1.3e-6)).flow().value().value();
    assertThat(read).isCloseTo(exact, withPercentage(0.5));
  }

  @Test
  void whatIsNoCurveIsTold() {
    assertThat(PumpCurve.wrong(List.of()))
        .containsExactly(new PumpCurve.Wrong(PumpCurve.Fault.TOO_FEW, 0));
    assertThat(
            PumpCurve.wrong(
                List.of(
                    new PumpCurve.Point(0, 5),
                    new PumpCurve.Point(1, 6),
                    new PumpCurve.Point(1, 4),
                    new PumpCurve.Point(2, -1))))
        .containsExactly(
            new PumpCurve.Wrong(PumpCurve.Fault.HEAD_RISING, 1),
            new PumpCurve.Wrong(PumpCurve.Fault.FLOW_NOT_RISING, 2),
            new PumpCurve.Wrong(PumpCurve.Fault.BELOW_ZERO, 3));
    assertThat(PumpCurve.wrong(List.of(new PumpCurve.Point(0, 5), new PumpCurve.Point(1, 5))))
        .containsExactly(new PumpCurve.Wrong(PumpCurve.Fault.FLAT, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> PumpCurve.through(List.of()));
    assertThatIllegalArgumentException().isThrownBy(() -> new PumpCurve.Parabola(0, 1));
  }

  @Test
  void aLiftAboveItsGreatestHeadIsAResult() {
    Discharge pipe =
        new Discharge(
            new Measured(7, 0.5), List.of(piece(60, 1.610, FrictionLaw.HAZEN_WILLIAMS, 150, 6)));
    Operation none = Pumping.of(feetAndGallons(22, 0.0052), sure(1), pipe, 1.3e-6);
    assertThat(none)
        .isInstanceOfSatisfying(
            Operation.WillNotPump.class,
            will -> {
              assertThat(will.shutOff()).isCloseTo(22 * FOOT, within(1e-9));
              // (22 ft − 7 m) is −0.589 standard uncertainties of the lift.
              assertThat(will.may()).isCloseTo(0.278, within(0.001));
            });
  }

  @Test
  void beyondTheLastPointOfItsCurveNothingIsSaid() {
    PumpCurve curve =
        PumpCurve.through(List.of(new PumpCurve.Point(0, 8), new PumpCurve.Point(0.001, 6)));
    Discharge pipe =
        new Discharge(sure(1), List.of(piece(10, 2, FrictionLaw.HAZEN_WILLIAMS, 150, 1)));
    assertThat(Pumping.of(curve, NEW, pipe, 1.3e-6)).isInstanceOf(Operation.BeyondCurve.class);
  }

  @Test
  void twoPipesInARowLoseWhatEachLoses() {
    Discharge.Piece one = piece(60, 1.610, FrictionLaw.HAZEN_WILLIAMS, 150, 3);
    Discharge both = new Discharge(sure(2), List.of(one, one));
    double single = Pumping.head(new Discharge(sure(2), List.of(one)), 0.001, 1.3e-6) - 2;
    assertThat(Pumping.head(both, 0.001, 1.3e-6)).isCloseTo(2 + 2 * single, within(1e-9));
    assertThat(both.volume())
        .isCloseTo(2 * 60 * FOOT * Math.PI / 4 * 1.610 * 1.610 * INCH * INCH, within(1e-9));
  }
}
