package daylight.footage.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where the counter is when. */
class MotionTest {
  private static final int LAWS = 300;

  private static final Motion PUSH =
      new Motion(
          List.of(
              new Motion.Anchor(2, 0),
              new Motion.Anchor(12, 3.7),
              new Motion.Anchor(14.5, 3.7),
              new Motion.Anchor(30, 9.1),
              new Motion.Anchor(40, 7.2)));

  @Test
  void restsBeforeTheFirstAnchorAndAfterTheLast() {
    assertThat(PUSH.readingAt(0)).isZero();
    assertThat(PUSH.movesAt(1.9)).isFalse();
    assertThat(PUSH.readingAt(99)).isEqualTo(7.2);
    assertThat(PUSH.movesAt(99)).isFalse();
    assertThat(PUSH.end()).isEqualTo(40);
    assertThat(PUSH.most()).isEqualTo(9.1);
  }

  @Test
  void restsWhereTwoAnchorsReadTheSame() {
    for (double moment = 12; moment < 14.5; moment += 0.1) {
      assertThat(PUSH.readingAt(moment)).isEqualTo(3.7);
      assertThat(PUSH.movesAt(moment)).isFalse();
    }
    assertThat(PUSH.movesAt(11.9)).isTrue();
    assertThat(PUSH.movesAt(14.6)).isTrue();
  }

  @Test
  void startsAndStopsGently() {
    assertThat(PUSH.readingAt(2.05)).isLessThan(0.002);
    assertThat(PUSH.readingAt(11.95)).isGreaterThan(3.698);
  }

  @Test
  void lawAtEveryAnchorTheReadingIsExactlyThatOfTheAnchorAndBetweenItNeverTurnsBack() {
    for (int seed = 0; seed < LAWS; seed++) {
      List<Motion.Anchor> anchors = anchors(seed);
      Motion motion = new Motion(anchors);
      for (int i = 0; i < anchors.size(); i++) {
        assertThat(motion.readingAt(anchors.get(i).seconds())).isEqualTo(anchors.get(i).reading());
        if (i > 0) {
          neverTurnsBack(motion, anchors.get(i - 1), anchors.get(i));
        }
      }
    }
  }

  private static List<Motion.Anchor> anchors(int seed) {
    List<Motion.Anchor> anchors = new ArrayList<>();
    double seconds = 0;
    double reading = 0;
    for (int i = 0; i < 9; i++) {
      anchors.add(new Motion.Anchor(seconds, reading));
      seconds += Chance.between(0.3, 20, seed, i, 0);
      double kind = Chance.at(seed, i, 1);
      reading += kind < 0.3 ? 0 : Chance.between(kind < 0.5 ? -3 : 0, 8, seed, i, 2);
    }
    return anchors;
  }

  private static void neverTurnsBack(Motion motion, Motion.Anchor from, Motion.Anchor to) {
    double way = Math.signum(to.reading() - from.reading());
    double before = from.reading();
    for (int i = 1; i <= 200; i++) {
      double share = i / 200.0;
      double now = motion.readingAt(from.seconds() + share * (to.seconds() - from.seconds()));
      assertThat(way * (now - before)).isGreaterThan(-1e-9);
      before = now;
    }
  }

  @Test
  void refusesNoAnchorsTwoAtOnceAndTimesBeforeTheFirstFrame() {
    assertThatThrownBy(() -> new Motion(List.of())).hasMessageContaining("at least one anchor");
    assertThatThrownBy(() -> new Motion(List.of(new Motion.Anchor(1, 0), new Motion.Anchor(1, 2))))
        .hasMessageContaining("two anchors at 1.0 s");
    assertThatThrownBy(() -> new Motion.Anchor(-1, 0)).hasMessageContaining("-1.0 s");
  }

  @Test
  void aCounterThatRunsAheadWhileTheCameraStandsTakesTheLensNoFurther() {
    Odometer odometer = new Odometer(List.of(new Odometer.Jump(5, 5.6), new Odometer.Jump(2, 3)));
    assertThat(odometer.in(1.5)).isEqualTo(1.5);
    assertThat(odometer.in(2.4)).isEqualTo(2);
    assertThat(odometer.in(4)).isEqualTo(3);
    assertThat(odometer.in(7)).isCloseTo(5.4, org.assertj.core.data.Offset.offset(1e-12));
  }
}
