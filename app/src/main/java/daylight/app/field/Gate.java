package daylight.app.field;

import daylight.app.door.Phone;
import daylight.app.web.Guard;
import daylight.app.web.Look;
import daylight.app.web.Unread;
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
  private static final String STANDING = "daylight.standing";
  private static final String PHONE = "daylight.phone";
  private static final Pattern OURS =
      Pattern.compile("/(?:sites?|look|who|field|join|phones)(?:/.*)?");
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
    boolean order = request.method().equals(HandlerType.POST);
    if (order && number(request).isEmpty()) {
      refuse(request, 403, "gate.unknown_device");
      return;
    }
    String number = introduce(request);
    if (order && isForm(request) && request.contentLength() > LARGEST) {
      refuse(request, 413, "gate.too_large");
    } else if (order && isForm(request) && request.contentLength() < 0) {
      // No browser sends a form without its length, and what has none could go on for ever.
      refuse(request, 411, "gate.length");
    } else if (order && !keys.isToken(number, token(request))) {
      refuse(request, 403, "gate.token");
    }
  }

  /** Says how whoever asks stands to the archive; whoever is not spoken of is at the machine. */
  static void stand(Context request, Standing standing, @Nullable Phone phone) {
    request.attribute(STANDING, standing);
    request.attribute(PHONE, phone);
  }

  /** The number of the key that a browser shows; empty where it shows none of ours. */
  Optional<String> number(Context request) {
    return keys.number(Cookies.get(request, Cookies.DEVICE));
  }

  /** Gives whoever asks a key where there is none, and tells the pages who it is. */
  String introduce(Context request) {
    request.header("Content-Security-Policy", Guard.FORMS);
    // Without it a browser keeps to itself where a form comes from, and the form is turned away.
    request.header("Referrer-Policy", "same-origin");
    String number = number(request).orElseGet(() -> begin(request));
    request.attribute(CALLER, caller(request, number));
    return number;
  }

  /** A new key, for a phone that joins. */
  String fresh() {
    return keys.fresh();
  }

  /** The number of a key that was just made. */
  String numberOf(String fresh) {
    return keys.number(fresh).orElseThrow();
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
    Phone phone = request.attribute(PHONE);
    String device = phone == null ? Cookies.who(request, 1) : phone.name();
    Standing standing = request.attribute(STANDING);
    return new Caller(
        standing == null ? Standing.HERE : standing,
        number,
        keys.token(number),
        look(request),
        Cookies.who(request, 0),
        device == null ? "browser " + number.substring(0, 4) : device);
  }

  static Look look(Context request) {
    return Look.read(Cookies.get(request, Cookies.LOOK))
        .orElseGet(() -> Look.ofHeader(request.header("Accept-Language")));
  }

  private static void refuse(Context request, int status, String why) {
    request.status(status).contentType("text/plain; charset=utf-8");
    request.result(Phrases.of(look(request).language()).say(why) + "\n");
    request.skipRemainingHandlers();
    Unread.pass(request);
  }
}
