package daylight.line.sonde;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import daylight.line.measure.Measured;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Nulls of a tilted sonde. Reference rows: derived from griffiths-5.89 outside this program, with
 * root finding on the field itself, and printed to four digits.
 */
class NullsTest {
  private static final String ROWS = "/daylight/line/sonde/tilted.csv";
  private static final double PRINTED = 0.5e-4 + 1e-9;
  private static final double SURE = 1e-6;

  private static Measured at(double value, double sd) {
    return new Measured(value, sd);
  }

  private static double radians(double degrees) {
    return StrictMath.toRadians(degrees);
  }

  @ParameterizedTest
  @CsvFileSource(resources = ROWS, numLinesToSkip = 1)
  void liePerTheReferenceRows(
      double depth,
      double tilt,
      double first,
      double second,
      double spacing,
      double level,
      double errorPercent,
      double middle,
      double over) {
    double beta = radians(tilt);
    double behind = NullModel.behind(depth, beta, 0);
    double ahead = NullModel.ahead(depth, beta, 0);
    assertThat(behind).isCloseTo(first, within(PRINTED));
    assertThat(ahead).isCloseTo(second, within(PRINTED));
    assertThat(ahead - behind).isCloseTo(spacing, within(PRINTED));
    assertThat((behind + ahead) / 2).isCloseTo(middle, within(PRINTED));
    assertThat(NullModel.over(depth, beta, 0)).isCloseTo(over, within(PRINTED));
    double read = Sonde.level(at(ahead - behind, SURE)).value();
    assertThat(read).isCloseTo(level, within(PRINTED));
    assertThat(100 * (read / depth - 1)).isCloseTo(errorPercent, within(0.005 + 1e-9));
    assertThat(Sonde.overReadByTilt(beta)).isCloseTo(read / depth, within(1e-12));
    assertThat(StrictMath.sqrt(2 * StrictMath.abs(behind * ahead))).isCloseTo(depth, within(1e-12));
  }

  @ParameterizedTest
  @CsvFileSource(resources = ROWS, numLinesToSkip = 1)
  void giveBackTheSondeThatMadeThem(double depth, double tilt) {
    double beta = radians(tilt);
    NullMarks marks =
        new NullMarks(
            at(3 + NullModel.behind(depth, beta, 0), SURE),
            at(3 + NullModel.ahead(depth, beta, 0), SURE),
            at(3 + NullModel.over(depth, beta, 0), SURE),
            null);
    assertThat(Sonde.nullsAlone(marks))
        .isInstanceOfSatisfying(
            NullFix.class,
            fix -> {
              assertThat(fix.position().value()).isCloseTo(3, within(1e-9));
              assertThat(fix.depth().value()).isCloseTo(depth, within(1e-9));
              assertThat(fix.tilt().value()).isCloseTo(beta, within(1e-9));
            });
  }

  /** Standards row 6 as printed, to four digits: X = 0.000, d = 1.500, t = 0.1764. */
  @Test
  void ofTenDegreesAreInvertedFromTheirPrintedDigits() {
    NullMarks marks = new NullMarks(at(-1.2774, SURE), at(0.8807, SURE), at(-0.1751, SURE), null);
    assertThat(Sonde.nullsAlone(marks))
        .isInstanceOfSatisfying(
            NullFix.class,
            fix -> {
              assertThat(fix.position().value()).isCloseTo(0, within(1e-3));
              assertThat(fix.depth().value()).isCloseTo(1.5, within(5e-4));
              assertThat(StrictMath.tan(fix.tilt().value())).isCloseTo(0.1764, within(1e-3));
            });
  }

  /** Equal marks: the depth is as sure as one mark, for √2 cancels against √2. */
  @Test
  void ofALevelSondeTellItsDepthAsSurelyAsOneMarkLies() {
    Measured depth = Sonde.level(NullMarks.of(at(-1, 0.03), at(1, 0.03)).spacing());
    assertThat(depth.value()).isCloseTo(1.4142, within(PRINTED));
    assertThat(depth.sd()).isCloseTo(0.03, within(1e-12));
  }

  @Test
  void ofAnUnknownTiltReadTooDeepAndSaySo() {
    NullMarks marks = NullMarks.of(at(-1, 1e-4), at(1, 1e-4));
    NullFix sure = (NullFix) Sonde.nulls(marks, at(0, radians(0.1)));
    NullFix unsure = (NullFix) Sonde.nulls(marks, at(0, radians(10)));
    double level = StrictMath.sqrt(2);
    assertThat(sure.depth().value()).isCloseTo(level, within(1e-4));
    // The mean of 1/√(1 + 9/8 tan²) over N(0, 10°), by quadrature outside this program: 0.9837.
    assertThat(unsure.depth().value() / level).isCloseTo(0.9837, within(2e-3));
    assertThat(unsure.depth().sd()).isGreaterThan(10 * sure.depth().sd());
    assertThat(unsure.position().sd()).isGreaterThan(0.15);
  }

  @Test
  void walkedBesideThePipeAreCorrectedForIt() {
    double depth = 1.2;
    for (double beside : new double[] {-0.5, 0.3, 0.8}) {
      double half = StrictMath.sqrt((depth * depth + beside * beside) / 2);
      double read = Sonde.level(at(2 * half, SURE)).value();
      assertThat(read / depth).isCloseTo(Sonde.overReadBeside(depth, beside), within(1e-12));
      NullMarks marks = new NullMarks(at(-half, SURE), at(half, SURE), null, at(beside, SURE));
      NullFix fix = (NullFix) Sonde.nulls(marks, at(0, 1e-5));
      assertThat(fix.depth().value()).isCloseTo(depth, within(1e-5));
    }
  }

  @Test
  void thatNoDipoleMakesAreRefused() {
    NullMarks outside = new NullMarks(at(-1, 0.02), at(1, 0.02), at(1.3, 0.02), null);
    assertThat(Sonde.nullsAlone(outside))
        .isInstanceOfSatisfying(
            NoDipole.class,
            no -> {
              assertThat(no.reason()).isEqualTo(NoDipole.Reason.OVER_OUTSIDE);
              assertThat(no.excess()).isCloseTo(0.3, within(1e-12));
            });
    NullMarks far = new NullMarks(at(-0.5, 0.02), at(0.5, 0.02), null, at(0.8, 0.02));
    assertThat(Sonde.nulls(far, at(0, 0.1))).isInstanceOf(NoDipole.class);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> NullMarks.of(at(1, 0.02), at(1, 0.02)))
        .withMessageContaining("second must lie beyond first");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Sonde.nullsAlone(NullMarks.of(at(-1, 0.02), at(1, 0.02))));
    assertThatIllegalArgumentException().isThrownBy(() -> Sonde.overReadByTilt(1.6));
    assertThatIllegalArgumentException().isThrownBy(() -> Sonde.overReadBeside(0, 1));
  }
}
