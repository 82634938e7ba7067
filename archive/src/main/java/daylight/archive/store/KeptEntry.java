package daylight.archive.store;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * An entry of a book as it is now.
 *
 * @param parent the entry it stands in; null for the book
 * @param section the keys that lead to it there, joined by {@code /}
 * @param place among those of its section, rising; negative where a section holds one only
 * @param number of its last revision, upon which the next is written
 * @param content its own keys as YAML
 */
public record KeptEntry(
    UUID entry, @Nullable UUID parent, String section, double place, int number, String content) {}
