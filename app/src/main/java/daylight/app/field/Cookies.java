package daylight.app.field;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What a browser remembers for these pages; no script can read it, no other page can send it. */
final class Cookies {
  static final String DEVICE = "daylight-device";
  static final String LOOK = "daylight-look";
  static final String WHO = "daylight-who";

  private static final int TEN_YEARS = 10 * 365 * 24 * 3600;
  private static final int LONGEST_NAME = 80;

  private Cookies() {}

  static void set(Context reply, String name, String value) {
    boolean secure = isSecure(reply);
    reply.cookie(
        new Cookie(name(secure, name), value, "/", TEN_YEARS, secure, true, null, SameSite.STRICT));
  }

  static @Nullable String get(Context request, String name) {
    return request.cookie(name(isSecure(request), name));
  }

  static boolean isSecure(Context request) {
    return "https".equals(request.scheme());
  }

  /**
   * Over a secure connection by a name that browsers take over no other (RFC 6265bis, 4.1.3.2), so
   * that no plain page of the same address can put its own in place.
   */
  private static String name(boolean secure, String name) {
    return secure ? "__Host-" + name : name;
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
