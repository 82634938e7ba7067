package daylight.app.web;

import daylight.report.page.OwnersReport;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.net.InetAddress;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** What every request must keep to, and what every reply says to the browser. */
public final class Guard {
  /** Our pages: nothing from elsewhere, nothing inline, nothing sent anywhere. */
  static final String PAGES =
      "default-src 'self'; img-src 'self' data:; object-src 'none'; base-uri 'none'; form-action 'none'; "
          + "frame-ancestors 'none'";

  /**
   * The files to hand over carry their style and typeface inside; a report also its one script,
   * which is known by its digest.
   */
  static final String FILES =
      "default-src 'none'; script-src "
          + OwnersReport.script()
          + "; style-src 'unsafe-inline'; font-src data:; img-src 'self' data:; "
          + "base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

  /** The same for pages on which something is written down: sent to where they come from. */
  public static final String FORMS = PAGES.replace("form-action 'none'", "form-action 'self'");

  /**
   * What may be ordered: that counters be read no longer, or after all; and what is written down on
   * the pages of an archive, which look closer at it themselves.
   */
  private static final Pattern ORDERS =
      Pattern.compile(
          "/property/[^/]+/(?:stop|read)|/(?:look|who|join|sites/[^/]+|phones/[^/]+)|/site/[^/]+/.+");

  private static final String LOOPBACK = "127.0.0.1";

  private Guard() {}

  /**
   * Lets a request pass that only reads, or orders footage to be read or not, and that names this
   * machine by an address of its own. A page from elsewhere whose name was made to lead here names
   * itself, and is turned away.
   */
  static void check(Context request) {
    request.header("Content-Security-Policy", PAGES);
    request.header("X-Content-Type-Options", "nosniff");
    request.header("Referrer-Policy", "no-referrer");
    request.header("Cross-Origin-Resource-Policy", "same-origin");
    request.header("Cross-Origin-Opener-Policy", "same-origin");
    request.header("Cache-Control", "no-store");
    String place = request.req().getLocalAddr();
    Set<String> names = names(place, request.req().getLocalPort());
    if (!names.contains(String.valueOf(request.host()))) {
      refuse(
          request,
          421,
          "This is Daylight on this machine, and it answers only to "
              + (isThisMachine(place) ? LOOPBACK : names.iterator().next())
              + ".");
    } else if (!isPlain(request.header("Content-Encoding"))) {
      // What swells when it is unpacked is not unpacked at all.
      request.header("Accept-Encoding", "identity");
      refuse(request, 415, "What is sent must not be packed.");
    } else if (request.method().equals(HandlerType.POST)
        && ORDERS.matcher(request.path()).matches()) {
      // Browsers name the page that an order comes from; a page from elsewhere gives none here.
      // What they say of where it comes from is heeded where they say it.
      String from = request.header("Sec-Fetch-Site");
      if (!(request.scheme() + "://" + request.host()).equals(request.header("Origin"))
          || !(from == null || from.equals("same-origin"))) {
        refuse(request, 403, "This is ordered only by Daylight's own pages.");
      }
    } else if (!Set.of(HandlerType.GET, HandlerType.HEAD).contains(request.method())) {
      request.header("Allow", "GET, HEAD");
      refuse(request, 405, "Nothing can be changed here.");
    }
  }

  /**
   * Whether a place at which this machine listens is reached by nobody but this machine itself.
   *
   * @param place an address of it
   */
  public static boolean isThisMachine(String place) {
    return InetAddress.ofLiteral(place).isLoopbackAddress();
  }

  /** By which names it is reached there: where it listens for others, by that address alone. */
  private static Set<String> names(String place, int port) {
    return isThisMachine(place)
        ? Set.of(LOOPBACK + ":" + port, "localhost:" + port)
        : Set.of(place + ":" + port);
  }

  private static boolean isPlain(@Nullable String encoding) {
    return encoding == null || encoding.isBlank() || encoding.strip().equalsIgnoreCase("identity");
  }

  private static void refuse(Context request, int status, String why) {
    request.status(status).contentType("text/plain; charset=utf-8").result(why + "\n");
    request.skipRemainingHandlers();
    Unread.pass(request);
  }
}
