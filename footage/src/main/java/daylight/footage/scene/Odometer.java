package daylight.footage.scene;

import daylight.line.book.Pass;
import java.util.Comparator;
import java.util.List;

/**
 * From what the counter shows to how far in the lens is: the same, less the jumps of a counter that
 * ran ahead while the camera stood.
 */
record Odometer(List<Jump> jumps) {
  /** From one reading to a greater one without the camera moving. */
  record Jump(double before, double after) {}

  Odometer {
    jumps = jumps.stream().sorted(Comparator.comparingDouble(Jump::before)).toList();
  }

  static Odometer of(Pass pass) {
    return new Odometer(
        pass.resets().stream()
            .map(reset -> new Jump(reset.before().value(), reset.after().value()))
            .toList());
  }

  /** How far in the lens is at a reading, in metres; never falls as the reading grows. */
  double in(double reading) {
    double in = reading;
    for (Jump jump : jumps) {
      in -= Math.clamp(reading - jump.before(), 0.0, Math.max(0.0, jump.after() - jump.before()));
    }
    return in;
  }
}
