package daylight.line.proving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.measure.Mark;
import daylight.line.measure.Measured;
import daylight.line.proving.HoldVerdict.Verdict;
import java.util.List;
import java.util.Objects;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a hold test lost and what a limit says to it. */
class HoldsTest {
  private static final double LITRE = 1e-3;
  private static final double GALLON = 3.785411784 * LITRE;
  private static final double INCH = 0.0254;
  private static final double MILE = 1609.344;
  private static final double DAY = 86_400;
  private static final HoldLimit EN =
      limit(new HoldLimit.Allows.BySurface(0.15 * LITRE / 1800), 1800.0, 1.02, 5.1);
  private static final HoldLimit TEN_STATES =
      limit(
          new HoldLimit.Allows.ByBoreAndLength(100 * GALLON / (INCH * MILE * DAY)),
          null,
          0.6096,
          null);
  private static final HoldLimit NO_DROP = limit(new HoldLimit.Allows.NoDrop(), 900.0, 3.048, null);

  private static HoldLimit limit(
      HoldLimit.Allows allows, @Nullable Double hold, @Nullable Double from, @Nullable Double to) {
    return new HoldLimit("id", "title", allows, hold, from, to, "x", "x", Mark.DERIVED, null);
  }

  /** Ten metres of 100 mm pipe, its level read in a riser of 100 mm; bore and length known well. */
  private static Hold hold(double drop, double dropSd, double seconds, @Nullable Double head) {
    return new Hold(
        new Hold.Loss.Drop(new Measured(drop, dropSd), new Measured(0.1, 1e-6)),
        new Measured(seconds, 1e-3),
        new Measured(1, 1e-6),
        head);
  }

  private static HoldVerdict verdict(Hold hold, HoldLimit limit) {
    return Holds.against(hold, new HoldLimits(List.of(limit))).getFirst();
  }

  /**
   * What EN 1610, method W, lets a metre of pipe take, printed to the hundredth of a litre: a table
   * of permissible added water at the address in SOURCES, testing and operation (looked up). The
   * row of DN 350 there is rounded up from 0.165.
   */
  @ParameterizedTest
  @CsvSource({
    "100, 0.05",
    "125, 0.06",
    "150, 0.07",
    "200, 0.09",
    "250, 0.12",
    "300, 0.14",
    "350, 0.17",
    "400, 0.19",
    "450, 0.21",
    "500, 0.24",
    "600, 0.28",
    "700, 0.33",
    "800, 0.38"
  })
  void en1610LetsAMetreOfPipeLoseWhatItsTablesSay(double bore, double litres) {
    Double rate = Objects.requireNonNull(EN.perBoreAndLength());
    assertThat(rate * bore / 1000 * 1 * 1800 / LITRE).isCloseTo(litres, within(0.0052));
  }

  /**
   * 0.05 L from a metre of 100 mm pipe shows as a drop of 6.4 mm in it, 0.08 L of 150 mm as 4.5 mm:
   * Approved Document H (England), 2.61 (from memory).
   */
  @ParameterizedTest
  @CsvSource({"0.100, 0.0064, 0.05", "0.150, 0.0045, 0.08"})
  void aDropInARiserIsTheWaterThatStoodThere(double riser, double drop, double litres) {
    Leak leak =
        Holds.leak(
            new Hold(
                new Hold.Loss.Drop(new Measured(drop, 1e-5), new Measured(riser, 1e-5)),
                new Measured(1800, 1),
                null,
                null));
    assertThat(leak.lost().value() / LITRE).isCloseTo(litres, within(0.0006));
  }

  /**
   * 100 gal for each inch of bore and mile of length in a day are 0.009 m³ for each mm and km: Ten
   * States Standards, 33.94, which prints both (from memory).
   */
  @Test
  void tenStatesInBothItsUnits() {
    Double rate = Objects.requireNonNull(TEN_STATES.perBoreAndLength());
    assertThat(rate * 1e-3 * 1000 * DAY).isCloseTo(0.009, within(0.0005));
  }

