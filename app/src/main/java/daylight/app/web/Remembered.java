package daylight.app.web;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import org.jspecify.annotations.Nullable;

/** What a browser remembers for our pages; no script can read it, no other page can send it. */
public final class Remembered {
  private static final int TEN_YEARS = 10 * 365 * 24 * 3600;

  private Remembered() {}

  /** Has the browser remember something. */
  public static void set(Context reply, String name, String value) {
    boolean secure = isSecure(reply);
    reply.cookie(
        new Cookie(name(secure, name), value, "/", TEN_YEARS, secure, true, null, SameSite.STRICT));
  }

  /** What it remembers; null where that is nothing. */
  public static @Nullable String get(Context request, String name) {
    return request.cookie(name(isSecure(request), name));
  }

  /** Whether nobody on the way can read what is sent. */
  public static boolean isSecure(Context request) {
    return "https".equals(request.scheme());
  }

  /**
   * Over a secure connection by a name that browsers take over no other (RFC 6265bis, 4.1.3.2), so
   * that no plain page of the same address can put its own in place.
   */
  private static String name(boolean secure, String name) {
    return secure ? "__Host-" + name : name;
  }
}
