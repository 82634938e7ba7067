package daylight.app.field;

import daylight.report.markup.Tag;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;

/** What is on paper elsewhere: the notice ticket, and who allowed the work. */
final class PaperForms {
  private final Caller caller;
  private final Phrases phrases;
  private final BookNow book;
  private final BookNow.Row visit;
  private final Trouble trouble;

  PaperForms(Caller caller, BookNow book, BookNow.Row visit, Trouble trouble) {
    this.caller = caller;
    this.phrases = caller.phrases();
    this.book = book;
    this.visit = visit;
    this.trouble = trouble;
  }

  Tag tickets() {
    Tag section = Parts.section("tickets", phrases.say("before.tickets"));
    List<BookNow.Row> tickets = book.in(visit.entry(), "tickets").toList();
    if (tickets.isEmpty()) {
      section.add(Parts.paragraph("empty", phrases.say("before.tickets.none")));
    } else {
      section.add(Parts.list("plain", tickets.stream().map(this::ticket).toList()));
    }
    return section.add(
        folded(
            "before.ticket.add",
            form("tickets")
                .add(line("number", "before.ticket.number", "text", ""))
                .add(line("issued", "before.ticket.issued", "date", ""))
                .add(line("expires", "before.ticket.expires", "date", ""))
                .add(Forms.submit(phrases.say("before.ticket.keep")))));
  }

  private Tag ticket(BookNow.Row ticket) {
    String number = ticket.text("number").orElse("–");
    String issued =
        ticket.text("issued").map(day -> phrases.say("before.ticket.since", day)).orElse("");
    String good =
        ticket
            .text("expires")
            .filter(Trouble::isDay)
            .map(LocalDate::parse)
            .map(
                day ->
                    phrases.say(
                        day.isBefore(Office.today()) ? "before.ticket.over" : "before.ticket.until",
                        day))
            .orElseGet(() -> phrases.say("before.ticket.open"));
    return Tag.of("li").add(Tag.of("strong", number)).text(" " + issued + good);
  }

  Tag consents() {
    Tag section = Parts.section("consents", phrases.say("before.consents"));
    List<BookNow.Row> consents = book.in(visit.entry(), "consents").toList();
    section.add(
        consents.isEmpty()
            ? Parts.paragraph("empty", phrases.say("before.consents.none"))
            : Parts.list("plain", consents.stream().map(this::consent).toList()));
    return section.add(
        folded(
            "before.consent.add",
            form("consents")
                .add(line("who", "before.consent.who", "text", ""))
                .add(
                    line(
                        "what", "before.consent.what", "text", phrases.say("before.consent.usual")))
                .add(Forms.hidden("media", UUID.randomUUID().toString()))
                .add(pad())
                .add(Forms.submit(phrases.say("before.consent.keep")))));
  }

  private Tag consent(BookNow.Row consent) {
    Tag item =
        Tag.of("li")
            .add(Tag.of("strong", consent.text("who").orElse("–")))
            .text(": " + consent.text("what").orElse("–"));
    consent.text("when").ifPresent(when -> item.text(", " + local(when)));
    Optional<String> file =
        consent
            .text("signature")
            .flatMap(
                label ->
                    book.in("media")
                        .filter(row -> row.text("label").filter(label::equals).isPresent())
                        .findFirst())
            .flatMap(row -> row.text("sha256"));
    return file.isEmpty()
        ? item.text(". " + phrases.say("before.consent.unsigned"))
        : item.add(
            Tag.of("img")
                .with("class", "signature")
                .with("src", "/site/" + book.book() + "/signature/" + file.get())
                .with("alt", phrases.say("before.consent.signed")));
  }

  /** A moment as clocks at the site showed it; as it is written where it has no offset. */
  private String local(String when) {
    try {
      ZoneId zone =
          ZoneId.of(book.site().flatMap(site -> site.text("zone")).orElse(ZoneOffset.UTC.getId()));
      return OffsetDateTime.parse(when)
          .atZoneSameInstant(zone)
          .format(DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT));
    } catch (DateTimeException e) {
      return when;
    }
  }

  /** A place to sign in, shown by the module that can draw; without it nobody signs. */
  private Tag pad() {
    return Tag.of("div")
        .with("class", "pad")
        .with("data-pad", "signature")
        .with("hidden", "")
        .add(
            Tag.of("p", phrases.say("before.consent.sign"))
                .with("class", "label")
                .with("id", "pad-label"))
        .add(Tag.of("p", phrases.say("before.consent.hint")).with("class", "hint"))
        .add(
            Tag.of("canvas")
                .with("width", "800")
                .with("height", "260")
                .with("role", "img")
                .with("aria-labelledby", "pad-label"))
        .add(Forms.hidden("signature", ""))
        .add(
            Tag.of("button", phrases.say("before.consent.again"))
                .with("type", "button")
                .with("class", "button second"));
  }

  private Tag form(String section) {
    return Forms.form(caller, VisitPages.address(book.book(), visit.entry()) + "/" + section)
        .add(Forms.hidden("entry", UUID.randomUUID().toString()));
  }

  private Tag line(String name, String label, String type, String value) {
    return Forms.line(
        name,
        phrases.say(label),
        type,
        Objects.requireNonNullElse(trouble.typed(name), value),
        null,
        trouble.of(name));
  }

  /** Folded away until somebody wants it; open where something in it is wrong. */
  private Tag folded(String says, Tag form) {
    Tag details = Tag.of("details").add(Tag.of("summary", phrases.say(says))).add(form);
    return trouble.isEmpty() ? details : details.with("open", "");
  }
}
