package daylight.app.field;

import daylight.app.web.Light;
import daylight.app.web.Look;
import daylight.line.measure.Shown;
import daylight.report.words.Language;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The switches for light, language and units, and the page that asks who writes. */
final class LookPages implements Pages {
  /** A page of ours: a path, not an address of another machine. */
  private static final Pattern OURS = Pattern.compile("/(?:[\\w.~%?&=+-][\\w.~%?&=+/-]*)?");

  private final Office office;

  LookPages(Office office) {
    this.office = office;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.post("/look", this::look);
    routes.get("/who", reply -> ask(reply, null));
    routes.post("/who", this::who);
  }

  private void look(Context reply) {
    Look before = office.caller(reply).look();
    String tongue = given(reply, "language");
    String units = given(reply, "units");
    Light light = Look.light(given(reply, "light"));
    Shown shown = Look.shown(units).orElse(before.shown());
    Look look =
        new Look(
            Language.of(tongue).orElse(before.language()),
            shown,
            light == null ? before.light() : light);
    Cookies.set(reply, Cookies.LOOK, look.cookie());
    reply.redirect(back(given(reply, "back")), HttpStatus.SEE_OTHER);
  }

  private static String given(Context reply, String name) {
    return Objects.requireNonNullElse(reply.formParam(name), "");
  }

  /** Where to go back to; the list of sites where that is no page of ours. */
  static String back(@Nullable String path) {
    return path != null && OURS.matcher(path).matches() ? path : "/sites";
  }

  private void ask(Context reply, @Nullable String wrong) {
    Caller caller = office.caller(reply);
    String back =
        wrong == null ? reply.queryParam("back") : Objects.requireNonNull(given(reply, "back"));
    office.show(
        reply, WhoForm.sheet(caller, "/who", List.of(Forms.hidden("back", back(back))), wrong));
  }

  private void who(Context reply) {
    String person = Cookies.name(reply.formParam(WhoForm.PERSON));
    String device = Cookies.name(reply.formParam(WhoForm.DEVICE));
    Caller caller = office.caller(reply);
    if (person == null) {
      reply.status(422);
      ask(reply, caller.say("who.person.wanted"));
      return;
    }
    Cookies.set(reply, Cookies.WHO, Cookies.who(person, device == null ? caller.device() : device));
    reply.redirect(back(given(reply, "back")), HttpStatus.SEE_OTHER);
  }
}
