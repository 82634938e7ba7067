package daylight.app.field;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.regex.Pattern;

/** Style and modules of these pages: files of the program, read when they are asked for. */
final class FieldAssets {
  private static final Pattern NAME = Pattern.compile("[a-z][a-z-]*\\.(?:css|js|svg)");

  private FieldAssets() {}

  static Optional<byte[]> find(String name) {
    if (!NAME.matcher(name).matches()) {
      return Optional.empty();
    }
    try (InputStream in = FieldAssets.class.getResourceAsStream(name)) {
      return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
