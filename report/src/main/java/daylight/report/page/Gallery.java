package daylight.report.page;

import daylight.line.book.Finding;
import daylight.line.course.PlacedFinding;
import daylight.line.measure.Argument;
import daylight.report.draw.Captions;
import daylight.report.draw.MarkedPicture;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.shots.Photo;
import daylight.report.shots.Picture;
import daylight.report.shots.Still;
import daylight.report.words.Words;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The pictures from the footage and the photographs, each with what it shows, where it is from, and
 * what to see in it marked.
 */
final class Gallery {
  private static final int IN_A_ROW = 2;

  private final Subject subject;
  private final Words words;
  private final Exhibits exhibits;

  Gallery(Subject subject, Exhibits exhibits) {
    this.subject = subject;
    this.words = subject.words();
    this.exhibits = exhibits;
  }

  /** A picture as it stands on the page, and which marks are on it. */
  private record Hung(Tag frame, boolean arc, boolean ring) {}

  /** The section; empty when there are no pictures. */
  Optional<Tag> section() {
    List<Hung> hung = new ArrayList<>();
    subject.shots().stills().forEach(still -> hung.add(still(still)));
    subject.shots().photos().forEach(photo -> hung.add(photo(photo)));
    if (hung.isEmpty()) {
      return Optional.empty();
    }
    Tag section = Html.section("stills", words.word("report.stills"));
    boolean arcs = hung.stream().anyMatch(Hung::arc);
    boolean rings = hung.stream().anyMatch(Hung::ring);
    if (arcs || rings) {
      String marks = arcs && rings ? "arcs_rings" : arcs ? "arcs" : "rings";
      section.add(Tag.of("p", words.word("report.stills." + marks)).with("class", "quiet"));
    }
    List<Tag> frames = hung.stream().map(Hung::frame).toList();
    return Optional.of(section.add(Tag.of("div").with("class", "stills").addAll(rows(frames))));
  }

  /** On paper a row of pictures stays together; a screen sets them as its width allows. */
  private static List<Tag> rows(List<Tag> pictures) {
    List<Tag> rows = new ArrayList<>();
    for (int i = 0; i < pictures.size(); i += IN_A_ROW) {
      List<Tag> row = pictures.subList(i, Math.min(i + IN_A_ROW, pictures.size()));
      rows.add(Tag.of("div").with("class", "row").addAll(row));
    }
    return rows;
  }

  private Hung still(Still still) {
    PlacedFinding placed = placed(still.finding());
    Argument what = new Argument.Text(words.kind(placed.finding().kind()));
    Argument where = new Argument.Text(subject.distance(placed.from()));
    String caption =
        words.say(
            "report.still.caption",
            new Argument.Label(still.finding()),
            what,
            where,
            new Argument.Label(still.media()),
            new Argument.Text(Html.time(still.seconds())));
    String seen = words.say("report.still.alt", what, where);
    // Only the camera in the pipe looks as its clock does.
    Finding.Clock clock = placed.finding().clock();
    Picture picture = still.picture();
    List<Finding.Outline> rings = rings(placed, null);
    return hung(exhibits.id(still), picture, picture.width(), rings, clock, seen, caption);
  }

  private Hung photo(Photo photo) {
    PlacedFinding placed = placed(photo.finding());
    Argument label = new Argument.Label(photo.finding());
    Argument what = new Argument.Text(words.kind(placed.finding().kind()));
    Argument where = new Argument.Text(subject.distance(placed.from()));
    Argument media = new Argument.Label(photo.media());
    LocalDateTime taken = photo.taken();
    String caption =
        taken == null
            ? words.say("report.photo.caption", label, what, where, media)
            : words.say(
                "report.photo.caption_taken",
                label,
                what,
                where,
                media,
                new Argument.Day(taken.toLocalDate()),
                new Argument.Text(
                    words.hour("%d:%02d".formatted(taken.getHour(), taken.getMinute()))));
    String seen = words.say("report.photo.alt", what, where);
    List<Finding.Outline> rings = rings(placed, photo.media());
    return hung(exhibits.id(photo), photo.picture(), photo.width(), rings, null, seen, caption);
  }

  /**
   * @param on the label of a photograph; null for the picture from the footage
   */
  private static List<Finding.Outline> rings(PlacedFinding placed, @Nullable String on) {
    return placed.finding().outlines().stream()
        .filter(outline -> Objects.equals(outline.on(), on))
        .toList();
  }

  private Hung hung(
      String id,
      Picture picture,
      int width,
      List<Finding.Outline> rings,
      Finding.@Nullable Clock clock,
      String seen,
      String caption) {
    MarkedPicture marked = new MarkedPicture(picture, width);
    List<String> said = new ArrayList<>();
    if (clock != null) {
      marked.noted(clock);
      said.add(words.say("report.still.arc", new Argument.Text(words.clockShort(clock))));
    }
    long drawn = rings.stream().filter(marked::ringed).count();
    if (drawn > 0) {
      said.add(words.word("report.still.ring"));
    }
    Tag shown = said.isEmpty() ? plain(picture, seen) : marked.drawn(seen, String.join(" ", said));
    String below =
        drawn == rings.size() ? caption : caption + " " + words.word("report.still.outside");
    Tag figure =
        Tag.of("figure")
            .with("id", id)
            .add(shown, Tag.of("figcaption", exhibits.caption(id, below)));
    Tag frame = Tag.of("div").with("class", "still").add(figure);
    return new Hung(frame, clock != null, drawn > 0);
  }

  private static Tag plain(Picture picture, String seen) {
    return Tag.of("img")
        .with("src", picture)
        .with("alt", seen)
        .with("width", picture.width())
        .with("height", picture.height());
  }

  private PlacedFinding placed(String finding) {
    return Captions.findings(subject).stream()
        .filter(placed -> placed.finding().label().equals(finding))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("a picture of no finding: " + finding));
  }
}
