package daylight.footage.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import daylight.footage.Raster;
import daylight.line.book.Bend;
import daylight.line.book.Material;
import daylight.line.book.Pass;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What frames show. */
class SceneTest {
  /** The lens is half way through the motion, five metres in. */
  private static final long HALF_WAY = 200;

  /** Where a thing stands in full view of it. */
  private static final double IN_VIEW = 5 + Script.AHEAD * Pushes.RADIUS;

  private static final double SIX = StrictMath.PI;
  private static final double THREE = SIX / 2;

  private static Raster paint(Script script, CameraLook look, long frame) {
    Scene scene = new Scene(script, look);
    Raster raster = scene.raster();
    scene.paint(frame, raster);
    return raster;
  }

  @Test
  void aFrameDependsOnItsNumberAloneAndNotOnTheOrderOfPainting() {
    Script script =
        Pushes.through(
            Material.CLAY,
            new Thing.Water(4.5, 5.5, 0.02, true),
            new Thing.Step(IN_VIEW, 0.01, SIX),
            new Thing.Roots(6, 6, 5, 1, 0.2));
    Scene forward = new Scene(script, Pushes.burned());
    Scene backward = new Scene(script, Pushes.burned());
    Raster one = forward.raster();
    Raster other = backward.raster();
    for (long frame = 150; frame < 260; frame += 3) {
      forward.paint(frame, one);
    }
    for (long frame = 399; frame > 199; frame -= 7) {
      backward.paint(frame, other);
    }
    assertThat(forward.paint(HALF_WAY, one)).isEqualTo(backward.paint(HALF_WAY, other));
    assertThat(one.pixels()).isEqualTo(other.pixels());
    assertThat(paint(script, Pushes.burned(), HALF_WAY).pixels()).isEqualTo(one.pixels());
  }

  /** A thing, where it must show (a pixel of the 320 × 240) and where it must not. */
  record Shows(String what, Thing thing, int x, int y, int notX, int notY) {
    @Override
    public String toString() {
      return what;
    }
  }

  static Stream<Shows> things() {
    double v = IN_VIEW;
    return Stream.of(
        new Shows("step", new Thing.Step(v, 0.02, SIX), 160, 30, 12, 120),
        new Shows("gap", new Thing.Gap(v, 0.02), 160, 15, 12, 200),
        new Shows("roots", new Thing.Roots(v, v, 5.5, 0.7, 0.3), 160, 85, 160, 225),
        new Shows("opening", new Thing.Opening(v, THREE, 0.06), 240, 108, 60, 108),
        new Shows(
            "crack along", new Thing.Crack(v - 0.3, v + 0.3, THREE, THREE, 0.006), 0, 0, 60, 108),
        new Shows("crack around", new Thing.Crack(v, v, 5.5, 0.8, 0.006), 0, 0, 160, 200),
        new Shows("silt", new Thing.Silt(4.5, 6, 0.15), 160, 190, 160, 40),
        new Shows("still water", new Thing.Water(4.5, 5.8, 0.02, true), 160, 160, 160, 40),
        new Shows("flowing water", new Thing.Water(4.5, 5.8, 0.02, false), 160, 160, 160, 40),
        new Shows("plug", new Thing.Plug(v, SIX, 0.4), 160, 150, 160, 30),
        new Shows("crossing", new Thing.Crossing(v, 0.02, false), 160, 100, 160, 200),
        new Shows(
            "patch", new Thing.Patch(v - 0.1, v + 0.1, 1, 2, Thing.Sort.HOLE), 240, 108, 60, 108));
  }

  @ParameterizedTest
  @MethodSource("things")
  void eachThingShowsAtItsPlaceAndNotElsewhere(Shows shows) {
    Script without = Pushes.through(Material.CONCRETE);
    Script with = Pushes.through(Material.CONCRETE, shows.thing());
    Field bare = Seen.at(without, 5);
    Field field = Seen.at(with, 5);
    assertThat(Seen.most(bare, field, 0, 0, 320, 240)).as("anywhere").isGreaterThan(0.1);
    if (shows.x() > 0) {
      int x = shows.x();
      int y = shows.y();
      assertThat(Seen.most(bare, field, x - 14, y - 14, x + 14, y + 14)).isGreaterThan(0.05);
    }
    int x = shows.notX();
    int y = shows.notY();
    assertThat(Seen.most(bare, field, x - 8, y - 8, x + 8, y + 8)).isLessThan(1e-4);
  }

  @Test
  void aBendToTheRightMovesTheDarkToTheRight() {
    Script.Turn turn = new Script.Turn(IN_VIEW + 0.1, StrictMath.PI / 4, Bend.Sense.RIGHT);
    Script bent =
        Pushes.script(Material.PVC, List.of(turn), List.of(), List.of(), Script.Into.PIPE);
    double straight = Seen.middleOfDark(Seen.at(Pushes.through(Material.PVC), 5));
    assertThat(Seen.middleOfDark(Seen.at(bent, 5))).isGreaterThan(straight + 8);
  }

