package daylight.line.sonde;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import daylight.line.course.SplitMix64;
import daylight.line.measure.Measured;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The sonde fitted to readings that were walked about it. */
class WalkTest {
  private static final double NOISE = 0.02;
  private static final double EAST = StrictMath.PI / 2;

  private static Dipole any(SplitMix64 dice) {
    return new Dipole(
        dice.between(-0.5, 0.5),
        dice.between(-0.5, 0.5),
        dice.between(0.5, 2.5),
        dice.between(0, StrictMath.PI),
        StrictMath.toRadians(10) * dice.normal(),
        dice.between(0.5, 20));
  }

  /** Whole and upright strengths on a grid of half a metre to a metre, with 2 % of noise. */
  private static List<Walked> grid(Dipole sonde, double noise, SplitMix64 dice) {
    List<Walked> readings = new ArrayList<>();
    double loudest = sonde.strength() / StrictMath.pow(sonde.depth(), 3);
    for (int i = -3; i <= 3; i++) {
      for (int j = -2; j <= 2; j++) {
        double x = 0.7 * i;
        double y = 0.8 * j;
        Field field = sonde.at(x, y, 0.05);
        readings.add(strength(x, y, new Antenna.Whole(), field.total(), noise, loudest, dice));
        double up = StrictMath.abs(field.z());
        readings.add(strength(x, y, new Antenna.Upright(), up, noise, loudest, dice));
      }
    }
    return readings;
  }

  private static Walked strength(
      double x,
      double y,
      Antenna antenna,
      double true_,
      double noise,
      double loudest,
      SplitMix64 dice) {
    double sd = StrictMath.hypot(noise * true_, 0.2 * noise * loudest);
    double shown = StrictMath.abs(true_ + sd * dice.normal());
    return new Walked.Strength(x, y, 0.05, antenna, new Measured(shown, sd));
  }

  private static void holds(WalkFix fix, Dipole sonde, double near) {
    assertThat(fix.sonde().x()).isCloseTo(sonde.x(), within(near));
    assertThat(fix.sonde().y()).isCloseTo(sonde.y(), within(near));
    assertThat(fix.sonde().depth()).isCloseTo(sonde.depth(), within(near));
    assertThat(fix.sonde().angleTo(sonde)).isLessThan(StrictMath.max(near, 1e-6));
  }

  @Test
  void findsTheSondeThatMadeExactReadings() {
    SplitMix64 dice = new SplitMix64(1);
    for (int i = 0; i < 25; i++) {
      Dipole sonde = any(dice);
      WalkFix fix = (WalkFix) Sonde.walk(grid(sonde, 1e-9, dice));
      holds(fix, sonde, 1e-6);
      assertThat(fix.sonde().strength() / sonde.strength()).isCloseTo(1, within(1e-6));
      assertThat(fix.sonde().bearing()).isBetween(0.0, StrictMath.PI);
    }
  }

  @Test
  void findsItFromAllThreePartsOfTheFieldWithoutTheirSign() {
    SplitMix64 dice = new SplitMix64(2);
    for (int run = 0; run < 10; run++) {
      Dipole sonde = any(dice);
      List<Walked> readings = new ArrayList<>();
      for (int i = 0; i < 9; i++) {
        double x = dice.between(-2, 2);
        double y = dice.between(-2, 2);
        Field field = sonde.at(x, y, 0);
        double sign = dice.chance(0.5) ? 1 : -1;
        double sd = 1e-4 * field.total();
        readings.add(
            new Walked.Parts(
                x,
                y,
                0,
                new Measured(sign * field.x() + sd * dice.normal(), sd),
                new Measured(sign * field.y() + sd * dice.normal(), sd),
                new Measured(sign * field.z() + sd * dice.normal(), sd)));
      }
      holds((WalkFix) Sonde.walk(readings), sonde, 5e-3);
    }
  }

  @Test
  void findsAnUprightSonde() {
    SplitMix64 dice = new SplitMix64(3);
    Dipole upright = new Dipole(0.2, -0.1, 1.1, 0.5, StrictMath.toRadians(86), 3);
    WalkFix fix = (WalkFix) Sonde.walk(grid(upright, NOISE, dice));
    assertThat(StrictMath.abs(fix.sonde().tilt())).isGreaterThan(StrictMath.toRadians(75));
    assertThat(fix.depth().value()).isCloseTo(1.1, within(4 * fix.depth().sd()));
  }

