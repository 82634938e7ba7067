package daylight.footage.scene;

import daylight.footage.Rate;
import daylight.line.book.Material;
import java.util.List;

/** Scripts and cameras for tests: ten metres of pipe, pushed through in forty seconds. */
final class Pushes {
  static final double RADIUS = 0.05;

  private Pushes() {}

  static CameraLook bare() {
    return new CameraLook(
        320, 240, new Rate(10, 1), 0, CounterFormat.metres(2, 1, " m"), null, List.of());
  }

  static CameraLook burned() {
    Lettering.Place place = new Lettering.Place(0.1, 0.9);
    Lettering white = new Lettering(Typeface.PLAIN, 22, 0xFFFFFF, 1, 2, 0, place);
    Lettering small =
        new Lettering(Typeface.MATRIX, 14, 0xFFFFFF, 1, 1, 0, new Lettering.Place(1, 0));
    return new CameraLook(
        320,
        240,
        new Rate(10, 1),
        2,
        CounterFormat.feet(1, 1, " ft"),
        white,
        List.of(new CameraLook.Caption(CameraLook.Says.DATE_AND_CLOCK, small)));
  }

  static Script through(Material material, Thing... things) {
    return script(material, List.of(), List.of(), List.of(things), Script.Into.PIPE);
  }

  static Script script(
      Material material,
      List<Script.Turn> turns,
      List<Script.Veil> veils,
      List<Thing> things,
      Script.Into into) {
    return new Script(
        new Motion(List.of(new Motion.Anchor(0, 0), new Motion.Anchor(40, 10))),
        new Odometer(List.of()),
        List.of(new Script.Pipe(Double.NEGATIVE_INFINITY, material, RADIUS)),
        List.of(),
        turns,
        veils,
        things,
        new Script.Mouth(into == Script.Into.PIPE ? Double.POSITIVE_INFINITY : 5.2, into),
        "TEST LINE",
        36_000,
        "2026-01-01");
  }
}