  /** Against draws of the generator of Hipparchus. */
  @Test
  void whatIsLostIsToldWithItsDoubt() {
    Hold hold =
        new Hold(
            new Hold.Loss.Drop(new Measured(0.02, 0.0015), new Measured(0.1, 0.002)),
            new Measured(1800, 30),
            null,
            null);
    Leak leak = Holds.leak(hold);
    RandomGenerator dice = new Well19937c(7);
    int n = 40_000;
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < n; i++) {
      double riser = 0.1 + 0.002 * dice.nextGaussian();
      double lost = (0.02 + 0.0015 * dice.nextGaussian()) * StrictMath.PI / 4 * riser * riser;
      double rate = lost / (1800 + 30 * dice.nextGaussian());
      sum += rate;
      squares += rate * rate;
    }
    double mean = sum / n;
    double sd = StrictMath.sqrt(squares / n - mean * mean);
    assertThat(leak.rate().value()).isCloseTo(mean, within(0.005 * mean));
    assertThat(leak.rate().sd()).isCloseTo(sd, within(0.02 * sd));
  }

  /** EN 1610 lets this stretch lose π × 0.15 L in 30 min, which is a drop of 60 mm in the riser. */
  @Test
  void aLossWellWithinPassesAndOneWellBeyondFails() {
    assertThat(verdict(hold(0.02, 0.0015, 1800, 2.0), EN).verdict()).isEqualTo(Verdict.PASSES);
    assertThat(verdict(hold(0.10, 0.0015, 1800, 2.0), EN).verdict()).isEqualTo(Verdict.FAILS);
  }

  @Test
  void rightOnTheLimitTheChanceIsEvenAndThatIsTooClose() {
    HoldVerdict verdict = verdict(hold(0.06, 0.0015, 1800, 2.0), EN);
    assertThat(verdict.verdict()).isEqualTo(Verdict.TOO_CLOSE);
    assertThat(Objects.requireNonNull(verdict.within())).isCloseTo(0.5, within(1e-3));
    assertThat(verdict.longer()).isNull();
  }

  /** Φ(1) = 0.8413, Abramowitz and Stegun, Table 26.1 (from memory). */
  @Test
  void theChanceIsThatOfTheNormalDistribution() {
    HoldVerdict verdict = verdict(hold(0.0585, 0.0015, 1800, 2.0), EN);
    assertThat(Objects.requireNonNull(verdict.within())).isCloseTo(0.8413, within(2e-3));
  }

  /** A sixteenth of an inch in ten minutes proves nothing of a short pipe. */
  @Test
  void aCoarseReadingOverAShortTimeProvesNoTightness() {
    Hold coarse =
        new Hold(
            new Hold.Loss.Drop(new Measured(0.0016, 0.0016), new Measured(0.1, 0.002)),
            new Measured(600, 5),
            new Measured(0.1, 0.002),
            1.5);
    HoldVerdict verdict = verdict(coarse, TEN_STATES);
    assertThat(verdict.verdict()).isEqualTo(Verdict.TOO_CLOSE);
  }

  @ParameterizedTest
  @CsvSource({"0.055, 1", "0.0575, 1", "0.0622, 1", "0.066, 4", "0.045, 6"})
  void heldForAsLongAsItSaysItIsTold(double drop, double worse) {
    Hold first = hold(drop, 0.0015 * worse, 1800, 2.0);
    HoldVerdict verdict = verdict(first, EN);
    if (verdict.verdict() == Verdict.TOO_CLOSE) {
      double longer = Objects.requireNonNull(verdict.longer());
      assertThat(longer).isGreaterThan(1800);
      HoldVerdict then = verdict(hold(drop * longer / 1800, 0.0015 * worse, longer, 2.0), EN);
      assertThat(then.verdict()).isEqualTo(drop < 0.06 ? Verdict.PASSES : Verdict.FAILS);
      HoldVerdict before =
          verdict(hold(drop * (longer - 600) / 1800, 0.0015 * worse, longer - 600, 2.0), EN);
      assertThat(before.verdict()).isIn(Verdict.TOO_CLOSE, Verdict.TOO_SHORT);
    } else {
      assertThat(verdict.longer()).isNull();
    }
  }

  @Test
  void underLessWaterNothingPassesAndUnderMoreNothingFails() {
    assertThat(verdict(hold(0.02, 0.0015, 1800, 0.5), EN).verdict())
        .isEqualTo(Verdict.HEAD_TOO_LOW);
    assertThat(verdict(hold(0.10, 0.0015, 1800, 0.5), EN).verdict()).isEqualTo(Verdict.FAILS);
    assertThat(verdict(hold(0.10, 0.0015, 1800, 6.0), EN).verdict())
        .isEqualTo(Verdict.HEAD_TOO_HIGH);
    assertThat(verdict(hold(0.02, 0.0015, 1800, 6.0), EN).verdict()).isEqualTo(Verdict.PASSES);
    assertThat(verdict(hold(0.02, 0.0015, 1800, null), EN).verdict())
        .isEqualTo(Verdict.HEAD_UNKNOWN);
    assertThat(verdict(hold(0.10, 0.0015, 1800, null), EN).verdict())
        .isEqualTo(Verdict.HEAD_UNKNOWN);
    assertThat(verdict(hold(0.10, 0.0015, 1800, null), TEN_STATES).verdict())
        .isEqualTo(Verdict.FAILS);
  }

  @Test
  void heldTooShortItPassesNothingButMayHaveLostTooMuchAlready() {
    HoldVerdict hurried = verdict(hold(0.01, 0.0015, 900, 2.0), EN);
    assertThat(hurried.verdict()).isEqualTo(Verdict.TOO_SHORT);
    assertThat(hurried.longer()).isEqualTo(1800);
    assertThat(verdict(hold(0.10, 0.0015, 900, 2.0), EN).verdict()).isEqualTo(Verdict.FAILS);
  }

  @Test
  void aLevelThatLeftTheRiserLostAtLeastWhatStoodInIt() {
    Leak leak = Holds.leak(hold(0.5, 0.0015, 1800, 0.2));
    assertThat(leak.atLeast()).isTrue();
    assertThat(leak.lost().value()).isCloseTo(0.2 * StrictMath.PI / 400, within(1e-9));
    assertThat(verdict(hold(0.5, 0.0015, 1800, 0.2), EN).verdict()).isEqualTo(Verdict.FAILS);
    assertThat(verdict(hold(0.5, 0.0015, 1800, 0.04), EN).verdict())
        .isEqualTo(Verdict.LEFT_THE_RISER);
  }

  @Test
  void whereNoDropMayBeSeenAReadingOfNoneIsWithinItAndTellsWhatItMissed() {
    assertThat(verdict(hold(0, 0.0015, 900, 3.1), NO_DROP).verdict()).isEqualTo(Verdict.PASSES);
    assertThat(verdict(hold(0, 0.0015, 900, 1.0), NO_DROP).verdict())
        .isEqualTo(Verdict.HEAD_TOO_LOW);
    assertThat(verdict(hold(0, 0.0015, 600, 3.1), NO_DROP).verdict()).isEqualTo(Verdict.TOO_SHORT);
    assertThat(verdict(hold(0.002, 0.0015, 900, 3.1), NO_DROP).verdict())
        .isEqualTo(Verdict.TOO_CLOSE);
    assertThat(verdict(hold(0.003, 0.0015, 900, 3.1), NO_DROP).verdict()).isEqualTo(Verdict.FAILS);
    Hold none = hold(0, 0.0015, 900, 3.1);
    double unseen = HoldVerdict.unseen(Holds.leak(none), none.duration());
    assertThat(unseen).isCloseTo(1.645 * 0.0015 * StrictMath.PI / 400 / 900, within(1e-10));
  }

  /** More lost is never better, and a longer test at the same rate never less sure. */
  @Test
  void moreLostIsNeverBetter() {
    RandomGenerator dice = new Well19937c(11);
    for (int i = 0; i < 500; i++) {
      double drop = 0.12 * dice.nextDouble();
      double more = drop + 0.02 * dice.nextDouble();
      double one = Objects.requireNonNull(verdict(hold(drop, 0.002, 1800, 2.0), EN).within());
      double two = Objects.requireNonNull(verdict(hold(more, 0.002, 1800, 2.0), EN).within());
      assertThat(two).isLessThanOrEqualTo(one + 1e-12);
      double later = Objects.requireNonNull(verdict(hold(2 * drop, 0.002, 3600, 2.0), EN).within());
      assertThat(StrictMath.abs(later - 0.5))
          .isGreaterThanOrEqualTo(StrictMath.abs(one - 0.5) - 1e-3);
    }
  }
}
