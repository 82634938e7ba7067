package daylight.app.field;

import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.app.web.Look;
import daylight.archive.store.By;
import daylight.archive.store.Entered;
import daylight.archive.store.KeptSite;
import daylight.line.measure.Shown;
import daylight.report.markup.Tag;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Predicate;

/** A site is begun by typing an address and the complaint: one form, which needs no script. */
final class NewSitePages implements Pages {
  private final Office office;

  NewSitePages(Office office) {
    this.office = office;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/sites/new", this::ask);
    routes.post("/sites/new", this::begin);
  }

  /** What was typed, and what is wrong with it. */
  private record Typed(
      UUID book,
      UUID site,
      UUID visit,
      String address,
      String name,
      String complaint,
      String date,
      String zone,
      String units,
      String person,
      Trouble trouble) {}

  private void ask(Context reply) {
    Caller caller = office.caller(reply);
    show(
        reply,
        new Typed(
            UUID.randomUUID(),
            UUID.randomUUID(),
            UUID.randomUUID(),
            "",
            "",
            "",
            Office.today().toString(),
            ZoneId.systemDefault().getId(),
            Look.code(caller.look().shown()),
            Objects.requireNonNullElse(caller.person(), ""),
            new Trouble()));
  }

  private void begin(Context reply) {
    Typed typed = typed(reply);
    Optional<By> by = by(reply, typed);
    if (typed.trouble().isEmpty() && by.isPresent()) {
      typed
          .trouble()
          .addAll(
              office.archive().enter(typed.book(), entries(typed), by.get()),
              office.caller(reply).look());
    }
    if (!typed.trouble().isEmpty()) {
      reply.status(422);
      show(reply, typed);
      return;
    }
    if (office.caller(reply).person() == null) {
      Cookies.set(reply, Cookies.WHO, Cookies.who(typed.person(), office.caller(reply).device()));
    }
    reply.redirect("/site/" + typed.book(), HttpStatus.SEE_OTHER);
  }

  private Optional<By> by(Context reply, Typed typed) {
    Caller caller = office.caller(reply);
    return caller.by(Cookies.name(typed.person())).by();
  }

  private Typed typed(Context request) {
    Caller caller = office.caller(request);
    Trouble trouble = new Trouble();
    String address = given(request, "address");
    if (address.isEmpty()) {
      trouble.at("address", caller.say("new.address.wanted"));
    }
    String person =
        Objects.requireNonNullElse(
            Cookies.name(given(request, "person")),
            Objects.requireNonNullElse(caller.person(), ""));
    if (person.isEmpty()) {
      trouble.at("person", caller.say("who.person.wanted"));
    }
    String date = given(request, "date");
    if (!Trouble.isDay(date)) {
      trouble.at("date", caller.say("form.day", date));
    }
    String zone = given(request, "zone");
    if (!ZoneId.getAvailableZoneIds().contains(zone)) {
      trouble.at("zone", caller.say("new.zone.wanted"));
    }
    UUID book = identity(request, "book");
    twice(address, book, request).ifPresent(said -> trouble.at("twice", said));
    return new Typed(
        book,
        identity(request, "site"),
        identity(request, "visit"),
        address,
        given(request, "name"),
        given(request, "complaint"),
        date,
        zone,
        Look.shown(given(request, "units")).isPresent() ? given(request, "units") : "metres",
        person,
        trouble);
  }

  /** That a site with the address is kept already, unless somebody said that this is another. */
  private Optional<String> twice(String address, UUID book, Context request) {
    boolean meant = "yes".equals(request.formParam("another"));
    return address.isEmpty() || meant
        ? Optional.empty()
        : office.archive().sites(address).stream()
            .filter(site -> site.address().equalsIgnoreCase(address))
            .filter(site -> !site.book().equals(book))
            .map(KeptSite::name)
            .findFirst()
            .map(name -> office.caller(request).say("new.twice", name));
  }

  private static UUID identity(Context request, String name) {
    return Office.id(given(request, name)).orElseGet(UUID::randomUUID);
  }

  private static String given(Context request, String name) {
    return Objects.requireNonNullElse(request.formParam(name), "").strip();
  }

