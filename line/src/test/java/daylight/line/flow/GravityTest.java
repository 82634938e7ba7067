package daylight.line.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import daylight.line.measure.Measured;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Steady flow by gravity against published examples. */
class GravityTest {
  private static final double FOOT = 0.3048;
  private static final double INCH = 0.0254;
  private static final double CFS = FOOT * FOOT * FOOT;
  private static final double GPM = 3.785411784e-3 / 60;

  static Measured sure(double value) {
    return new Measured(value, Math.max(1e-12, 1e-9 * Math.abs(value)));
  }

  static GravityPipe pipe(double inches, double slope, double n) {
    return GravityPipe.of(
        sure(inches * INCH), sure(slope), new Roughness(FrictionLaw.MANNING, sure(n)));
  }

  private static Capacity.Carries carries(GravityPipe pipe) {
    if (Gravity.capacity(pipe) instanceof Capacity.Carries carries) {
      return carries;
    }
    throw new AssertionError("it carries nothing");
  }

  private static Running.PartFull partFull(GravityPipe pipe, double flow) {
    if (Gravity.at(pipe, sure(flow), 0) instanceof Running.PartFull part) {
      return part;
    }
    throw new AssertionError("not part full: " + Gravity.at(pipe, sure(flow), 0));
  }

  /**
   * civiltoolbox.com/manningpipe (looked up): 8 in, 0.013, 0.5 %: 0.854 cfs, 2.448 ft/s with
   * rounded steps, 0.8568 without, with K 1.49 for 1.486; engineeringprep.com/problems/472 (looked
   * up): 0.5 ft, 0.02, 5 %: 0.82 cfs; pe-calc.com (looked up): 24 in, 0.012, 0.3 %: 13.4 cfs.
   */
  @ParameterizedTest
  @CsvSource({
    "8, 0.013, 0.005, 0.854, 0.5",
    "8, 0.013, 0.005, 0.8568, 0.3",
    "6, 0.02, 0.05, 0.82, 0.7",
    "6, 0.02, 0.05, 0.8156, 0.05",
    "24, 0.012, 0.003, 13.4, 0.3",
    "24, 0.012, 0.003, 13.423, 0.05"
  })
  void fullPipes(double inches, double n, double slope, double cfs, double perCent) {
    assertThat(carries(pipe(inches, slope, n)).flow().value().value() / CFS)
        .isCloseTo(cfs, withPercentage(perCent));
  }

  /**
   * pe-calc.com (looked up): 24 in, 0.012, 0.3 %, 6.8 cfs: Q/Qfull 0.51, y/D slightly above 0.50;
   * unrounded y/D 0.50387, 4.287 ft/s (derived).
   */
  @Test
  void aPipeHalfFull() {
    Running.PartFull part = partFull(pipe(24, 0.003, 0.012), 6.8 * CFS);
    assertThat(part.filled()).isCloseTo(0.50387, within(5e-5));
    assertThat(part.speed().value().value() / FOOT).isCloseTo(4.287, within(1e-3));
    assertThat(part.regime()).isEqualTo(Regime.TURBULENT);
    assertThat(part.cleans()).isTrue();
  }

  /** Flow and speed over those of the full pipe at each depth (standards 3.2, derived; Chow). */
  @ParameterizedTest
  @CsvSource({
    "0.10, 0.0209, 0.4012",
    "0.25, 0.1370, 0.7007",
    "0.50, 0.5000, 1.0000",
    "0.75, 0.9119, 1.1335",
    "0.8128, 0.9924, 1.1400"
  })
  void partOfTheFullFlow(double filled, double flow, double speed) {
    GravityPipe pipe = pipe(4, 0.02, 0.011);
    Capacity.Carries full = carries(pipe);
    Running.PartFull part = partFull(pipe, flow * full.flow().value().value());
    assertThat(part.filled()).isCloseTo(filled, within(2e-4));
    assertThat(part.speed().value().value() / full.speed().value()).isCloseTo(speed, within(3e-4));
  }

