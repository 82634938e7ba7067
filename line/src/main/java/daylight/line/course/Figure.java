package daylight.line.course;

import daylight.line.book.Priors;
import daylight.line.normal.Gradient;
import java.util.ArrayList;
import java.util.List;

/**
 * A figure of a line: its value, its gradient by the unknowns, and what it is unsure by beyond
 * them.
 *
 * @param beyond variance that no unknown carries, each under its prior
 */
record Figure(double value, Gradient gradient, List<Loose> beyond) {
  /** Variance that no unknown carries. */
  record Loose(Priors.Kind from, double variance) {}

  Figure {
    beyond = List.copyOf(beyond);
  }

  /** A figure that the unknowns carry alone. */
  static Figure of(double value, Gradient gradient) {
    return new Figure(value, gradient, List.of());
  }

  /** One that is unsure by a little more. */
  static Figure of(double value, Gradient gradient, double loose, Priors.Kind from) {
    return new Figure(value, gradient, loose > 0 ? List.of(new Loose(from, loose)) : List.of());
  }

  /** All the variance that no unknown carries. */
  double loose() {
    double sum = 0;
    for (Loose each : beyond) {
      sum += each.variance();
    }
    return sum;
  }

  /** This figure less another. */
  Figure less(Figure other) {
    Gradient difference = new Gradient();
    difference.add(gradient);
    difference.add(other.gradient, -1);
    List<Loose> both = new ArrayList<>(beyond);
    both.addAll(other.beyond);
    return new Figure(value - other.value, difference, both);
  }
}
