package daylight.app.field;

import daylight.app.web.Look;
import daylight.app.web.Remembered;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What a browser remembers for these pages; no script can read it, no other page can send it. */
final class Cookies {
  static final String DEVICE = "daylight-device";
  static final String LOOK = Look.COOKIE;
  static final String WHO = "daylight-who";

  private static final int LONGEST_NAME = 80;

  private Cookies() {}

  static void set(Context reply, String name, String value) {
    Remembered.set(reply, name, value);
  }

  static @Nullable String get(Context request, String name) {
    return Remembered.get(request, name);
  }

  static boolean isSecure(Context request) {
    return Remembered.isSecure(request);
  }

  /** Person and device as a cookie's text. */
  static String who(String person, String device) {
    return text(person) + "." + text(device);
  }

  private static String text(String name) {
    return Base64.getUrlEncoder()
        .withoutPadding()
        .encodeToString(name.getBytes(StandardCharsets.UTF_8));
  }

  /** The person, or with 1 the device, that a cookie names; null where it names none. */
  static @Nullable String who(Context request, int which) {
    String[] parts = Objects.requireNonNullElse(get(request, WHO), "").split("\\.", -1);
    if (parts.length != 2) {
      return null;
    }
    try {
      return name(new String(Base64.getUrlDecoder().decode(parts[which]), StandardCharsets.UTF_8));
    } catch (IllegalArgumentException e) {
      return null;
    }
  }

  /** A name as it may be kept: on one line, not blank, not longer than a name is. */
  static @Nullable String name(@Nullable String given) {
    String name = given == null ? "" : given.replaceAll("[\\p{Cntrl}\\s]+", " ").strip();
    return name.isEmpty() ? null : name.substring(0, Math.min(LONGEST_NAME, name.length()));
  }
}
