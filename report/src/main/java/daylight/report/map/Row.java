package daylight.report.map;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * One thing of a layer.
 *
 * @param values by name of field; what is not known is not in it
 * @param shape where it lies; null where that is not known
 */
public record Row(Layer layer, SortedMap<String, Object> values, @Nullable Shape shape) {
  public Row {
    values = Collections.unmodifiableSortedMap(new TreeMap<>(values));
    values.forEach(
        (name, value) -> {
          Field field =
              layer
                  .find(name)
                  .orElseThrow(() -> new IllegalArgumentException(layer + " has no " + name));
          if (!field.type().holds(value)) {
            throw new IllegalArgumentException(layer + "." + name + " cannot be " + value);
          }
        });
  }

  /** What a field holds: a text, number, whole number, yes or no, or day; null if not known. */
  public @Nullable Object get(Field field) {
    return values.get(field.name());
  }

  /** A text of it; empty where there is none. */
  public String text(String name) {
    return values.get(name) instanceof String text ? text : "";
  }
}
