package daylight.line.sonde;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import daylight.line.book.Material;
import daylight.line.course.SplitMix64;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The field of the sonde. Reference values derived from griffiths-5.89 (from memory) with a numeric
 * library outside this program, printed to the digits given; a loop of current integrated here
 * (Biot and Savart) is the check that does not share the formula.
 */
class DipoleTest {
  private static final double EAST = StrictMath.PI / 2;

  /** Its nose to the right, so that x is along the pipe. */
  private static Dipole along(double depth, double tilt) {
    return new Dipole(0, 0, depth, EAST, tilt, 1);
  }

  private static double bx(Dipole sonde, double x) {
    return sonde.at(x, 0, 0).x();
  }

  private static double bz(Dipole sonde, double x) {
    return sonde.at(x, 0, 0).z();
  }

  private static double root(DoubleUnaryOperator f, double from, double to) {
    double low = from;
    double high = to;
    boolean rising = f.applyAsDouble(low) < 0;
    for (int i = 0; i < 200; i++) {
      double middle = (low + high) / 2;
      if (f.applyAsDouble(middle) < 0 == rising) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  private static double largest(DoubleUnaryOperator f, double from, double to) {
    double low = from;
    double high = to;
    for (int i = 0; i < 300; i++) {
      double one = low + (high - low) / 3;
      double two = high - (high - low) / 3;
      if (f.applyAsDouble(one) < f.applyAsDouble(two)) {
        low = one;
      } else {
        high = two;
      }
    }
    return (low + high) / 2;
  }

  @Test
  void ofALevelSondeIsAsTheReferenceSays() {
    Dipole level = along(1, 0);
    assertThat(bx(level, 0)).isCloseTo(-1, within(1e-12));
    assertThat(root(x -> bx(level, x), 0.1, 1.1)).isCloseTo(0.70711, within(5e-6));
    double side = largest(x -> bx(level, x), 0.8, 3);
    assertThat(side).isCloseTo(1.22474, within(1e-5));
    assertThat(bx(level, side)).isCloseTo(0.20239, within(5e-6));
    assertThat(20 * StrictMath.log10(bx(level, side))).isCloseTo(-13.9, within(0.05));
    assertThat(bz(level, 0)).isZero();
    double extremum = largest(x -> bz(level, x), 0, 2);
    assertThat(extremum).isCloseTo(0.5, within(1e-6));
    assertThat(bz(level, extremum)).isCloseTo(0.85865, within(5e-6));
  }

  @ParameterizedTest
  @CsvSource({"0.25, 0.990", "0.5, 0.905", "1, 0.559"})
  void inWholeHasAFlatTop(double u, double share) {
    double total = along(1, 0).at(u, 0, 0).total();
    assertThat(total).isCloseTo(share, within(5e-4));
    double formula = StrictMath.sqrt(1 + 4 * u * u) / ((1 + u * u) * (1 + u * u));
    assertThat(total).isCloseTo(formula, within(1e-12));
  }

  @Test
  void fallsSilentOnAHyperbola() {
    for (double y : new double[] {0, 0.4, 1.3}) {
      double x = root(at -> along(1, 0).at(at, y, 0).x(), 0.1, 3);
      assertThat(2 * x * x - y * y).isCloseTo(1, within(1e-9));
    }
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/daylight/line/sonde/tilted.csv", numLinesToSkip = 1)
  void ofATiltedSondeIsAsTheReferenceSays(
      double depth,
      double tilt,
      double first,
      double second,
      double spacing,
      double level,
      double errorPercent,
      double middle,
      double over,
      double peak) {
    Dipole sonde = along(depth, StrictMath.toRadians(tilt));
    assertThat(root(x -> bx(sonde, x), -3 * depth, -0.2 * depth)).isCloseTo(first, within(6e-5));
    assertThat(root(x -> bx(sonde, x), -0.1 * depth, 1.5 * depth)).isCloseTo(second, within(6e-5));
    assertThat(root(x -> bz(sonde, x), -1.2 * depth, 0.2 * depth)).isCloseTo(over, within(6e-5));
    double loudest = largest(x -> StrictMath.abs(bx(sonde, x)), first * 0.9, second * 0.9);
    assertThat(loudest).isCloseTo(peak, within(6e-5));
  }

  /** karst-radiolocation: the null of an upright sonde moves by about a third of its lean. */
  @Test
  void ofAnUprightSondeLooksNothingLikeThat() {
    Dipole upright = along(2, StrictMath.PI / 2);
    assertThat(StrictMath.abs(bx(upright, 0))).isLessThan(1e-12);
    assertThat(root(x -> bz(upright, x), 1, 5)).isCloseTo(2 * StrictMath.sqrt(2), within(1e-9));
    double lean = StrictMath.toRadians(5);
    Dipole leaning = along(2, StrictMath.PI / 2 - lean);
    double moved = root(x -> bx(leaning, x), -1, 1);
    assertThat(StrictMath.abs(moved)).isCloseTo(2 * StrictMath.tan(lean) / 3, within(3e-3));
  }

  @Test
  void isThatOfASmallLoopOfCurrent() {
    SplitMix64 dice = new SplitMix64(20261125);
    double worst = 0;
    double worstOfHalf = 0;
    for (int i = 0; i < 40; i++) {
      Dipole sonde =
          new Dipole(
              dice.between(-1, 1),
              dice.between(-1, 1),
              dice.between(0.8, 2),
              dice.between(0, 6),
              dice.between(-1.5, 1.5),
              dice.between(0.5, 2));
      double x = dice.between(-2, 2);
      double y = dice.between(-2, 2);
      worst = StrictMath.max(worst, CurrentLoop.difference(sonde, 0.04, x, y, 0.1));
      worstOfHalf = StrictMath.max(worstOfHalf, CurrentLoop.difference(sonde, 0.02, x, y, 0.1));
    }
    // The next term of the loop is of the order of (radius / distance)², here (0.04 / 0.9)².
    assertThat(worst).isLessThan(4 * 0.04 * 0.04 / (0.9 * 0.9)).isGreaterThan(1e-5);
    assertThat(worst / worstOfHalf).isCloseTo(4, within(0.2));
  }

  @Test
  void scalesTurnsAndMirrorsWithTheSonde() {
    SplitMix64 dice = new SplitMix64(7);
    for (int i = 0; i < 200; i++) {
      double depth = dice.between(0.3, 4);
      double bearing = dice.between(0, 6);
      double tilt = dice.between(-1.5, 1.5);
      double x = dice.between(-3, 3);
      double y = dice.between(-3, 3);
      Field field = new Dipole(0, 0, depth, bearing, tilt, 1).at(x, y, 0);
      Field twice = new Dipole(0, 0, 2 * depth, bearing, tilt, 1).at(2 * x, 2 * y, 0);
      assertThat(8 * twice.total()).isCloseTo(field.total(), within(1e-9));
      double by = dice.between(0, 6);
      double turnedX = x * StrictMath.cos(by) + y * StrictMath.sin(by);
      double turnedY = y * StrictMath.cos(by) - x * StrictMath.sin(by);
      Field turned = new Dipole(0, 0, depth, bearing + by, tilt, 1).at(turnedX, turnedY, 0);
      assertThat(turned.z()).isCloseTo(field.z(), within(1e-9));
      assertThat(turned.level(1 + by)).isCloseTo(field.level(1), within(1e-9));
      Field mirrored = new Dipole(0, 0, depth, -bearing, tilt, 1).at(-x, y, 0);
      assertThat(mirrored.x()).isCloseTo(-field.x(), within(1e-9));
      assertThat(mirrored.y()).isCloseTo(field.y(), within(1e-9));
      assertThat(mirrored.z()).isCloseTo(field.z(), within(1e-9));
    }
  }

  /** griffiths-9.4, from memory; resistivities are typical ranges. */
  @ParameterizedTest
  @CsvSource({
    "0.2, 9.9",
    "1, 22.2",
    "5, 49.7",
    "10, 70.3",
    "30, 121.8",
    "100, 222.4",
    "1000, 703.4"
  })
  void fadesInSoilsByTheirSkinDepth(double resistivity, double depth) {
    assertThat(Sonde.skinDepth(resistivity, 512)).isCloseTo(depth, within(0.06));
  }

  /** About 1.9 mm in grey iron and 0.9 mm in steel; constants of the metals from memory. */
  @Test
  void hardlyComesThroughIron() {
    assertThat(Wall.of(Material.CAST_IRON).skinDepth()).isCloseTo(1.9e-3, within(5e-5));
    assertThat(Wall.of(Material.STEEL).skinDepth()).isCloseTo(0.9e-3, within(5e-5));
    assertThat(Sonde.wallInSkinDepths(Material.CAST_IRON)).isEqualTo(3);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Sonde.wallInSkinDepths(Material.PVC))
        .withMessageContaining("PVC");
  }

  @Test
  void refusesWhatIsNoSonde() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Dipole(0, 0, 0, 0, 0, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> new Dipole(0, 0, 1, 0, 2, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> new Dipole(0, 0, 1, 0, 0, 0));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Dipole(Double.NaN, 0, 1, 0, 0, 1))
        .withMessageContaining("x, y and bearing must be finite");
    assertThatIllegalArgumentException().isThrownBy(() -> Sonde.skinDepth(0, 512));
  }
}