  /** Book, site and visit, as a file would have them. */
  private static List<Entered> entries(Typed typed) {
    ObjectNode book = EntryJson.object();
    book.put("daylight-book", "1");
    boolean metres = typed.units().equals(Look.code(Shown.METRES));
    book.putObject("units")
        .put("distance", metres ? "m" : "ft")
        .put("depth", metres ? "m" : "ft")
        .put("bore", metres ? "mm" : "in")
        .put("level", metres ? "m" : "ft");
    ObjectNode site = EntryJson.object();
    site.put("name", typed.name().isEmpty() ? typed.address() : typed.name())
        .put("address", typed.address())
        .put("zone", typed.zone());
    ObjectNode visit = EntryJson.object();
    visit.put("date", typed.date());
    if (!typed.complaint().isEmpty()) {
      visit.put("complaint", typed.complaint());
    }
    return List.of(
        EntryJson.fresh(typed.book(), null, "", book),
        EntryJson.fresh(typed.site(), typed.book(), "site", site),
        EntryJson.fresh(typed.visit(), typed.book(), "visits", visit));
  }

  private void show(Context reply, Typed typed) {
    Caller caller = office.caller(reply);
    Phrases phrases = caller.phrases();
    Trouble trouble = typed.trouble();
    Tag form =
        Forms.form(caller, "/sites/new")
            .add(Forms.hidden("book", typed.book().toString()))
            .add(Forms.hidden("site", typed.site().toString()))
            .add(Forms.hidden("visit", typed.visit().toString()))
            .add(line(phrases, "address", "text", typed.address(), trouble))
            .add(line(phrases, "complaint", "textarea", typed.complaint(), trouble))
            .add(line(phrases, "date", "date", typed.date(), trouble))
            .add(line(phrases, "name", "text", typed.name(), trouble));
    if (caller.person() == null) {
      form.add(line(phrases, "person", "text", typed.person(), trouble));
    }
    form.add(units(phrases, typed)).add(zone(phrases, typed));
    if (trouble.of("twice") != null) {
      form.add(another(phrases));
    }
    List<Tag> contents = new ArrayList<>();
    contents.add(Parts.heading(phrases.say("new")));
    trouble.told(phrases).ifPresent(contents::add);
    contents.add(form.add(Forms.submit(phrases.say("new.go"))));
    office.show(reply, Sheet.of(phrases.say("new"), contents));
  }

  private static Tag line(
      Phrases phrases, String name, String type, String value, Trouble trouble) {
    return Forms.line(
        name,
        phrases.say("new." + name),
        type,
        value,
        phrases.say("new." + name + ".hint"),
        trouble.of(name));
  }

  private static Tag another(Phrases phrases) {
    return Tag.of("p")
        .with("class", "tick")
        .add(
            Tag.of("input")
                .with("type", "checkbox")
                .with("id", "another")
                .with("name", "another")
                .with("value", "yes"))
        .add(Tag.of("label", phrases.say("new.another")).with("for", "another"));
  }

  private static Tag units(Phrases phrases, Typed typed) {
    return Forms.labelled(
        "units",
        phrases.say("new.units"),
        Forms.choice(
            "units",
            List.of(
                new Forms.Option("feet", phrases.say("new.units.feet")),
                new Forms.Option("metres", phrases.say("new.units.metres"))),
            typed.units()),
        phrases.say("new.units.hint"),
        null);
  }

  private static Tag zone(Phrases phrases, Typed typed) {
    String chosen = typed.zone();
    Predicate<String> town =
        id -> id.contains("/") && !id.startsWith("Etc/") && !id.startsWith("SystemV/");
    List<Forms.Option> zones =
        ZoneId.getAvailableZoneIds().stream()
            .filter(town.or(id -> id.equals("UTC") || id.equals(chosen)))
            .sorted()
            .map(id -> new Forms.Option(id, id.replace('_', ' ')))
            .toList();
    return Forms.labelled(
        "zone",
        phrases.say("new.zone"),
        Forms.choice("zone", zones, chosen),
        phrases.say("new.zone.hint"),
        typed.trouble().of("zone"));
  }
}
