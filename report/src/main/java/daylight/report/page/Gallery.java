package daylight.report.page;

import daylight.line.course.PlacedFinding;
import daylight.line.measure.Argument;
import daylight.report.draw.Captions;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.shots.Still;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;

/** The pictures from the footage, each with what it shows and where it is from. */
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
    List<Still> stills = subject.shots().stills();
    return stills.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Html.section("stills", words.word("report.stills"))
                .add(Tag.of("div").with("class", "stills").addAll(rows(stills))));
  }

  /** On paper a row of pictures stays together; a screen sets them as its width allows. */
  private List<Tag> rows(List<Still> stills) {
    List<Tag> rows = new ArrayList<>();
    for (int i = 0; i < stills.size(); i += IN_A_ROW) {
      List<Still> row = stills.subList(i, Math.min(i + IN_A_ROW, stills.size()));
      rows.add(Tag.of("div").with("class", "row").addAll(row.stream().map(this::still).toList()));
    }
    return rows;
  }

  private Tag still(Still still) {
    PlacedFinding placed = placed(still);
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
    String data = Base64.getEncoder().encodeToString(still.picture().jpeg());
    return Tag.of("div")
        .with("class", "still")
        .add(
            Tag.of("figure")
                .with("id", exhibits.id(still))
                .add(
                    Tag.of("img")
                        .with("src", "data:image/jpeg;base64," + data)
                        .with("alt", seen)
                        .with("width", still.picture().width())
                        .with("height", still.picture().height()))
                .add(Tag.of("figcaption", exhibits.caption(exhibits.id(still), caption))));
  }

  private PlacedFinding placed(Still still) {
    return Captions.findings(subject).stream()
        .filter(placed -> placed.finding().label().equals(still.finding()))
        .findFirst()
        .orElseThrow(
            () -> new IllegalArgumentException("a still of no finding: " + still.finding()));
  }
}
