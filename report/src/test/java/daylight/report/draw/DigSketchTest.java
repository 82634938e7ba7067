package daylight.report.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.dig.DigTarget;
import daylight.line.dig.TapeTies;
import daylight.line.survey.PlanPoint;
import daylight.report.markup.Tag;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;

/** The sketch of a dig, measured as it was drawn. */
class DigSketchTest {
  private final Subject subject = Yards.without();
  private final DigTarget target = target(subject);

  private static DigTarget target(Subject subject) {
    return (DigTarget) subject.answers().digs().getFirst().dig();
  }

  private static DigTarget untied(DigTarget t) {
    return new DigTarget(
        t.ticket(),
        t.place(),
        t.spot(),
        t.spread(),
        null,
        null,
        null,
        null,
        t.trench(),
        t.box(),
        t.marks(),
        t.quality(),
        t.told());
  }

  @ParameterizedTest
  @ValueSource(doubles = {160, 220, 300})
  void itNamesTapesDepthBoxAndOtherServices(double height) {
    Tag sketch = DigSketch.draw(subject, target, "s", height);
    String said = String.join(" ", LabelOverlaps.words(sketch));

    assertThat(said)
        .contains("tape from A: 11.4 m")
        .contains("tape from B: 13.0 m")
        .contains("open 1.56 m × 0.97 m")
        .contains("top of the bore 0.89 m to 1.24 m down")
        .contains("gas U1")
        .contains("water U3: its place was not measured")
        .contains("grid N");
    assertThat(LabelOverlaps.of(sketch)).isEmpty();
  }

  /** A tape on the paper, times the scale that is told, is as long as the card says. */
  @Test
  void theTapesAreToScale() {
    Tag sketch = DigSketch.draw(subject, target, "s", 300);
    String scale =
        LabelOverlaps.words(sketch).stream()
            .filter(words -> words.startsWith("1:"))
            .findFirst()
            .orElseThrow();
    double n = Double.parseDouble(scale.substring(2, scale.indexOf(' ')));
    TapeTies ties = Objects.requireNonNull(target.ties());
    List<Double> drawn =
        new AsDrawn(sketch)
            .all("line")
            .filter(line -> line.getAttribute("stroke-dasharray").equals("1.5 2.5"))
            .map(line -> length(line) * 0.0254 / 72 * n)
            .toList();

    assertThat(drawn).hasSize(2);
    for (int i = 0; i < 2; i++) {
      TapeTies.Tape tape = i == 0 ? ties.first() : ties.second();
      PlanPoint from = Objects.requireNonNull(subject.points().get(tape.landmark()));
      double ground = from.distanceTo(target.spot());
      assertThat(drawn.get(i) / ground).isCloseTo(1, within(0.001));
      assertThat(drawn.get(i)).isCloseTo(tape.length().value(), within(0.02));
    }
  }

  private static double length(Element line) {
    return Math.hypot(
        AsDrawn.number(line, "x2") - AsDrawn.number(line, "x1"),
        AsDrawn.number(line, "y2") - AsDrawn.number(line, "y1"));
  }

  @Test
  void withoutATieOrADepthItSaysSo() {
    Tag sketch = DigSketch.draw(subject, untied(target), "s", 300);
    String said = String.join(" ", LabelOverlaps.words(sketch));

    assertThat(said)
        .contains("No two landmarks find this spot by tape")
        .contains("no depth was read")
        .doesNotContain("tape from");
    assertThat(sketch.write()).doesNotContain("1.5 2.5");
    assertThat(LabelOverlaps.of(sketch)).isEmpty();
  }

  @Test
  void whoCannotSeeItIsToldTheSame() {
    String desc =
        new AsDrawn(DigSketch.draw(subject, target, "s", 300))
            .all("desc")
            .findFirst()
            .orElseThrow()
            .getTextContent();

    assertThat(desc).contains("tape from A", "tape from B", "Top of the bore 0.89 m");
  }
}
