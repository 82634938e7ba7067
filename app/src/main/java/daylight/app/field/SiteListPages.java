package daylight.app.field;

import daylight.app.web.Shelf;
import daylight.archive.store.KeptSite;
import daylight.archive.store.SitesFound;
import daylight.report.markup.Tag;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** The list of sites, with search, and what is due. */
final class SiteListPages implements Pages {
  /** How many sites stand on one page. */
  static final int ON_A_PAGE = 100;

  private final Office office;
  private final Shelf shelf;

  SiteListPages(Office office, Shelf shelf) {
    this.office = office;
    this.shelf = shelf;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/sites", this::sites);
  }

  private void sites(Context reply) {
    Phrases phrases = office.caller(reply).phrases();
    String wanted = Objects.requireNonNullElse(reply.queryParam("q"), "").strip();
    SitesFound found = found(wanted, from(reply));
    List<Tag> contents = new ArrayList<>();
    contents.add(Parts.heading(phrases.say("sites")));
    contents.add(Tag.of("p").add(Parts.button("/sites/new", phrases.say("sites.new"))));
    if (shelf.hasNamed()) {
      contents.add(
          Tag.of("p").add(Tag.of("a", phrases.say("sites.books")).with("href", "/property/")));
    }
    if (found.of() == 0 && wanted.isEmpty()) {
      contents.add(Parts.paragraph("empty", phrases.say("sites.none")));
    } else {
      new Due(office.archive(), phrases).told(Office.today()).ifPresent(contents::add);
      contents.add(list(phrases, wanted, found));
    }
    office.show(reply, Sheet.of(phrases.say("sites"), contents));
  }

  /** The first one that is asked for: a whole page further each time. */
  private static int from(Context request) {
    String asked = Objects.requireNonNullElse(request.queryParam("from"), "");
    int from = asked.matches("\\d{1,7}") ? Integer.parseInt(asked) : 0;
    return from - from % ON_A_PAGE;
  }

  /** A page of the list; the first one where there is none so far on. */
  private SitesFound found(String wanted, int from) {
    SitesFound found = office.archive().sites(wanted, from, ON_A_PAGE);
    return from > 0 && found.sites().isEmpty()
        ? office.archive().sites(wanted, 0, ON_A_PAGE)
        : found;
  }

  private static Tag list(Phrases phrases, String wanted, SitesFound found) {
    Tag section = Parts.section("all", phrases.say("sites.all")).add(search(phrases, wanted));
    int from = found.from();
    int to = from + found.sites().size();
    section.add(
        Parts.paragraph(
            "quiet",
            found.of() > ON_A_PAGE
                ? phrases.say("sites.some", from + 1, to, found.of())
                : phrases.count("sites.found", found.of())));
    if (found.of() == 0) {
      return section.add(Parts.paragraph("empty", phrases.say("sites.not_found", wanted)));
    }
    section.add(
        Parts.list("sites", found.sites().stream().map(site -> row(phrases, site)).toList()));
    Tag turn = Tag.of("p").with("class", "turn");
    if (from > 0) {
      turn.add(page(phrases.say("sites.before"), wanted, from - ON_A_PAGE));
    }
    if (to < found.of()) {
      turn.add(page(phrases.say("sites.after"), wanted, to));
    }
    return turn.isEmpty() ? section : section.add(turn);
  }

  private static Tag page(String says, String wanted, int from) {
    return Tag.of("a", says).with("href", "/sites?q=" + Forms.encoded(wanted) + "&from=" + from);
  }

  private static Tag search(Phrases phrases, String wanted) {
    return Tag.of("form")
        .with("method", "get")
        .with("action", "/sites")
        .with("role", "search")
        .with("class", "search")
        .add(Tag.of("label", phrases.say("sites.search")).with("for", "q"))
        .add(
            Tag.of("input")
                .with("type", "search")
                .with("id", "q")
                .with("name", "q")
                .with("value", wanted))
        .add(Forms.submit(phrases.say("sites.search.go")));
  }

  private static Tag row(Phrases phrases, KeptSite site) {
    LocalDate last = site.lastVisit();
    String visits = phrases.count("sites.visits", site.visits());
    Tag link = Tag.of("a").with("href", "/site/" + site.book()).add(Tag.of("strong", site.name()));
    if (!site.address().isEmpty() && !site.address().equals(site.name())) {
      link.add(Tag.of("span", site.address()));
    }
    return Tag.of("li")
        .add(
            link.add(
                Tag.of("span", last == null ? visits : phrases.say("sites.last", visits, last))
                    .with("class", "quiet")));
  }
}
