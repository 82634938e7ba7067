package daylight.app.door;

import java.time.Duration;

/** What came of a code that somebody typed. */
public sealed interface Tried {
  /** It was good, and is so no more. */
  record Good() implements Tried {}

  /** It was not. */
  record Refused(Why why) implements Tried {}

  /** Too many were wrong; nothing is looked at before so long has passed. */
  record TooMany(Duration rest) implements Tried {}

  /** Why a code is refused. */
  enum Why {
    UNKNOWN,
    USED,
    LATE
  }
}
