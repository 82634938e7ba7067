package daylight.app.field;

import daylight.app.web.Guard;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Lets a request to these pages pass. Whether it comes from one of our own was looked at before, by
 * {@link Guard}; here every order must carry the token that belongs to the key of its device, too.
 */
final class Gate {
  /** Where a form carries the token. */
  static final String FIELD = "token";

  /** Where a script carries it. */
  static final String HEADER = "Daylight-Token";

  /** No form and no list of entries is larger, bytes. */
  static final int LARGEST = 1 << 20;

  private static final String CALLER = "daylight.caller";
  private static final Pattern OURS = Pattern.compile("/(?:sites?|look|who|field|join)(?:/.*)?");
  private static final String FORM = "application/x-www-form-urlencoded";

  private final DeviceKeys keys;

  Gate(DeviceKeys keys) {
    this.keys = keys;
  }

  static boolean isOurs(String path) {
    return OURS.matcher(path).matches();
  }

  /** Who asks; only behind the gate. */
  static Caller caller(Context request) {
    return Objects.requireNonNull(request.attribute(CALLER), "asked before the gate");
  }

  void check(Context request) {
    if (!isOurs(request.path())) {
      return;
    }
    request.header("Content-Security-Policy", Guard.FORMS);
    // Without it a browser keeps to itself where a form comes from, and the form is turned away.
    request.header("Referrer-Policy", "same-origin");
    boolean order = request.method().equals(HandlerType.POST);
    Optional<String> known = keys.number(request.cookie(Cookies.DEVICE));
    if (order && known.isEmpty()) {
      refuse(request, 403, "gate.unknown_device");
      return;
    }
    String number = known.orElseGet(() -> begin(request));
    request.attribute(CALLER, caller(request, number));
    if (order && isForm(request) && request.contentLength() > LARGEST) {
      refuse(request, 413, "gate.too_large");
    } else if (order && !keys.isToken(number, token(request))) {
      refuse(request, 403, "gate.token");
    }
  }

  private String begin(Context request) {
    String key = keys.fresh();
    Cookies.set(request, Cookies.DEVICE, key);
    return keys.number(key).orElseThrow();
  }

  private static boolean isForm(Context request) {
    String type = request.contentType();
    return type != null && type.startsWith(FORM);
  }

  private static @Nullable String token(Context request) {
    return isForm(request) ? request.formParam(FIELD) : request.header(HEADER);
  }

  private Caller caller(Context request, String number) {
    String device = Cookies.who(request, 1);
    return new Caller(
        number,
        keys.token(number),
        look(request),
        Cookies.who(request, 0),
        device == null ? "browser " + number.substring(0, 4) : device);
  }

  private static Look look(Context request) {
    return Look.read(request.cookie(Cookies.LOOK))
        .orElseGet(() -> Look.ofHeader(request.header("Accept-Language")));
  }

  private static void refuse(Context request, int status, String why) {
    request.status(status).contentType("text/plain; charset=utf-8");
    request.result(Phrases.of(look(request).tongue()).say(why) + "\n");
    request.skipRemainingHandlers();
  }
}
