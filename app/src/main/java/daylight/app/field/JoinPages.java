package daylight.app.field;

import daylight.app.door.Doorkeeper;
import daylight.app.door.Tried;
import daylight.app.web.Types;
import daylight.report.markup.Tag;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/** The page by which a phone joins, and the one by which it comes to trust this machine. */
final class JoinPages implements Pages {
  private static final int WRONG = 422;
  private static final int TOO_MANY = 429;

  private final Office office;
  private final Gate gate;
  private final Doorkeeper keeper;

  JoinPages(Office office, Gate gate, Doorkeeper keeper) {
    this.office = office;
    this.gate = gate;
    this.keeper = keeper;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/join", this::ask);
    routes.post("/join", this::join);
    routes.get("/join/secure", this::secure);
    routes.get("/join/daylight.crt", this::certificate);
  }

  private void ask(Context reply) {
    Caller caller = office.caller(reply);
    Phrases phrases = caller.phrases();
    if (caller.standing() == Standing.STRANGER) {
      show(reply, Objects.requireNonNullElse(reply.queryParam("code"), ""), "", new Trouble());
      return;
    }
    String title = phrases.say("join");
    boolean here = caller.standing() == Standing.HERE;
    office.show(
        reply,
        Sheet.of(
            title,
            List.of(
                Parts.heading(title),
                Parts.paragraph(
                    "lead",
                    here ? phrases.say("join.here") : phrases.say("join.joined", caller.device())),
                Tag.of("p")
                    .add(
                        Parts.button(
                            here ? "/phones" : "/sites",
                            phrases.say(here ? "phones" : "frame.sites"))))));
  }

  private void show(Context reply, String code, String name, Trouble trouble) {
    Caller caller = office.caller(reply);
    Phrases phrases = caller.phrases();
    Tag form =
        Forms.form(caller, "/join")
            .add(
                Forms.line(
                    "code",
                    phrases.say("join.code"),
                    "text",
                    code,
                    phrases.say("join.code.hint"),
                    trouble.of("code")))
            .add(
                Forms.line(
                    "name",
                    phrases.say("join.name"),
                    "text",
                    name,
                    phrases.say("join.name.hint"),
                    trouble.of("name")))
            .add(Forms.submit(phrases.say("join.go")));
    List<Tag> contents = new ArrayList<>();
    contents.add(Parts.heading(phrases.say("join")));
    contents.add(Parts.paragraph("lead", phrases.say("join.why")));
    contents.add(form);
    if (!Cookies.isSecure(reply)) {
      contents.add(Parts.paragraph("care", phrases.say("join.unsecured")));
    }
    office.show(reply, Sheet.of(phrases.say("join"), contents));
  }

  private void join(Context reply) throws IOException {
    Caller caller = office.caller(reply);
    if (caller.standing() != Standing.STRANGER) {
      reply.redirect("/join", HttpStatus.SEE_OTHER);
      return;
    }
    String code = Objects.requireNonNullElse(reply.formParam("code"), "");
    String name = Cookies.name(reply.formParam("name"));
    Trouble trouble = new Trouble();
    if (code.isBlank()) {
      trouble.at("code", caller.say("join.code.wanted"));
    }
    if (name == null) {
      trouble.at("name", caller.say("join.name.wanted"));
    }
    if (name == null || !trouble.isEmpty()) {
      reply.status(WRONG);
      show(reply, code, name == null ? "" : name, trouble);
      return;
    }
    String key = gate.fresh();
    try {
      Tried tried =
          keeper.join(
              code, reply.req().getRemoteAddr(), gate.numberOf(key), name, Cookies.isSecure(reply));
      switch (tried) {
        case Tried.Good() -> {
          // A key of its own: whatever the browser was given before may be known to others.
          Cookies.set(reply, Cookies.DEVICE, key);
          reply.redirect("/sites", HttpStatus.SEE_OTHER);
        }
        case Tried.Refused(Tried.Why why) -> {
          trouble.at("code", caller.say("join.code." + why.name().toLowerCase(Locale.ROOT)));
          reply.status(WRONG);
          show(reply, code, name, trouble);
        }
        case Tried.TooMany(Duration rest) -> {
          long seconds = rest.plusMillis(999).toSeconds();
          reply.status(TOO_MANY).header("Retry-After", Long.toString(seconds));
          trouble.at("code", caller.phrases().count("join.wait", seconds));
          show(reply, code, name, trouble);
        }
      }
    } catch (IOException full) {
      reply.status(HttpStatus.INSUFFICIENT_STORAGE);
      trouble.at("code", caller.say("join.disk"));
      show(reply, code, name, trouble);
    }
  }

  /** In counted steps, what a phone must be told once before a connection can be secure. */
  private void secure(Context reply) {
    Phrases phrases = office.caller(reply).phrases();
    keeper
        .authority()
        .ifPresentOrElse(
            authority -> {
              String title = phrases.say("secure");
              List<Tag> contents = new ArrayList<>();
              contents.add(Parts.heading(title));
              contents.add(Parts.paragraph("lead", phrases.say("secure.why")));
              contents.addAll(SecureSteps.of(phrases, authority, keeper.open().orElse(null)));
              office.show(reply, Sheet.of(title, contents));
            },
            () -> reply.status(HttpStatus.NOT_FOUND));
  }

  private void certificate(Context reply) {
    keeper
        .authority()
        .ifPresentOrElse(
            authority ->
                reply
                    .contentType(Types.of("daylight.crt"))
                    .header("Content-Disposition", "attachment; filename=\"daylight.crt\"")
                    .result(authority.bytes()),
            () -> reply.status(HttpStatus.NOT_FOUND));
  }
}
