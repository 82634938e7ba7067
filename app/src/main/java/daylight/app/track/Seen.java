package daylight.app.track;

import daylight.archive.Sha256;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A recording as it lay there before anybody opened it, so that what was read of it is never kept
 * for a file that became another one meanwhile. Used by one thread at a time.
 */
public final class Seen {
  /** How a file looks from outside. */
  private record Look(long size, FileTime modified, @Nullable Object key) {}

  private final Path file;
  private final @Nullable Look look;
  private @Nullable String digest;

  private Seen(Path file, @Nullable Look look) {
    this.file = file;
    this.look = look;
  }

  /** The file as it is now; one that cannot be looked at is never the same again. */
  public static Seen of(Path file) {
    return new Seen(file, look(file));
  }

  private static @Nullable Look look(Path file) {
    try {
      BasicFileAttributes seen = Files.readAttributes(file, BasicFileAttributes.class);
      return new Look(seen.size(), seen.lastModifiedTime(), seen.fileKey());
    } catch (IOException gone) {
      return null;
    }
  }

  /** Whether it still looks as it did. */
  boolean still() {
    return look != null && look.equals(look(file));
  }

  /** SHA-256 of what is in it, read once; empty where it is no longer what it was. */
  Optional<String> digest() throws IOException {
    if (digest == null && still()) {
      digest = Sha256.of(file).hex();
    }
    return still() ? Optional.ofNullable(digest) : Optional.empty();
  }
}
