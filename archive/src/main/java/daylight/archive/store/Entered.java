package daylight.archive.store;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One state of an entry, as a page or a device sends it.
 *
 * @param entry its identity, made where it was written
 * @param parent the entry it stands in; null for the book itself, whose identity is the book's
 * @param section the keys that lead to it there, joined by {@code /}: {@code visits}, {@code
 *     findings}, {@code surroundings/pumps}; empty for the book itself
 * @param base the revision that it was written upon; 0 for a new entry
 * @param content its own keys as a file would have them, in YAML or JSON; null where it is
 *     withdrawn
 */
public record Entered(
    UUID entry, @Nullable UUID parent, String section, int base, @Nullable String content) {
  public Entered {
    if (base < 0) {
      throw new IllegalArgumentException("base must not be negative, was " + base);
    }
  }
}
