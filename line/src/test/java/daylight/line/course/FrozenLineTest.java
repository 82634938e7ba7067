package daylight.line.course;

import static daylight.line.course.Known.known;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.book.Bend;
import daylight.line.book.Level;
import daylight.line.book.Place;
import daylight.line.measure.Measured;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * One small property whose figures are kept to nine decimals, so that whoever changes the estimate
 * sees that numbers moved and says so in the changelog.
 */
class FrozenLineTest {
  private static final Offset<Double> SAME = within(1e-9);

  private static final double[] THEN = {
    13.101218644790817,
    -15.017361987873276,
    3.6300839268272593,
    0.09797180186815778,
    1.3000751453958088,
    0.11537782481411239,
    0.5030137004052335,
    0.16872200087782313
  };

  private static Line line() {
    Push push = Flat.push().bend(11, 0.3, Bend.Sense.RIGHT);
    return Flat.line(
        Flat.book(
            push,
            draft ->
                draft
                    .locate("L8", "P1", 17.1, 1.42)
                    .tape("A", "L8", 19.4)
                    .tape("B", "L8", 19.51)
                    .along("L8", 4.8, 18.8)
                    .height("L1", Level.Part.GROUND, 100.02)
                    .height("L3", Level.Part.GROUND, 99.91),
            2.2,
            5.9,
            9.4));
  }

  @Test
  void positionDepthAndFallAreWhatTheyWere() {
    Line line = line();
    Station station = Flat.nearest(line, "R1", 13);
    Measured fall = line.fall(new Place("R1", 2), new Place("R1", 18)).orElseThrow();

    double[] now = {
      station.place().distance(),
      station.spot().x(),
      station.spot().y(),
      station.across(),
      known(station.depth()).value(),
      known(station.depth()).sd(),
      fall.value(),
      fall.sd(),
    };
    for (int i = 0; i < now.length; i++) {
      assertThat(now[i]).as("figure %d", i).isCloseTo(THEN[i], SAME);
    }
  }
}
