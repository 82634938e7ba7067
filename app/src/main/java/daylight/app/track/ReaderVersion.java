package daylight.app.track;

import daylight.archive.Sha256;
import daylight.footage.codec.Footage;
import daylight.footage.counter.CounterReader;
import java.util.Optional;

/**
 * Which reader of counters this is: a digest of what it is made of and of the version of the
 * library that decodes for it.
 */
final class ReaderVersion {
  private static final String ROOM = "daylight/footage";

  /** Paints films, and reads none. */
  private static final String SCENES = "scene/";

  private static final int LENGTH = 16;
  private static final Optional<String> OURS =
      MadeOf.lines(CounterReader.class, ROOM, name -> !name.startsWith(SCENES))
          .map(lines -> Sha256.of(Footage.library() + "\n" + lines).hex().substring(0, LENGTH));

  private ReaderVersion() {}

  /** Of the reader that is running; empty where that cannot be told. */
  static Optional<String> ours() {
    return OURS;
  }
}
