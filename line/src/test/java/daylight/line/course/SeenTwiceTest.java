package daylight.line.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.book.Bend;
import daylight.line.book.FieldBook;
import daylight.line.book.Pass;
import daylight.line.counter.Tracks;
import daylight.line.measure.Measured;
import org.junit.jupiter.api.Test;

/** Bends that passes from both ends saw tie the passes together. */
class SeenTwiceTest {
  private static final double HALF_RIGHT = Math.PI / 4;

  /** Two pushes that meet nowhere: 9 m from one end, and so far from the other. */
  private static Line line(double fromTheOther, double angle, Bend.Sense sense) {
    Draft draft =
        Flat.ground()
            .reach("R1", "N1", "N2")
            .pass(
                new Push("P1", "N1", "R1")
                    .bend(8, HALF_RIGHT, Bend.Sense.RIGHT)
                    .end(9, Pass.Why.FRICTION, null))
            .pass(
                new Push("P2", "N2", "R1")
                    .bend(fromTheOther, angle, sense)
                    .end(fromTheOther + 1, Pass.Why.FRICTION, null));
    draft.locate("L1", "P1", 2, 1.04).along("L1", 3, 4);
    draft.locate("L2", "P1", 6, 1.12).along("L2", 3, 8);
    draft.along("N1", 3, 2);
    FieldBook book = draft.book();
    return Estimator.estimate(book, Tracks.NONE, TestPriors.shipped());
  }

  private static double turned(Line line) {
    var stations = line.findRun("R1").orElseThrow().stations();
    return Angles.wrap(stations.getLast().bearing() - stations.getFirst().bearing());
  }

  private static Measured length(Line line) {
    Measured length = line.findRun("R1").orElseThrow().length();
    if (length == null) {
      throw new AssertionError("both pushes together are a length");
    }
    return length;
  }

  @Test
  void aBendSeenFromBothEndsIsOneBendAndMakesTheLengthKnown() {
    Line line = line(9, HALF_RIGHT, Bend.Sense.LEFT);

    assertThat(turned(line)).isCloseTo(HALF_RIGHT, within(0.02));
    assertThat(length(line).value()).isCloseTo(17, within(0.1));
    assertThat(length(line).sd()).isLessThan(0.3);
  }

  @Test
  void aBendTheOtherWayIsAnother() {
    Line line = line(9, HALF_RIGHT, Bend.Sense.RIGHT);

    assertThat(Math.abs(turned(line))).isLessThan(0.1);
  }

  /** What two crews judge differently by eye at one place still is one bend; it ties nothing. */
  @Test
  void aBendJudgedDifferentlyIsNoSecondBend() {
    Line line = line(9, 2 * HALF_RIGHT, Bend.Sense.LEFT);

    assertThat(turned(line)).isCloseTo(HALF_RIGHT, within(0.02));
  }

  /** Half a metre of counter error further on, the same bend still is the nearest. */
  @Test
  void theCountersMayDisagreeAboutWhereItIs() {
    Line line = line(11, HALF_RIGHT, Bend.Sense.LEFT);

    assertThat(turned(line)).isCloseTo(HALF_RIGHT, within(0.02));
    assertThat(length(line).value()).isCloseTo(19, within(0.15));
  }
}
