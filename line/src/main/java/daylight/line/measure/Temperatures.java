package daylight.line.measure;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Celsius and Fahrenheit: scales with different zeros, so no single factor converts them. */
final class Temperatures {
  private static final Map<String, Boolean> IS_FAHRENHEIT =
      Map.of("°c", false, "c", false, "degc", false, "°f", true, "f", true, "degf", true);

  private Temperatures() {}

  static boolean isScale(String name) {
    return IS_FAHRENHEIT.containsKey(name);
  }

  /** The temperature in degrees Celsius, or null when the name is of no scale. */
  static @Nullable Double celsius(double value, String name) {
    Boolean fahrenheit = IS_FAHRENHEIT.get(name);
    if (fahrenheit == null) {
      return null;
    }
    return fahrenheit ? (value - 32) * 5 / 9 : value;
  }
}
