package daylight.app.field;

import daylight.archive.store.Archive;
import daylight.archive.store.Dated;
import daylight.archive.store.KeptSite;
import daylight.report.markup.Tag;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What is due: only what books say by a day. A visit in which nothing was measured yet, from a week
 * before its day until a month after it; a ticket from a week before it runs out until a week after
 * it. These spans are our own rule, no source.
 */
final class Due {
  private static final int AHEAD = 7;
  private static final int VISITS_BACK = 30;
  private static final int TICKETS_BACK = 7;
  private static final int MOST = 20;

  private final Archive archive;
  private final Phrases phrases;

  Due(Archive archive, Phrases phrases) {
    this.archive = archive;
    this.phrases = phrases;
  }

  /** A section that says so; empty where nothing is due. */
  Optional<Tag> told(LocalDate today) {
    List<Dated> due =
        archive.dated(today.minusDays(VISITS_BACK), today.plusDays(AHEAD)).stream()
            .filter(
                one ->
                    one.what() == Dated.What.VISIT_TO_COME
                        || !one.day().isBefore(today.minusDays(TICKETS_BACK)))
            .toList();
    if (due.isEmpty()) {
      return Optional.empty();
    }
    Tag section = Parts.section("due", phrases.say("due"));
    section.add(
        Parts.list(
            "due",
            due.stream()
                .limit(MOST)
                .flatMap(
                    one -> archive.site(one.book()).map(site -> row(one, site, today)).stream())
                .toList()));
    return Optional.of(
        due.size() > MOST
            ? section.add(Parts.paragraph("quiet", phrases.say("due.more", due.size() - MOST)))
            : section);
  }

  private Tag row(Dated one, KeptSite site, LocalDate today) {
    return Tag.of("li")
        .add(
            Tag.of("a")
                .with("href", "/site/" + one.book() + "/visit/" + one.visit())
                .add(Tag.of("strong", site.name()))
                .add(Tag.of("span", what(one, today))));
  }

  private String what(Dated one, LocalDate today) {
    int side = one.day().compareTo(today);
    String when = side == 0 ? "today" : side < 0 ? "past" : "ahead";
    return switch (one.what()) {
      case VISIT_TO_COME -> phrases.say("due.visit." + when, one.day());
      case TICKET_EXPIRES ->
          phrases.say(
              "due.ticket." + when,
              BookNow.text(BookNow.keys(one.content()), "number").orElse("–"),
              one.day());
    };
  }
}
