package daylight.line.survey;

/** What the values of this room must satisfy at birth. */
final class Require {
  private Require() {}

  static void finite(String name, double value, String unit) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must be finite, was " + value + " " + unit);
    }
  }

  static void positive(String name, double value, String unit) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(
          name + " must be positive and finite, was " + value + " " + unit);
    }
  }

  static void notNegative(String name, double value, String unit) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(
          name + " must be zero or more and finite, was " + value + " " + unit);
    }
  }

  /** Strictly between the two bounds. */
  static void between(String name, double value, double low, double high) {
    if (!(value > low && value < high)) {
      throw new IllegalArgumentException(
          name + " must lie between " + low + " and " + high + ", was " + value);
    }
  }

  static void label(String name, String value) {
    if (value.isBlank()) {
      throw new IllegalArgumentException(name + " must not be blank");
    }
  }

  static void labels(String entry, String first, String second) {
    label("entry", entry);
    label("point", first);
    label("point", second);
    different("point", first, second);
  }

  static void different(String name, String first, String second) {
    if (first.equals(second)) {
      throw new IllegalArgumentException(name + " must differ from the other, both were " + first);
    }
  }
}
