package daylight.archive;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.regex.Pattern;

/**
 * The SHA-256 of a content (FIPS 180-4).
 *
 * @param hex its 64 digits, in small letters; nothing else is taken, so that it is safe as a name
 */
public record Sha256(String hex) {
  private static final Pattern FORM = Pattern.compile("[0-9a-f]{64}");

  /** Refused: anything but 64 such digits. */
  public Sha256 {
    if (!isOne(hex)) {
      throw new IllegalArgumentException("no SHA-256: " + hex);
    }
  }

  /** Of a file, which is read from end to end. */
  public static Sha256 of(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return copied(in, OutputStream.nullOutputStream());
    }
  }

  /** Of a text in UTF-8. */
  public static Sha256 of(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    try {
      return copied(new ByteArrayInputStream(bytes), OutputStream.nullOutputStream());
    } catch (IOException e) {
      throw new IllegalStateException("bytes in memory can be read", e);
    }
  }

  /** Whether a text has the form of one. */
  public static boolean isOne(String text) {
    return FORM.matcher(text).matches();
  }

  /** Of all that comes, which is passed on. */
  public static Sha256 copied(InputStream in, OutputStream out) throws IOException {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      new DigestInputStream(in, digest).transferTo(out);
      return new Sha256(HexFormat.of().formatHex(digest.digest()));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
