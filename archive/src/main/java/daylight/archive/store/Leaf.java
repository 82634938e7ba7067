package daylight.archive.store;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * An entry of a book by itself.
 *
 * @param parent the entry it stands in; null for the book
 * @param section the keys that lead to it there, joined by {@code /}
 * @param place among those of its section, rising; {@link BookTree#ALONE} where a section holds one
 *     only, not a list
 * @param content its own keys as YAML
 */
record Leaf(UUID entry, @Nullable UUID parent, String section, double place, String content) {
  Leaf at(double other) {
    return new Leaf(entry, parent, section, other, content);
  }
}