  /** The most flows at 0.9382 of the depth, 1.0757 of the full flow (standards 3.2, derived). */
  @Test
  void thePeak() {
    Capacity.Carries full = carries(pipe(4, 0.02, 0.011));
    assertThat(full.peakShare()).isCloseTo(0.9382, within(1e-4));
    assertThat(full.peak() / full.flow().value().value()).isCloseTo(1.0757, within(1e-4));
  }

  /** Half-full capacities in gpm and ft/s (standards 3.3, derived with K 1.486). */
  @ParameterizedTest
  @CsvSource({
    "0.009, 3, 0.02, 40.5, 3.68",
    "0.009, 4, 0.02, 87.2, 4.46",
    "0.009, 4, 0.0104167, 63.0, 3.22",
    "0.009, 6, 0.0104167, 185.6, 4.21",
    "0.011, 3, 0.02, 33.1, 3.01",
    "0.011, 4, 0.02, 71.4, 3.65",
    "0.011, 4, 0.0104167, 51.5, 2.63",
    "0.011, 6, 0.0104167, 151.9, 3.45",
    "0.013, 3, 0.02, 28.0, 2.55",
    "0.013, 4, 0.02, 60.4, 3.08",
    "0.013, 4, 0.0104167, 43.6, 2.23",
    "0.013, 6, 0.0104167, 128.5, 2.92"
  })
  void halfFullCapacities(double n, double inches, double slope, double gpm, double feet) {
    Capacity.Carries full = carries(pipe(inches, slope, n));
    assertThat(full.flow().value().value() / 2 / GPM).isCloseTo(gpm, within(0.06));
    assertThat(full.speed().value() / FOOT).isCloseTo(feet, within(0.006));
    Running.PartFull half = partFull(pipe(inches, slope, n), full.flow().value().value() / 2);
    assertThat(half.filled()).isCloseTo(0.5, within(1e-6));
  }

  /** Slopes in per cent for 2 ft/s, full or half full (standards 3.4, derived). */
  @ParameterizedTest
  @CsvSource({
    "0.009, 3, 0.592",
    "0.009, 4, 0.403",
    "0.009, 6, 0.235",
    "0.009, 8, 0.160",
    "0.013, 3, 1.234",
    "0.013, 4, 0.841",
    "0.013, 6, 0.490",
    "0.013, 8, 0.334"
  })
  void slopesThatCleanThemselves(double n, double inches, double perCent) {
    Roughness wall = new Roughness(FrictionLaw.MANNING, sure(n));
    for (double share : new double[] {0.5, 1}) {
      double slope = Gravity.slopeFor(inches * INCH, wall, share, Gravity.SELF_CLEANSING, 1e-6);
      assertThat(slope * 100).isCloseTo(perCent, within(6e-4));
    }
    assertThat(carries(pipe(inches, perCent / 99, n)).cleans()).isTrue();
    assertThat(carries(pipe(inches, perCent / 101, n)).cleans()).isFalse();
  }

  /** Colebrook's smooth plastic is an n of 0.0081 at this size: a tenth more than at 0.009. */
  @Test
  void bothLawsTellNearlyTheSameOfSmoothPlastic() {
    Roughness wall = new Roughness(FrictionLaw.DARCY_WEISBACH, sure(0.0015e-3));
    GravityPipe smooth = GravityPipe.of(sure(4 * INCH), sure(0.02), wall);
    assertThat(carries(smooth).flow().value().value())
        .isCloseTo(carries(pipe(4, 0.02, 0.009)).flow().value().value(), withPercentage(12));
    assertThat(carries(smooth).peakShare()).isBetween(0.93, 0.96);
  }

