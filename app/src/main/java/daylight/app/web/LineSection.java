package daylight.app.web;

import daylight.line.course.PlacedPass;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.view.AlongTable;
import daylight.report.view.CursorPanel;
import daylight.report.view.CursorTable;
import daylight.report.view.Face;
import daylight.report.view.Ride;
import daylight.report.view.Side;
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
  private final CursorPanel panel;
  private final List<Recording> recordings;

  LineSection(Property property, Reading.Answered answered, List<Recording> recordings) {
    this.property = property;
    this.answered = answered;
    this.subject = answered.subject();
    this.words = subject.words();
    this.views = Views.of(subject);
    this.panel = new CursorPanel(words);
    this.recordings = recordings;
  }

  Tag section() {
    Tag section = Pieces.section("line", words.word("web.line"));
    Tag sides =
        Tag.of("div")
            .with("class", "sides")
            .add(
                side(Side.PLAN, "report.plan").addAll(turns()),
                side(Side.PROFILE, "report.profile"),
                side(Side.STRIP, "web.strip"));
    if (views.isEmpty()) {
      return section.add(sides);
    }
    panel
        .said(section)
        .with("data-table", CursorTable.json(views, rides()))
        .with("data-readings", BackingPage.NAME)
        .with("data-none", words.word("web.line.film_none"))
        .with("data-unread", words.word("web.line.film_unread"))
        .with("data-bridged", words.word("web.line.film_bridged"));
    return section
        .add(panel.how(words.word("web.line.why")))
        .add(Pieces.pair("views", sides, beside()))
        .add(
            Tag.of("details")
                .with("class", "as-table")
                .add(Tag.of("summary", words.word("web.line.table")))
                .addAll(AlongTable.of(views)));
  }

  private Tag beside() {
    Tag beside = Tag.of("div").with("class", "beside").add(facts(), panel.mover());
    return recordings.isEmpty()
        ? beside
        : beside.add(new Players(property, answered, recordings, words).all());
  }

  /** What is known at the cursor, and how the footage goes with it. */
  private Tag facts() {
    return panel.facts().add(Tag.of("p").with("class", "quiet filmed").with("data-cursor", "film"));
  }

  private Tag side(Side side, String key) {
    String id = side.word();
    Face face = views.faces(side).getFirst();
    String heading = words.word(key);
    return Tag.of("section")
        .with("id", id)
        .with("aria-labelledby", id + "-heading")
        .add(
            Tag.of("div")
                .with("class", "side-head")
                .add(Tag.of("h3", heading).with("id", id + "-heading"), panel.zoom(heading)),
            face.drawing(heading));
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