  @Test
  void tellsTheOtherSideWhereAStraightWalkCannotTellThemApart() {
    SplitMix64 dice = new SplitMix64(4);
    Dipole sonde = new Dipole(0.1, 0.6, 1.2, 1.3, 0.05, 2);
    List<Walked> readings = new ArrayList<>();
    double loudest = sonde.at(0, 0, 0).total();
    for (int i = -12; i <= 12; i++) {
      double x = 0.25 * i;
      Field field = sonde.at(x, 0, 0);
      readings.add(strength(x, 0, new Antenna.Whole(), field.total(), NOISE, loudest, dice));
      double up = StrictMath.abs(field.z());
      readings.add(strength(x, 0, new Antenna.Upright(), up, NOISE, loudest, dice));
    }
    WalkFix fix = (WalkFix) Sonde.walk(readings);
    assertThat(Objects.requireNonNull(fix.other()).y()).isCloseTo(-fix.sonde().y(), within(0.05));
    assertThat(fix.otherExcess()).isBetween(0.0, 6.0);
    assertThat(StrictMath.abs(fix.sonde().y())).isCloseTo(0.6, within(0.3));
  }

  /** Turned about the line that was walked, a sonde along it shows the same all round. */
  @Test
  void leavesOpenHowFarAsideWhereNoAntennaCanTell() {
    SplitMix64 dice = new SplitMix64(4);
    Dipole sonde = new Dipole(0.1, 0.6, 1.2, EAST, 0, 2);
    List<Walked> readings = new ArrayList<>();
    double loudest = sonde.at(0, 0, 0).total();
    for (int i = -12; i <= 12; i++) {
      double x = 0.25 * i;
      Field field = sonde.at(x, 0, 0);
      readings.add(strength(x, 0, new Antenna.Whole(), field.total(), NOISE, loudest, dice));
      double along = StrictMath.abs(field.level(EAST));
      readings.add(strength(x, 0, new Antenna.Level(EAST), along, NOISE, loudest, dice));
    }
    assertThat(Sonde.walk(readings))
        .isEqualTo(new WalkRefused(WalkRefused.Reason.LEAVES_OPEN, readings.size()));
  }

  @Test
  void saysWhenTheReadingsAreNotOfOneSonde() {
    SplitMix64 dice = new SplitMix64(5);
    Dipole sonde = any(dice);
    Dipole second = new Dipole(1.8, 1.2, 1, 0.2, 0, sonde.strength());
    List<Walked> readings = new ArrayList<>();
    double loudest = sonde.at(0, 0, 0).total();
    for (int i = -3; i <= 3; i++) {
      for (int j = -2; j <= 2; j++) {
        Field one = sonde.at(0.7 * i, 0.8 * j, 0);
        Field two = second.at(0.7 * i, 0.8 * j, 0);
        double total = new Field(one.x() + two.x(), one.y() + two.y(), one.z() + two.z()).total();
        readings.add(strength(0.7 * i, 0.8 * j, new Antenna.Whole(), total, NOISE, loudest, dice));
      }
    }
    WalkFix fix = (WalkFix) Sonde.walk(readings);
    assertThat(fix.sigmaNought()).isGreaterThan(2);
    assertThat(fix.chance()).isLessThan(0.001);
  }

