package daylight.report.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.answer.Answers;
import daylight.line.answer.PumpAtWork;
import daylight.line.flow.Cycles;
import daylight.line.flow.Discharge;
import daylight.line.flow.FlowInput;
import daylight.line.flow.FrictionLaw;
import daylight.line.flow.Operation;
import daylight.line.flow.Pit;
import daylight.line.flow.Propagated;
import daylight.line.flow.PumpCurve;
import daylight.line.flow.Pumping;
import daylight.line.flow.Roughness;
import daylight.line.flow.Water;
import daylight.line.measure.Measured;
import daylight.line.measure.Shown;
import daylight.report.Example;
import daylight.report.markup.Tag;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;

class PumpDrawingTest {
  private static final PumpCurve CURVE =
      PumpCurve.through(
          List.of(
              new PumpCurve.Point(0, 8),
              new PumpCurve.Point(0.002, 6),
              new PumpCurve.Point(0.004, 1)));

  private static PumpAtWork pump(double lift, double inflow, double runsBack) {
    Discharge discharge =
        new Discharge(
            new Measured(lift, 0.03),
            List.of(
                new Discharge.Piece(
                    new Measured(25, 0.1),
                    new Measured(0.041, 0.001),
                    new Roughness(FrictionLaw.HAZEN_WILLIAMS, new Measured(140, 5)),
                    new Measured(5, 2))));
    Operation operation =
        Pumping.of(CURVE, new Measured(1, 0.05), discharge, Water.viscosity(Water.USUAL_CELSIUS));
    Propagated in = Propagated.measured(FlowInput.INFLOW, "", new Measured(inflow, 0.1 * inflow));
    Pit pit = new Pit(new Measured(0.2, 0.01), new Measured(0.3, 0.02), runsBack);
    PumpAtWork.Filling filling =
        operation instanceof Operation.Pumps works
            ? new PumpAtWork.Filling(pit, 0.2, Cycles.of(pit, in, works.flow()))
            : null;
    return new PumpAtWork("R1", "CO1", CURVE, discharge, operation, in, filling);
  }

  private static Subject subject(Shown shown, PumpAtWork... pumps) {
    Subject subject = DrawingsTest.subject(Example.usual(shown));
    Answers a = subject.answers();
    return new Subject(
        subject.book(),
        subject.line(),
        new Answers(
            a.visit(),
            a.stops(),
            a.opening(),
            a.lines(),
            a.cautions(),
            a.fall(),
            a.proving(),
            List.of(pumps),
            a.digs()),
        subject.rules(),
        subject.shots(),
        subject.complaints(),
        subject.words());
  }

  @ParameterizedTest
  @CsvSource({
    "1, 0.0004, 0, It runs",
    "3, 0.0002, 0.02, It runs",
    "6.5, 0.0012, 0, It keeps up as long as",
    "1, 0.0035, 0, the water goes on rising",
    "1, 0.0075, 0, the water goes on rising",
    "1, 0.0004, 0.1, it pumps its own water",
    "9, 0.0004, 0, the pump will not pump",
    "-60, 0.0004, 0, more than the end of its curve says"
  })
  void saysWhatThePumpDoesAndNoNameCoversAnother(
      double lift, double inflow, double back, String says) {
    for (Shown shown : Shown.values()) {
      Tag drawn = PumpDrawing.sheets(subject(shown, pump(lift, inflow, back))).getFirst();

      assertThat(LabelOverlaps.of(drawn)).isEmpty();
      assertThat(String.join(" ", LabelOverlaps.words(drawn))).contains(says);
    }
  }

  @Test
  void theDotLiesWhereBothLinesMeet() {
    AsDrawn drawn =
        new AsDrawn(PumpDrawing.sheets(subject(Shown.METRES, pump(1, 0.0004, 0))).getFirst());
    Element dot = drawn.all("circle").findFirst().orElseThrow();
    double x = AsDrawn.number(dot, "cx");
    double y = AsDrawn.number(dot, "cy");

    List<Element> paths = drawn.all("path").toList();
    assertThat(height(path(paths, Ink.DRAIN), x)).isCloseTo(y, within(0.5));
    // The bars about it are strokes of two points; the pipe's line has many.
    assertThat(height(path(paths, Ink.DARK), x)).isCloseTo(y, within(0.5));
  }

  private static String path(List<Element> paths, String colour) {
    return paths.stream()
        .filter(path -> path.getAttribute("stroke").equals(colour))
        .map(path -> path.getAttribute("d"))
        .filter(d -> d.split("L", -1).length > 2)
        .findFirst()
        .orElseThrow();
  }

  /** The height of a row of points at a place, between its neighbours. */
  private static double height(String d, double x) {
    double lastX = Double.NaN;
    double lastY = Double.NaN;
    for (String point : d.substring(1).split("L", -1)) {
      String[] xy = point.split(" ", -1);
      double nextX = Double.parseDouble(xy[0]);
      double nextY = Double.parseDouble(xy[1]);
      if (nextX >= x) {
        return lastY + (nextY - lastY) * (x - lastX) / (nextX - lastX);
      }
      lastX = nextX;
      lastY = nextY;
    }
    throw new AssertionError("ends before " + x);
  }

  @Test
  void onePumpOneSheet() {
    Subject two = subject(Shown.METRES, pump(1, 0.0004, 0), pump(2, 0.0004, 0));

    assertThat(PumpDrawing.sheets(two)).hasSize(2);
    assertThat(PumpDrawing.sheets(subject(Shown.METRES))).isEmpty();
  }
}
