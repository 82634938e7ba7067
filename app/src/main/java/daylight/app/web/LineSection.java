package daylight.app.web;

import daylight.line.course.PlacedPass;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.view.AlongTable;
import daylight.report.view.CursorTable;
import daylight.report.view.Ride;
import daylight.report.view.Views;
import daylight.report.words.Words;
import java.util.List;
import java.util.Optional;

/**
 * The line from above, from the side, straightened out and in the footage, with one cursor through
 * all of them. Without script there are the drawings, the recordings, and a table of the line.
 */
final class LineSection {
  private final Property property;
  private final Reading.Answered answered;
  private final Subject subject;
  private final Words words;
  private final Views views;
  private final List<Recording> recordings;

  LineSection(Property property, Reading.Answered answered, List<Recording> recordings) {
    this.property = property;
    this.answered = answered;
    this.subject = answered.subject();
    this.words = subject.words();
    this.views = Views.of(subject);
    this.recordings = recordings;
  }

  Tag section() {
    Tag section = Pieces.section("line", words.word("web.line"));
    Tag sides =
        Tag.of("div")
            .with("class", "sides")
            .add(
                side("plan", "report.plan", views.plan()).addAll(turns()),
                side("profile", "report.profile", views.profile()),
                side("strip", "web.strip", views.strip()));
    if (views.isEmpty()) {
      return section.add(sides);
    }
    section
        .with("data-table", CursorTable.json(views, rides()))
        .with("data-unknown", words.word("web.line.unknown"))
        .with("data-none", words.word("web.line.film_none"))
        .with("data-unread", words.word("web.line.film_unread"))
        .with("data-bridged", words.word("web.line.film_bridged"))
        .with("data-held", words.word("web.line.held"));
    return section
        .add(Pieces.paragraph("quiet how", words.word("web.line.why")))
        .add(Pieces.pair("views", sides, beside()))
        .add(
            Tag.of("details")
                .with("class", "as-table")
                .add(Tag.of("summary", words.word("web.line.table")))
                .addAll(AlongTable.of(views)));
  }

  private Tag beside() {
    Tag beside = Tag.of("div").with("class", "beside").add(facts(), mover());
    return recordings.isEmpty()
        ? beside
        : beside.add(new Players(property, answered, recordings, words).all());
  }

  /** What is known at the cursor. */
  private Tag facts() {
    Tag facts = Tag.of("dl");
    for (String name : List.of("where", "depth", "within", "sight")) {
      facts.add(
          Tag.of("div")
              .with("class", "of-" + name)
              .add(
                  Tag.of("dt", words.word("web.line." + name)),
                  Tag.of("dd").with("data-cursor", name)));
    }
    return Tag.of("div")
        .with("class", "at-cursor")
        .with("data-cursor", "bar")
        .with("hidden", "")
        .add(
            Tag.of("p").with("class", "way").with("data-cursor", "way"),
            facts,
            Tag.of("ul").with("class", "there").with("data-cursor", "there"),
            Tag.of("p").with("class", "quiet filmed").with("data-cursor", "film"));
  }

  /** What moves the cursor, with a word of where it is for those who see nothing else beside it. */
  private Tag mover() {
    return Tag.of("div")
        .with("class", "mover")
        .with("data-cursor", "mover")
        .with("hidden", "")
        .add(
            Tag.of("p").with("class", "short").with("data-cursor", "short"),
            Tag.of("div")
                .with("class", "moved")
                .add(
                    step("before", "‹", "web.line.before"),
                    Tag.of("input")
                        .with("type", "range")
                        .with("min", "0")
                        .with("max", "0")
                        .with("value", "0")
                        .with("aria-label", words.word("web.line.slider"))
                        .with("data-cursor", "slider"),
                    step("next", "›", "web.line.next")),
            Tag.of("p").with("class", "quiet held").with("data-cursor", "held"));
  }

  private Tag step(String name, String sign, String says) {
    return Tag.of("button", sign)
        .with("type", "button")
        .with("data-cursor", name)
        .with("aria-label", words.word(says));
  }

  /** A drawing that scrolls by itself where the page is narrower than its letters can be read. */
  private Tag side(String id, String key, Tag sheet) {
    String heading = words.word(key);
    return Tag.of("section")
        .with("id", id)
        .with("aria-labelledby", id + "-heading")
        .add(
            Tag.of("div")
                .with("class", "side-head")
                .add(Tag.of("h3", heading).with("id", id + "-heading"), zoom(heading)),
            Pieces.drawing(heading, sheet));
  }

  /** The plan the other way up; nothing where nothing is drawn on it. */
  private List<Tag> turns() {
    return views.isEmpty()
        ? List.of()
        : List.of(Tag.of("p").with("class", "turns").add(turn("north"), turn("along")));
  }

  private Tag turn(String word) {
    Tag link =
        Tag.of("a", words.word("web.plan." + word))
            .with("href", property.address("") + "?plan=" + word + "#plan")
            .with("rel", "nofollow");
    return answered.handout().plan() == Wish.TURNS.get(word)
        ? link.with("aria-current", "true")
        : link;
  }

  private Tag zoom(String heading) {
    Tag zoom =
        Tag.of("div")
            .with("class", "zoom")
            .with("role", "group")
            .with("aria-label", heading)
            .with("hidden", "");
    List.of("in +", "out −", "fit ⤢")
        .forEach(
            one -> {
              String[] parts = one.split(" ", 2);
              zoom.add(
                  Tag.of("button", parts[1])
                      .with("type", "button")
                      .with("data-zoom", parts[0])
                      .with("aria-label", words.word("web.zoom." + parts[0])));
            });
    return zoom;
  }

  /** Which place each recording shows when, as the line was estimated with it. */
  private List<Ride> rides() {
    return recordings.stream()
        .map(Recording::media)
        .map(media -> Ride.together(media.id().uuid().toString(), pushes(media.label())))
        .filter(ride -> !ride.isEmpty())
        .toList();
  }

  /** One recording may show several pushes, each with a track of its own. */
  private List<Ride> pushes(String media) {
    return answered.tracks().stream()
        .filter(one -> one.track().media().equals(media))
        .flatMap(
            one ->
                pass(one.pass()).stream()
                    .map(pass -> Ride.of(media, one.track(), pass.camera(), views)))
        .toList();
  }

  private Optional<PlacedPass> pass(String label) {
    return subject.line().passes().stream()
        .filter(pass -> pass.visit().equals(subject.answers().visit()))
        .filter(pass -> pass.pass().equals(label))
        .findFirst();
  }
}
