package daylight.app.field;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.jspecify.annotations.Nullable;

/**
 * The keys by which browsers are told apart. A device's key is a number and our mark on it, so that
 * nobody can make one up; the token that goes with every order is made from the number by the same
 * secret, so that a page that cannot read ours cannot know it. The secret stays with the archive: a
 * page that waits with what was written finds its token good after a restart.
 */
final class DeviceKeys {
  private static final String FILE = "pages.key";
  private static final int SECRET_BYTES = 32;
  private static final int NUMBER_BYTES = 16;
  private static final Pattern KEY = Pattern.compile("([0-9a-f]{32})\\.([0-9a-f]{64})");

  private final SecretKeySpec secret;
  private final SecureRandom random = new SecureRandom();

  private DeviceKeys(byte[] secret) {
    this.secret = new SecretKeySpec(secret, "HmacSHA256");
  }

  /** Those of the archive in a folder. */
  static DeviceKeys of(Path archive) throws IOException {
    Path file = archive.resolve(FILE);
    byte[] fresh = new byte[SECRET_BYTES];
    new SecureRandom().nextBytes(fresh);
    try {
      Files.write(file, fresh, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
      keepToOwner(file);
      return new DeviceKeys(fresh);
    } catch (FileAlreadyExistsException there) {
      byte[] known = Files.readAllBytes(file);
      if (known.length == SECRET_BYTES) {
        return new DeviceKeys(known);
      }
      // Cut off while it was first written: nobody holds a key made from it.
      Files.write(file, fresh);
      return new DeviceKeys(fresh);
    }
  }

  private static void keepToOwner(Path file) throws IOException {
    if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
      Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
    }
  }

  /** A key for a device that has none. */
  String fresh() {
    byte[] number = new byte[NUMBER_BYTES];
    random.nextBytes(number);
    String text = HexFormat.of().formatHex(number);
    return text + "." + mark("device " + text);
  }

  /** The number of a key; empty where it is not one of ours. */
  Optional<String> number(@Nullable String key) {
    var parts = KEY.matcher(key == null ? "" : key);
    return parts.matches() && same(mark("device " + parts.group(1)), parts.group(2))
        ? Optional.of(parts.group(1))
        : Optional.empty();
  }

  /** What goes with every order of a device. */
  String token(String number) {
    return mark("token " + number);
  }

  boolean isToken(String number, @Nullable String token) {
    return token != null && same(token(number), token);
  }

  private static boolean same(String one, String other) {
    return MessageDigest.isEqual(
        one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
  }

  private String mark(String text) {
    try {
      Mac mac = Mac.getInstance("HmacSHA256");
      mac.init(secret);
      return HexFormat.of().formatHex(mac.doFinal(text.getBytes(StandardCharsets.UTF_8)));
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("every Java platform has HmacSHA256", e);
    }
  }
}
