package daylight.line.course;

import daylight.line.normal.Gradient;
import org.jspecify.annotations.Nullable;

/**
 * A figure of a line: its value, its gradient by the unknowns, and what it is unsure by beyond
 * them.
 *
 * @param loose variance that no unknown carries, under the name of {@code looseSource}
 */
record Figure(double value, Gradient gradient, double loose, @Nullable String looseSource) {

  /** A figure that the unknowns carry alone. */
  static Figure of(double value, Gradient gradient) {
    return new Figure(value, gradient, 0, null);
  }

  /** This figure less another. */
  Figure less(Figure other) {
    Gradient difference = new Gradient();
    difference.add(gradient);
    difference.add(other.gradient, -1);
    String source = loose >= other.loose ? looseSource : other.looseSource;
    return new Figure(value - other.value, difference, loose + other.loose, source);
  }
}