  @ParameterizedTest
  @EnumSource(
      value = Pass.Clarity.class,
      names = {"POOR", "BLIND"})
  void poorSightLowersContrastAndBlindLeavesNearlyNone(Pass.Clarity clarity) {
    Script.Veil veil = new Script.Veil(4, 6, clarity);
    Script veiled =
        Pushes.script(Material.CLAY, List.of(), List.of(veil), List.of(), Script.Into.PIPE);
    double clear = Seen.contrast(Seen.at(Pushes.through(Material.CLAY), 5));
    double left = clarity == Pass.Clarity.POOR ? 0.8 : 0.45;
    assertThat(Seen.contrast(Seen.at(veiled, 5))).isLessThan(left * clear);
  }

  @Test
  void daylightStandsAtTheEndOfAPipeThatComesOut() {
    Script out = Pushes.script(Material.PVC, List.of(), List.of(), List.of(), Script.Into.DAYLIGHT);
    Field field = Seen.at(out, 5);
    Field dark = Seen.at(Pushes.through(Material.PVC), 5);
    int middle = field.height / 2 * field.width + field.width / 2;
    assertThat(field.green[middle]).isGreaterThan(1);
    assertThat(dark.green[middle]).isLessThan(0.1f);
  }

  @Test
  void theWallMovesPastAndOutward() {
    Script script = Pushes.through(Material.CLAY, new Thing.Gap(6, 0.01));
    double before = 0;
    for (double in = 5.75; in < 5.91; in += 0.05) {
      double from = Seen.ring(Seen.at(script, in), Seen.at(Pushes.through(Material.CLAY), in));
      assertThat(from).isGreaterThan(before + 1);
      before = from;
    }
  }

  @Test
  void theTruthOfAFrameIsThatOfTheScriptWhetherPaintedOrNot() {
    Script script = Pushes.through(Material.PVC);
    Scene scene = new Scene(script, Pushes.burned());
    Raster raster = scene.raster();
    assertThat(scene.frames()).isEqualTo(420);
    for (long frame = 0; frame < 420; frame += 60) {
      FrameTruth truth = scene.paint(frame, raster);
      assertThat(truth).isEqualTo(scene.truth(frame));
      assertThat(truth.reading()).isEqualTo(script.motion().readingAt(frame / 10.0));
      assertThat(truth.text()).isEqualTo(Pushes.burned().format().text(truth.reading()));
      assertThat(truth.moving()).isEqualTo(frame < 400);
    }
    assertThat(scene.truth(HALF_WAY).row())
        .isEqualTo("200,20.000000,5.000000,\"16.4 ft\",yes,31,183,121,26");
  }

  @Test
  void theCounterChangesOnlyPixelsOfItsRegion() {
    CameraLook burned = Pushes.burned();
    CameraLook bare =
        new CameraLook(320, 240, burned.rate(), 2, burned.format(), null, burned.captions());
    Script script = Pushes.through(Material.PVC);
    Scene scene = new Scene(script, burned);
    Raster with = scene.raster();
    Region region = scene.paint(HALF_WAY, with).region();
    Raster without = paint(script, bare, HALF_WAY);
    for (int i = 0; i < with.pixels().length; i++) {
      if (!region.holds(i % 320, i / 320)) {
        assertThat(with.pixels()[i]).isEqualTo(without.pixels()[i]);
      }
    }
    assertThat(with.pixels()).isNotEqualTo(without.pixels());
  }

  @Test
  void frozenPictures() {
    Script script =
        Pushes.script(
            Material.CLAY,
            List.of(new Script.Turn(5.4, 0.7, Bend.Sense.LEFT)),
            List.of(new Script.Veil(6, 7, Pass.Clarity.POOR)),
            List.of(
                new Thing.Roots(IN_VIEW, IN_VIEW, 5, 1, 0.2),
                new Thing.Water(6.1, 6.9, 0.02, true)),
            Script.Into.PIPE);
    assertThat(
            Stream.of(HALF_WAY, 260L)
                .map(frame -> Arrays.hashCode(paint(script, Pushes.burned(), frame).pixels())))
        .containsExactly(-1602267018, 1202036728);
  }

  @Test
  void refusesARasterOfAnotherSize() {
    Scene scene = new Scene(Pushes.through(Material.PVC), Pushes.bare());
    assertThatThrownBy(() -> scene.paint(0, new Raster(640, 480)))
        .hasMessageContaining("a picture of 320 × 240 pixels, was 640 × 480");
  }
}
