package daylight.app.field;

import daylight.app.web.Look;
import daylight.archive.store.By;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Who is at the other end.
 *
 * @param standing whether it is this machine, a phone that joined, or anybody
 * @param number of the device
 * @param token what its orders must carry
 * @param person as people call them; null where nobody said
 * @param device what people call the device
 */
record Caller(
    Standing standing,
    String number,
    String token,
    Look look,
    @Nullable String person,
    String device) {
  /** The same, written by that person. */
  Caller by(@Nullable String whoever) {
    return new Caller(standing, number, token, look, whoever, device);
  }

  Phrases phrases() {
    return Phrases.of(look.language());
  }

  String say(String key, Object... told) {
    return phrases().say(key, told);
  }

  /** Who writes, now; empty where nobody said who that is. */
  Optional<By> by() {
    return person == null
        ? Optional.empty()
        : Optional.of(new By(person, device, Instant.now().truncatedTo(ChronoUnit.SECONDS)));
  }
}
