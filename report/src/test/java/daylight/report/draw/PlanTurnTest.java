package daylight.report.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.book.Place;
import daylight.line.measure.Shown;
import daylight.line.survey.PlanPoint;
import daylight.report.Example;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlanTurnTest {
  private static final Box BOX = new Box(0, 0, 500, 300);

  /** From south-west to north-east, as long as it is narrow. */
  private static final List<PlanPoint> ASLANT =
      List.of(new PlanPoint(0, 0), new PlanPoint(40, 40), new PlanPoint(38, 42));

  private static PlanFrame frame(PlanTurn turn) {
    return PlanFrame.of(ASLANT, BOX, Shown.METRES, turn, Math.PI / 4);
  }

  @Test
  void northIsUpWhereItIsToBeUp() {
    PlanFrame frame = frame(PlanTurn.NORTH_UP);
    Point south = frame.at(new PlanPoint(5, 5));
    Point north = frame.at(new PlanPoint(5, 15));

    assertThat(north.x()).isCloseTo(south.x(), within(1e-9));
    assertThat(south.y() - north.y()).isCloseTo(frame.length(10), within(1e-9));
    assertThat(frame.isNorthUp()).isTrue();
  }

  @Test
  void alongTheLineTheWaterRunsToTheRight() {
    PlanFrame frame = frame(PlanTurn.ALONG);
    Point up = frame.at(new PlanPoint(0, 0));
    Point down = frame.at(new PlanPoint(40, 40));

    assertThat(down.y()).isCloseTo(up.y(), within(1e-9));
    assertThat(down.x() - up.x()).isCloseTo(frame.length(40 * Math.sqrt(2)), within(1e-9));
  }

  @Test
  void itIsTurnedWhereThatDrawsItAGoodDealLarger() {
    assertThat(frame(PlanTurn.AS_IT_FITS)).isEqualTo(frame(PlanTurn.ALONG));
    assertThat(frame(PlanTurn.ALONG).scale().n())
        .isLessThan(frame(PlanTurn.NORTH_UP).scale().n() / 1.2);

    List<PlanPoint> square = List.of(new PlanPoint(0, 0), new PlanPoint(30, 30));
    List<PlanPoint> corners =
        List.of(square.getFirst(), square.getLast(), new PlanPoint(0, 30), new PlanPoint(30, 0));
    assertThat(
            PlanFrame.of(corners, BOX, Shown.METRES, PlanTurn.AS_IT_FITS, Math.PI / 4).isNorthUp())
        .isTrue();
  }

  /** Turned by any angle, a line on the ground and its turn on the sheet are the same line. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 17, 45, 90, 133, 179})
  void whatIsTurnedLiesAsItLiesOnTheGround(double degrees) {
    double bearing = Math.toRadians(degrees);
    for (PlanTurn turn : PlanTurn.values()) {
      PlanFrame frame = frame(turn);
      Point from = frame.at(new PlanPoint(3, 4));
      Point to = frame.at(new PlanPoint(3 + 9 * Math.sin(bearing), 4 + 9 * Math.cos(bearing)));
      double drawn = Math.toDegrees(Math.atan2(to.y() - from.y(), to.x() - from.x()));
      double off = Math.abs(drawn - frame.turn(bearing)) % 180;

      assertThat(Math.min(off, 180 - off)).isCloseTo(0, within(1e-6));
    }
  }

  @Test
  void theFootSaysWhichWayUp() {
    Subject subject = Example.usual().subject();

    assertThat(LabelOverlaps.words(PlanDrawing.draw(subject.turned(PlanTurn.NORTH_UP))))
        .contains("grid north is up");
    assertThat(LabelOverlaps.words(PlanDrawing.draw(subject.turned(PlanTurn.ALONG))))
        .contains("turned: the arrow points to grid north");
  }

  /** The cursor goes where the drain is drawn, whichever way up. */
  @Test
  void aPlaceLiesOnTheDrain() {
    for (PlanTurn turn : PlanTurn.values()) {
      Subject subject = DenseYard.subject(3).turned(turn);
      daylight.report.draw.Drawn plan = PlanDrawing.drawn(subject);
      Optional<Spot> spot = plan.at(new Place("R1", 4));
      List<Stroke> drain =
          new AsDrawn(plan.sheet())
              .all("path")
              .filter(path -> path.getAttribute("stroke").equals(Ink.DRAIN))
              .filter(path -> path.getAttribute("stroke-width").equals("4"))
              .flatMap(path -> Outline.strokes(path.getAttribute("d")).stream())
              .toList();

      assertThat(spot).isPresent();
      Box about = Box.around(spot.get().x(), spot.get().y(), 0.6);
      assertThat(drain).anyMatch(about::crossedBy);
    }
  }
}
