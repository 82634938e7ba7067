package daylight.report.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.measure.Shown;
import daylight.report.Example;
import daylight.report.Handout;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class DrawingsTest {

  static Subject subject(Handout handout) {
    return new Subject(
        handout.book(),
        handout.line(),
        handout.answers(),
        handout.rules(),
        handout.shots(),
        handout.complaints(),
        Words.of(handout.language(), handout.shown()));
  }

  @ParameterizedTest
  @EnumSource(Shown.class)
  void noTextCoversAnotherOrIsCutOff(Shown shown) {
    Subject subject = subject(Example.usual(shown));

    assertThat(LabelOverlaps.of(PlanDrawing.draw(subject))).isEmpty();
    assertThat(LabelOverlaps.of(ProfileDrawing.draw(subject))).isEmpty();
  }

  @Test
  void theCheckSeesTextsThatCoverEachOtherOrAreCutOff() {
    Tag svg =
        Tag.of("svg")
            .with("viewBox", "0 0 100 100")
            .add(Pen.text(10, 50, "one", 10, false, Ink.DARK))
            .add(Pen.text(20, 52, "two", 10, false, Ink.DARK))
            .add(Pen.text(80, 90, "far too long", 10, false, Ink.DARK));

    assertThat(LabelOverlaps.of(svg)).containsExactly("one on two", "cut: far too long");
  }

  @Test
  void aStopOrderStandsOnTopOfEveryDrawing() {
    Subject subject = subject(Example.deadly());

    for (Tag svg : List.of(PlanDrawing.draw(subject), ProfileDrawing.draw(subject))) {
      assertThat(LabelOverlaps.words(svg).getFirst())
          .isEqualTo("STOP: Another pipe through the bore, 26' 11\" along the pipe from CO1.");
      assertThat(LabelOverlaps.of(svg)).isEmpty();
    }
  }

  @Test
  void anInventedSiteSaysSoAndEveryDrawingCarriesTheNotice() {
    Subject subject = subject(Example.usual());

    for (Tag svg : List.of(PlanDrawing.draw(subject), ProfileDrawing.draw(subject))) {
      assertThat(String.join(" ", LabelOverlaps.words(svg)))
          .contains("Invented example")
          .contains("Not for excavation without notice");
    }
  }

  @Test
  void thePlanIsTrueToTheScaleItStates() {
    // A point is 1/72 in, an inch 25.4 mm (both exact): at 1:200 a metre is 14.173 points.
    assertThat(new Scale(200).pointsPerMetre()).isCloseTo(1000 / 25.4 * 72 / 200, within(1e-9));

    Subject subject = subject(Example.usual(Shown.METRES));
    Tag plan = PlanDrawing.draw(subject);
    String stated =
        LabelOverlaps.words(plan).stream()
            .filter(w -> w.startsWith("1:"))
            .findFirst()
            .orElseThrow();
    double n = Double.parseDouble(stated.substring(2, stated.indexOf(' ')));
    List<Double> roots = circle(plan, "R1", "9.75");
    List<Double> joint = circle(plan, "R1", "1.2");
    double drawn = Math.hypot(roots.get(0) - joint.get(0), roots.get(1) - joint.get(1));

    // The reach is nearly straight there: 8.55 m along it is 8.54 m to 8.56 m across the ground.
    assertThat(drawn / 72 * 0.0254 * n).isCloseTo(8.55, within(0.02));
  }

  private static List<Double> circle(Tag svg, String reach, String distance) {
    NodeList groups = LabelOverlaps.parsed(svg).getElementsByTagName("g");
    for (int i = 0; i < groups.getLength(); i++) {
      Element group = (Element) groups.item(i);
      if (group.getAttribute("data-place").equals(reach)
          && group.getAttribute("data-distance").equals(distance)) {
        Element circle = (Element) group.getElementsByTagName("circle").item(0);
        return List.of(
            Double.parseDouble(circle.getAttribute("cx")),
            Double.parseDouble(circle.getAttribute("cy")));
      }
    }
    throw new AssertionError("nothing drawn at " + reach + " " + distance);
  }

  @Test
  void theLegendNamesOnlyWhatIsDrawn() {
    List<String> plan = LabelOverlaps.words(PlanDrawing.draw(subject(Example.usual())));

    assertThat(plan).contains("found from the ground", "outlet", "roots");
    assertThat(plan).doesNotContain("danger: stop", "pit", "pipe laid bare");
  }

  @Test
  void aFallAboutTheLimitIsNotCalledEnough() {
    List<String> profile = LabelOverlaps.words(ProfileDrawing.draw(subject(Example.usual())));

    assertThat(profile).containsSubsequence("1.2 % ± 0.6 %", "enough? open");
    assertThat(profile).containsSubsequence("1.5 % ± 0.3 %", "enough");
  }
}
