package daylight.report.page;

import daylight.line.course.PlacedFinding;
import daylight.line.measure.Argument;
import daylight.report.draw.Captions;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.shots.Photo;
import daylight.report.shots.Picture;
import daylight.report.shots.Still;
import daylight.report.words.Words;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The pictures from the footage and the photographs, each with what it shows and where it is from.
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

  /** The section; empty when there are no pictures. */
  Optional<Tag> section() {
    List<Tag> pictures = new ArrayList<>();
    subject.shots().stills().forEach(still -> pictures.add(still(still)));
    subject.shots().photos().forEach(photo -> pictures.add(photo(photo)));
    return pictures.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Html.section("stills", words.word("report.stills"))
                .add(Tag.of("div").with("class", "stills").addAll(rows(pictures))));
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

  private Tag still(Still still) {
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
    return picture(exhibits.id(still), still.picture(), seen, caption);
  }

  private Tag photo(Photo photo) {
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
    return picture(exhibits.id(photo), photo.picture(), seen, caption);
  }

  private Tag picture(String id, Picture picture, String seen, String caption) {
    return Tag.of("div")
        .with("class", "still")
        .add(
            Tag.of("figure")
                .with("id", id)
                .add(
                    Tag.of("img")
                        .with("src", picture)
                        .with("alt", seen)
                        .with("width", picture.width())
                        .with("height", picture.height()))
                .add(Tag.of("figcaption", exhibits.caption(id, caption))));
  }

  private PlacedFinding placed(String finding) {
    return Captions.findings(subject).stream()
        .filter(placed -> placed.finding().label().equals(finding))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("a picture of no finding: " + finding));
  }
}
