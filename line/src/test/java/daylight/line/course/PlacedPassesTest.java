package daylight.line.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.book.Bend;
import daylight.line.book.Finding;
import daylight.line.book.Node;
import daylight.line.book.Pass;
import daylight.line.book.Place;
import daylight.line.book.Where;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** How far each push came, and which way it went. */
class PlacedPassesTest {

  @Test
  void aPushThatReachedANodeWentAllTheWay() {
    PlacedPass pass = only(Flat.line(Flat.book(Flat.push(), 3, 8, 13)));

    assertThat(pass.legs()).hasSize(1);
    assertThat(pass.legs().getFirst().from().distance()).isZero();
    assertThat(pass.legs().getFirst().to().distance()).isCloseTo(20, within(0.3));
    assertThat(pass.legs().getFirst().down()).isTrue();
  }

  @Test
  void aPushAgainstTheWaterRunsTowardSmallerDistancesAndItsBendsComeAlong() {
    Push push =
        new Push("P1", "N2", "R1")
            .end(20, Pass.Why.ENOUGH, "N1")
            .bend(5, Math.PI / 4, Bend.Sense.LEFT);

    PlacedPass pass = only(Flat.line(Flat.ground().reach("R1", "N1", "N2").pass(push).book()));

    assertThat(pass.legs().getFirst().down()).isFalse();
    assertThat(pass.legs().getFirst().to().distance()).isZero();
    assertThat(pass.bends().getFirst().place().distance()).isCloseTo(15, within(0.5));
  }

  @Test
  void aPushThatWasStoppedEndsThereInTheReachItCameTo() {
    Push push =
        new Push("P1", "N1", "R1", "R2")
            .node(8, "J", Finding.Moving.PUSHING)
            .end(11, Pass.Why.OBSTRUCTION, null);

    PlacedPass pass =
        only(
            Flat.line(
                Flat.ground()
                    .node("J", Node.Kind.JUNCTION)
                    .reach("R1", "N1", "J")
                    .reach("R2", "J", "N2")
                    .pass(push)
                    .book()));

    assertThat(pass.legs()).extracting(leg -> leg.to().reach()).containsExactly("R1", "R2");
    assertThat(pass.legs().getLast().to().distance()).isCloseTo(3, within(0.3));
  }

  @Test
  void aPushWhoseEndNobodyNotedCameAsFarAsAnythingWasSeen() {
    Push noted = new Push("P1", "N1", "R1").seen("roots", 6.5, Map.of());
    Push mute = new Push("P1", "N1", "R1");

    PlacedPass pass = only(Flat.line(Flat.ground().reach("R1", "N1", "N2").pass(noted).book()));

    assertThat(pass.legs().getFirst().to().distance()).isCloseTo(6.5, within(0.3));
    assertThat(only(Flat.line(Flat.ground().reach("R1", "N1", "N2").pass(mute).book())).legs())
        .isEmpty();
  }

  @Test
  void theCameraIsWhereWhatItSawIsPushedOrPulled() {
    Push push =
        new Push("P1", "N1", "R1", "R2")
            .seen("roots", 2.5, Map.of())
            .node(8, "J", Finding.Moving.PUSHING)
            .seen("crack", 10.5, Map.of())
            .end(11, Pass.Why.OBSTRUCTION, null);
    Line line =
        Flat.line(
            Flat.ground()
                .node("J", Node.Kind.JUNCTION)
                .reach("R1", "N1", "J")
                .reach("R2", "J", "N2")
                .pass(push)
                .book());
    Camera camera = only(line).camera();

    for (PlacedFinding placed : line.findings()) {
      double reading = ((Where.AtCable) placed.finding().where()).cable().value();
      Place at = camera.at(reading, placed.finding().moving()).orElseThrow();
      assertThat(at.reach()).isEqualTo(placed.from().reach());
      assertThat(at.distance()).isCloseTo(placed.from().distance(), within(1e-9));
    }
    Place pushed = camera.at(5, Finding.Moving.PUSHING).orElseThrow();
    Place pulled = camera.at(5, Finding.Moving.PULLING).orElseThrow();
    assertThat(pulled.distance()).as("a taut cable has no slack").isGreaterThan(pushed.distance());
    assertThat(camera.at(-1, Finding.Moving.PUSHING).orElseThrow().distance()).isZero();
    assertThat(camera.at(99, Finding.Moving.PUSHING)).contains(only(line).legs().getLast().to());
  }

  private static PlacedPass only(Line line) {
    assertThat(line.passes()).hasSize(1);
    return line.passes().getFirst();
  }
}
