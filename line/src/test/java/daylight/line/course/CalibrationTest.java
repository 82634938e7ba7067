package daylight.line.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.function.Predicate;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Whether 95 % regions hold the truth 95 times in a hundred: on lines that are as the estimator
 * supposes, on lines that are not, and in every part of them, sure or unsure, near a locate or far.
 * The bounds are those of the design (section 7). The tables go to {@code target/calibration}.
 */
class CalibrationTest {
  /** The level of 95 %. */
  private static final int AT_95 = 2;

  private static final int FEW = 25;
  private static final int MANY = 2000;

  private static Calibration calibrate(Nature nature, int lines) {
    Calibration calibration = new Calibration();
    SplitMix64 random = new SplitMix64(-nature.seed());
    for (LineSort sort : LineClasses.ALL) {
      for (int seed = 1; seed <= lines; seed++) {
        calibration.add(KnownProperty.of(nature, sort, seed), random);
      }
    }
    return calibration;
  }

  private static double fewest(Nature nature) {
    return nature == Nature.SUPPOSED ? 0.93 : 0.90;
  }

  private static double most(Nature nature) {
    return nature == Nature.SUPPOSED ? 0.97 : 0.98;
  }

  /**
   * A sample. What lies within the bounds of the design strays from them by chance: a bound p is
   * widened by 3.29·√(p(1 − p)/n), which chance alone exceeds once in two thousand.
   */
  @ParameterizedTest
  @EnumSource
  void regionsOfASampleHoldTheTruthAboutAsOftenAsTheySay(Nature nature) throws IOException {
    Calibration calibration = calibrate(nature, FEW);
    CalibrationTable.write("sample-" + name(nature), calibration, nature);

    assertThat(calibration.unanswered()).isZero();
    SoftAssertions softly = new SoftAssertions();
    loosely(softly, "plan", nature, calibration.plan(AT_95, t -> true));
    loosely(softly, "depth", nature, calibration.depth(AT_95, t -> true));
    softly.assertAll();
  }

  private static void loosely(
      SoftAssertions softly, String what, Nature nature, Calibration.Share share) {
    softly
        .assertThat(share.value())
        .as(what + " " + share)
        .isBetween(
            fewest(nature) - chance(fewest(nature), share.of()),
            most(nature) + chance(most(nature), share.of()));
  }

  private static double chance(double p, int n) {
    return 3.29 * Math.sqrt(p * (1 - p) / n);
  }

  /** All lines and every third within the bounds; a single class within them but for chance. */
  @Tag("long")
  @ParameterizedTest
  @EnumSource
  void regionsHoldTheTruthAsOftenAsTheySay(Nature nature) throws IOException {
    Calibration calibration = calibrate(nature, MANY);
    CalibrationTable.write(name(nature), calibration, nature);

    assertThat(calibration.unanswered()).isZero();
    SoftAssertions softly = new SoftAssertions();
    held(softly, "all", calibration, t -> true, fewest(nature), most(nature));
    for (LineSort sort : LineClasses.ALL) {
      held(
          softly,
          sort.words(),
          calibration,
          t -> t.sort().equals(sort),
          fewest(nature) - chance(fewest(nature), MANY),
          most(nature) + chance(most(nature), MANY));
    }
    thirds(softly, "size", calibration, calibration.thirds(Calibration.Trial::size), true, false);
    thirds(
        softly, "depth size", calibration, calibration.thirds(Calibration::depthSize), false, true);
    thirds(softly, "away", calibration, calibration.thirds(Calibration.Trial::away), true, true);
    softly.assertAll();
  }

  private static void thirds(
      SoftAssertions softly,
      String by,
      Calibration calibration,
      List<Predicate<Calibration.Trial>> thirds,
      boolean plan,
      boolean depth) {
    for (int i = 0; i < thirds.size(); i++) {
      String which = by + ", third " + (i + 1);
      if (plan) {
        softly
            .assertThat(calibration.plan(AT_95, thirds.get(i)).value())
            .as("plan, " + which)
            .isBetween(0.90, 0.98);
      }
      if (depth) {
        softly
            .assertThat(calibration.depth(AT_95, thirds.get(i)).value())
            .as("depth, " + which)
            .isBetween(0.90, 0.98);
      }
    }
  }

  private static void held(
      SoftAssertions softly,
      String which,
      Calibration calibration,
      Predicate<Calibration.Trial> trials,
      double fewest,
      double most) {
    softly
        .assertThat(calibration.plan(AT_95, trials).value())
        .as("plan, " + which)
        .isBetween(fewest, most);
    softly
        .assertThat(calibration.depth(AT_95, trials).value())
        .as("depth, " + which)
        .isBetween(fewest, most);
  }

  private static String name(Nature nature) {
    return nature == Nature.SUPPOSED ? "as-supposed" : "otherwise";
  }

  @Test
  void aRegionThatIsTooSmallIsFoundOut() {
    Calibration.Off right = new Calibration.Off(1.9, 1);
    Calibration.Off tooSmall = new Calibration.Off(1.9, 0.5);

    assertThat(right.holds(AT_95)).isTrue();
    assertThat(tooSmall.holds(AT_95)).isFalse();
    assertThat(tooSmall.score()).isGreaterThan(right.score());
  }
}
