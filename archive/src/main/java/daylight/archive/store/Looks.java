package daylight.archive.store;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import java.util.function.Supplier;

/**
 * What was seen of books when they were written to last, so that none need be read twice for one
 * entry. It is true only for the revision after which it was seen.
 */
final class Looks {
  private static final int MOST = 500;

  private record Known(long seq, Look look) {}

  private final Map<UUID, Known> known = new LinkedHashMap<>(16, 0.75f, true);

  /** A look at a book as it is after a revision. */
  synchronized Look of(UUID book, long seq, Supplier<Look> look) {
    Known there = known.get(book);
    return there != null && there.seq() == seq ? there.look() : look.get();
  }

  /** Notes one, once what was seen is on the disk. */
  synchronized void note(UUID book, long seq, Look look) {
    known.put(book, new Known(seq, look.withoutBook()));
    if (known.size() > MOST) {
      known.remove(known.keySet().iterator().next());
    }
  }

  synchronized void clear() {
    known.clear();
  }
}
