package daylight.archive.seal;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Bytes that are to be sealed; they are read twice, and must be the same both times. */
@FunctionalInterface
public interface Content {
  /** From the first byte on. */
  InputStream open() throws IOException;

  /** Bytes at hand. */
  static Content of(byte[] bytes) {
    return () -> new ByteArrayInputStream(bytes);
  }

  /** A file. */
  static Content of(Path file) {
    return () -> Files.newInputStream(file);
  }
}
