package daylight.app.door;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A phone that joined.
 *
 * @param number of its key
 * @param name what whoever joined calls it
 * @param secure whether it joined over a secure connection; its key is good for none other
 * @param seen when it last asked for anything
 * @param revoked when it was taken off the list; null where it was not
 */
public record Phone(
    String number,
    String name,
    boolean secure,
    Instant since,
    Instant seen,
    @Nullable Instant revoked) {
  /** Whether it may pass. */
  public boolean isJoined() {
    return revoked == null;
  }

  Phone seenAt(Instant now) {
    return new Phone(number, name, secure, since, now, revoked);
  }

  Phone revokedAt(Instant now) {
    return new Phone(number, name, secure, since, seen, now);
  }
}
