package daylight.archive;

import daylight.archive.form.Section;
import daylight.line.book.Entry;
import daylight.line.book.Papers;
import daylight.line.book.Units;

/** Writes what belongs to a visit beside its measurements. */
final class PaperWriter {
  private final Units units;

  PaperWriter(Units units) {
    this.units = units;
  }

  private Sheet entry(Section section, Entry entry) {
    return Sheet.of(section, entry.id(), units);
  }

  Sheet add(Papers papers, Sheet visit) {
    return visit
        .rows("media", papers.media(), this::media)
        .rows(
            "consents",
            papers.consents(),
            consent ->
                entry(BookShape.CONSENT, consent)
                    .words("who", consent.who())
                    .words("what", consent.what())
                    .words("when", VisitWriter.moment(consent.when()))
                    .words("signature", consent.signature()))
        .rows(
            "tickets",
            papers.tickets(),
            ticket ->
                entry(BookShape.TICKET, ticket)
                    .words("number", ticket.number())
                    .words("issued", VisitWriter.day(ticket.issued()))
                    .words("expires", VisitWriter.day(ticket.expires())))
        .rows(
            "services",
            papers.services(),
            mark ->
                entry(BookShape.SERVICE, mark)
                    .choice("service", mark.service())
                    .texts("points", mark.points()))
        .rows(
            "declined",
            papers.declined(),
            declined ->
                entry(BookShape.DECLINED, declined)
                    .words("what", declined.what())
                    .words("who", declined.who())
                    .words("date", VisitWriter.day(declined.date())));
  }

  private Sheet media(Papers.Media media) {
    return entry(BookShape.MEDIA, media)
        .choice("kind", media.kind())
        .words("file", media.file())
        .words("sha256", media.sha256())
        .words("pass", media.pass())
        .rows("pins", media.pins(), this::pin);
  }

  private Sheet pin(Papers.Pin pin) {
    return new Sheet(BookShape.PIN, units)
        .words("of", pin.point())
        .words("across", Amount.plain(pin.across()))
        .words("down", Amount.plain(pin.down()));
  }
}