  @Test
  void limitsAreResults() {
    GravityPipe good = pipe(4, 0.02, 0.011);
    double full = carries(good).flow().value().value();
    assertThat(Gravity.at(good, new Measured(0, 1e-9), 0)).isEqualTo(new Running.NoFlow());
    assertThat(Gravity.capacity(pipe(4, 0, 0.011))).isEqualTo(new Capacity.NotFalling(0));
    assertThat(Gravity.at(pipe(4, -0.01, 0.011), sure(1e-3), 0))
        .isEqualTo(new Running.NotFalling(-0.01));
    assertThat(Gravity.at(good, sure(2 * full), 0))
        .isInstanceOfSatisfying(
            Running.Surcharged.class,
            over -> {
              assertThat(over.slope()).isCloseTo(0.08, within(1e-8));
              assertThat(over.rise()).isCloseTo(0.06, within(1e-8));
            });
    assertThat(Gravity.at(good, sure(full / 2), 0.04))
        .isInstanceOfSatisfying(
            Running.PartFull.class, part -> assertThat(part.outletDrowned()).isFalse());
    assertThat(Gravity.at(good, sure(full / 2), 0.06))
        .isInstanceOfSatisfying(
            Running.PartFull.class, part -> assertThat(part.outletDrowned()).isTrue());
    Roughness wall = new Roughness(FrictionLaw.DARCY_WEISBACH, sure(1e-5));
    GravityPipe trickle = GravityPipe.of(sure(0.1), sure(0.0005), wall);
    assertThat(partFull(trickle, 2e-5).regime()).isEqualTo(Regime.LAMINAR);
  }

  /** A quarter of the section gone takes (3/4)^(4/3) of the flow: area and the root of it. */
  @Test
  void whatStandsInThePipeTakesFromIt() {
    GravityPipe clear = pipe(4, 0.02, 0.011);
    GravityPipe filled =
        new GravityPipe(clear.bore(), clear.slope(), clear.roughness(), 0.75, 1.3e-6);
    assertThat(carries(filled).flow().value().value() / carries(clear).flow().value().value())
        .isCloseTo(StrictMath.pow(0.75, 4.0 / 3), within(1e-9));
  }

  @Test
  void howLikelyItCarries() {
    Roughness wall = new Roughness(FrictionLaw.MANNING, sure(0.011));
    GravityPipe pipe = GravityPipe.of(sure(0.1), new Measured(0.02, 0.005), wall);
    double full = carries(pipe).flow().value().value();
    Propagated same = Propagated.measured(FlowInput.INFLOW, "", sure(full));
    assertThat(Gravity.carries(pipe, same)).isCloseTo(0.5, within(1e-6));
    Propagated less = Propagated.measured(FlowInput.INFLOW, "", sure(full * Math.sqrt(0.5)));
    // The slope needed is half of the one there is: two standard uncertainties less.
    assertThat(Gravity.carries(pipe, less)).isCloseTo(0.97725, within(1e-5));
    assertThat(Gravity.margin(pipe, less).decides().what()).isEqualTo(FlowInput.SLOPE);
    // 95 % in the slope: the root of 1 ± 1.96 × 0.25.
    assertThat(carries(pipe).least() / full).isCloseTo(Math.sqrt(1 - 0.489991), within(1e-5));
    assertThat(carries(pipe).most() / full).isCloseTo(Math.sqrt(1 + 0.489991), within(1e-5));
    GravityPipe maybeLevel = GravityPipe.of(sure(0.1), new Measured(0.005, 0.005), wall);
    assertThat(carries(maybeLevel).least()).isZero();
  }

  /** A bore known worse than its own size, a fall that may be anything: a result all the same. */
  @Test
  void figuresThatAreHardlyKnownHaveAResult() {
    Roughness wall = new Roughness(FrictionLaw.MANNING, new Measured(0.011, 0.02));
    GravityPipe pipe = GravityPipe.of(new Measured(1e-4, 0.002), new Measured(0.02, 3), wall);
    assertThat(carries(pipe).flow().value().sd()).isPositive();
    assertThat(Gravity.at(pipe, new Measured(1e-9, 1e-6), 0)).isNotNull();
    assertThat(Gravity.carries(pipe, Propagated.measured(FlowInput.FLOW, "", sure(1))))
        .isBetween(0.0, 1.0);
  }

  @Test
  void whatIsNoDrainIsRefused() {
    Measured one = sure(1);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Roughness(FrictionLaw.MANNING, sure(0.2)));
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> GravityPipe.of(one, one, new Roughness(FrictionLaw.HAZEN_WILLIAMS, sure(130))));
    assertThatIllegalArgumentException().isThrownBy(() -> pipe(-4, 0.02, 0.011));
  }
}