  @Test
  void movesTurnsAndScalesWithTheReadings() {
    SplitMix64 dice = new SplitMix64(6);
    Dipole sonde = any(dice);
    List<Walked> readings = grid(sonde, NOISE, dice);
    WalkFix fix = (WalkFix) Sonde.walk(readings);
    double by = 0.7;
    List<Walked> turned = new ArrayList<>();
    List<Walked> larger = new ArrayList<>();
    for (Walked reading : readings) {
      Walked.Strength one = (Walked.Strength) reading;
      double x = one.x() * StrictMath.cos(by) + one.y() * StrictMath.sin(by);
      double y = one.y() * StrictMath.cos(by) - one.x() * StrictMath.sin(by);
      turned.add(new Walked.Strength(x + 5, y - 3, one.height(), one.antenna(), one.value()));
      larger.add(
          new Walked.Strength(
              3 * one.x(), 3 * one.y(), 3 * one.height(), one.antenna(), one.value()));
    }
    WalkFix elsewhere = (WalkFix) Sonde.walk(turned);
    assertThat(elsewhere.depth().value()).isCloseTo(fix.depth().value(), within(1e-5));
    assertThat(elsewhere.depth().sd()).isCloseTo(fix.depth().sd(), within(1e-5));
    double x = fix.x().value() * StrictMath.cos(by) + fix.y().value() * StrictMath.sin(by) + 5;
    assertThat(elsewhere.x().value()).isCloseTo(x, within(1e-5));
    double turn = elsewhere.bearing().value() - fix.bearing().value() - by;
    assertThat(StrictMath.abs(StrictMath.sin(turn))).isLessThan(1e-4);
    WalkFix large = (WalkFix) Sonde.walk(larger);
    assertThat(large.depth().value()).isCloseTo(3 * fix.depth().value(), within(3e-5));
    assertThat(large.depth().sd()).isCloseTo(3 * fix.depth().sd(), within(3e-5));
    assertThat(large.sonde().strength() / fix.sonde().strength()).isCloseTo(27, within(1e-3));
  }

  @Test
  void refusesWhatTellsNothing() {
    SplitMix64 dice = new SplitMix64(8);
    List<Walked> readings = grid(any(dice), NOISE, dice);
    assertThat(Sonde.walk(readings.subList(0, 6)))
        .isEqualTo(new WalkRefused(WalkRefused.Reason.TOO_FEW, 6));
    List<Walked> silent = new ArrayList<>();
    List<Walked> oneSpot = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      silent.add(new Walked.Strength(i, 0, 0, new Antenna.Whole(), new Measured(0, 0.1)));
      oneSpot.add(
          new Walked.Strength(1, 1, 0, new Antenna.Whole(), new Measured(5 + 0.1 * i, 0.1)));
    }
    assertThat(Sonde.walk(silent)).isEqualTo(new WalkRefused(WalkRefused.Reason.SILENT, 12));
    assertThat(Sonde.walk(oneSpot))
        .isInstanceOfSatisfying(
            WalkRefused.class,
            no ->
                assertThat(no.reason())
                    .isIn(WalkRefused.Reason.LEAVES_OPEN, WalkRefused.Reason.NOT_SETTLED));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Walked.Strength(0, 0, 0, new Antenna.Whole(), new Measured(-1, 0.1)))
        .withMessageContaining("value must not be negative");
  }

  @Test
  void holdsTheTruthAsOftenAsItSays() {
    covers(300, 0.92, 0.98);
  }

  @Test
  @Tag("long")
  void holdsTheTruthAsOftenAsItSaysOverThousands() {
    covers(4000, 0.94, 0.96);
  }

  private static void covers(int runs, double least, double most) {
    SplitMix64 dice = new SplitMix64(20260101);
    int[] held = new int[5];
    int found = 0;
    for (int i = 0; i < runs; i++) {
      Dipole sonde = any(dice);
      WalkReading reading = Sonde.walk(grid(sonde, NOISE, dice));
      if (!(reading instanceof WalkFix fix)) {
        continue;
      }
      found++;
      double turn = fix.sonde().bearing() - sonde.bearing();
      double sign = StrictMath.cos(turn) < 0 ? -1 : 1;
      double bearingOff = StrictMath.asin(sign * StrictMath.sin(turn));
      double[] off = {
        fix.sonde().x() - sonde.x(),
        fix.sonde().y() - sonde.y(),
        fix.sonde().depth() - sonde.depth(),
        bearingOff,
        fix.sonde().tilt() - sign * sonde.tilt()
      };
      Measured[] told = {fix.x(), fix.y(), fix.depth(), fix.bearing(), fix.tilt()};
      for (int k = 0; k < off.length; k++) {
        held[k] += StrictMath.abs(off[k]) <= Measured.Z95 * told[k].sd() ? 1 : 0;
      }
    }
    assertThat(found).isEqualTo(runs);
    for (int one : held) {
      assertThat(one / (double) runs).isBetween(least, most);
    }
  }
}
