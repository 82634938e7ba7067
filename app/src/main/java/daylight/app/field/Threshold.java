package daylight.app.field;

import daylight.app.door.Doorkeeper;
import daylight.app.door.Phone;
import daylight.app.web.Guard;
import daylight.report.markup.Tag;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Who came in by the door for phones, and how far they may go. A stranger gets the page by which
 * one joins and nothing else, whatever is asked for and however; a phone that joined gets all but
 * the page by which this is ordered. Whoever sits at the machine passes.
 */
final class Threshold {
  /** What a page of a stranger is made of. */
  private static final Pattern SHELL =
      Pattern.compile(
          "/look|/join/(?:secure|daylight\\.crt)|/field/field\\.css|/favicon\\.ico"
              + "|/assets/(?:mark\\.svg|DaylightSans-(?:Regular|Bold)\\.woff2)");

  private static final Pattern ORDERED_HERE = Pattern.compile("/phones(?:/.*)?");
  private static final Set<String> FRONT = Set.of("/", "/join");

  private final Doorkeeper keeper;
  private final Gate gate;
  private final Office office;

  Threshold(Doorkeeper keeper, Gate gate, Office office) {
    this.keeper = keeper;
    this.gate = gate;
    this.office = office;
  }

  void check(Context request) {
    String place = request.req().getLocalAddr();
    if (Guard.isThisMachine(place)) {
      return;
    }
    Gate.stand(request, Standing.STRANGER, null);
    Optional<Doorkeeper.Open> open = keeper.open();
    if (open.isEmpty() || !keeper.isOpenAt(place, request.req().getLocalPort())) {
      refuse(request, "join.shut");
      return;
    }
    boolean secure = Cookies.isSecure(request);
    Optional<Phone> phone = gate.number(request).flatMap(number -> keeper.knock(number, secure));
    if (open.get().secure() && !secure) {
      plain(request);
    } else if (phone.filter(Phone::isJoined).isPresent()) {
      Gate.stand(request, Standing.JOINED, phone.get());
      if (ORDERED_HERE.matcher(request.path()).matches()) {
        refuse(request, "phones.here");
      }
    } else if (request.path().equals("/") && isLooking(request)) {
      turn(request, "/join");
    } else if (!request.path().equals("/join") && !SHELL.matcher(request.path()).matches()) {
      refuse(request, phone.isPresent() ? "join.revoked" : "join.first");
    }
  }

  /** Where connections are to be secure, a plain one is good for the certificate and no more. */
  private void plain(Context request) {
    if (FRONT.contains(request.path()) && isLooking(request)) {
      turn(request, "/join/secure");
    } else if (!SHELL.matcher(request.path()).matches()) {
      refuse(request, "join.plain");
    }
  }

  private static boolean isLooking(Context request) {
    return Set.of(HandlerType.GET, HandlerType.HEAD).contains(request.method());
  }

  private static void turn(Context request, String to) {
    request.redirect(to, HttpStatus.SEE_OTHER);
    request.skipRemainingHandlers();
  }

  private void refuse(Context request, String why) {
    request.status(HttpStatus.FORBIDDEN);
    String accepted = request.header("Accept");
    if (accepted != null && accepted.contains("text/html")) {
      gate.introduce(request);
      Phrases phrases = office.caller(request).phrases();
      String title = phrases.say("join.refused");
      office.show(
          request,
          Sheet.of(
              title,
              List.of(
                  Parts.heading(title),
                  Parts.paragraph("lead", phrases.say(why)),
                  Tag.of("p").add(Parts.button("/join", phrases.say("join"))))));
    } else {
      String told = Phrases.of(Gate.look(request).language()).say(why);
      Office.json(request, EntryJson.object().put("error", told));
    }
    request.skipRemainingHandlers();
  }
}
