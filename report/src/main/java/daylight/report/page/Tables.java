package daylight.report.page;

import daylight.line.course.LocateFit;
import daylight.line.course.PlacedFinding;
import daylight.line.fall.FallLimit;
import daylight.line.fall.FallStretch;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import daylight.line.measure.Printed;
import daylight.report.draw.Captions;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.shots.Reel;
import daylight.report.view.Views;
import daylight.report.words.CodeWords;
import daylight.report.words.FindingWords;
import daylight.report.words.GradeWords;
import daylight.report.words.SoonWords;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was seen, how each place found from the ground fits, how the line falls, what was filmed.
 */
final class Tables {
  /** Where the clock stands in a row of the log, one further where there are codes. */
  private static final int CLOCK = 3;

  private final Subject subject;
  private final Words words;
  private final Exhibits exhibits;
  private final boolean alive;

  /**
   * The tables of a subject.
   *
   * @param alive whether a row of the log takes a cursor to its place
   */
  Tables(Subject subject, Exhibits exhibits, boolean alive) {
    this.alive = alive;
    this.subject = subject;
    this.words = subject.words();
    this.exhibits = exhibits;
  }

  List<Tag> all() {
    return List.of(findings(), locates(), fall(), footage());
  }

  private Tag table(String id, List<String> heads, List<List<Tag>> rows) {
    Tag section = Html.section(id, words.word("report." + id));
    return rows.isEmpty()
        ? section.add(Tag.of("p", words.word("report." + id + ".none")))
        : section.add(Html.table(caption(id), heads.stream().map(words::word).toList(), rows));
  }

  private String caption(String id) {
    String text =
        words.say("report." + id + ".caption", new Argument.Label(subject.route().from()));
    return exhibits.caption(id, text);
  }

  private Tag findings() {
    List<String> heads =
        new ArrayList<>(
            List.of(
                "column.label",
                "column.what",
                "column.where",
                "column.clock",
                "column.size",
                "column.grade",
                "column.urgency",
                "column.remark"));
    if (!subject.codes().isEmpty()) {
      heads.add(2, "column.code");
    }
    if (!subject.shots().stills().isEmpty()) {
      heads.add("column.picture");
    }
    List<PlacedFinding> findings = Captions.findings(subject);
    Tag section = table(Exhibits.FINDINGS, heads, findings.stream().map(this::log).toList());
    if (findings.isEmpty()) {
      return section;
    }
    note(section, new GradeWords(words).scheme(subject.rules().grades()));
    note(section, new SoonWords(words).rule(subject.rules().urgency().id()));
    if (!subject.codes().isEmpty()) {
      note(section, new CodeWords(words, subject.codes()).whose());
    }
    return section;
  }

  private static void note(Tag section, String text) {
    section.add(Tag.of("p", text).with("class", "grades"));
  }

  /** Where there are pictures, a row ends with the number of its own. */
  private List<Tag> log(PlacedFinding placed) {
    List<Tag> cells = Html.row(finding(placed));
    if (alive) {
      cells.set(0, leads(placed));
    }
    if (placed.finding().clock() != null) {
      cells.get(subject.codes().isEmpty() ? CLOCK : CLOCK + 1).with("class", "clock");
    }
    if (!subject.shots().stills().isEmpty()) {
      cells.add(
          exhibits
              .still(placed.finding().label())
              .map(id -> Tag.of("td").add(exhibits.link(id)))
              .orElseGet(() -> Html.cell(Html.EMPTY)));
    }
    return cells;
  }

  /** The head of a row that leads to where its finding lies on the drawings. */
  private static Tag leads(PlacedFinding placed) {
    return Tag.of("th")
        .with("scope", "row")
        .with("id", Views.finding(placed.finding()))
        .add(
            Tag.of("a", placed.finding().label())
                .with("class", "to-place")
                .with("href", "#line")
                .with("data-place", placed.from().reach())
                .with("data-distance", placed.from().distance()));
  }

  private List<String> finding(PlacedFinding placed) {
    FindingWords said = new FindingWords(words, subject.rules().catalogue(), subject::distance);
    List<String> cells = new ArrayList<>(List.of(placed.finding().label(), said.what(placed)));
    if (!subject.codes().isEmpty()) {
      cells.add(new CodeWords(words, subject.codes()).code(placed.finding()).orElse(Html.EMPTY));
    }
    cells.addAll(judged(placed, said));
    return cells;
  }

  private List<String> judged(PlacedFinding placed, FindingWords said) {
    return List.of(
        said.where(placed),
        said.clock(placed).orElse(Html.EMPTY),
        said.size(placed).orElse(Html.EMPTY),
        new GradeWords(words)
            .grade(subject.rules().grade(placed, subject.line()))
            .orElse(Html.EMPTY),
        new SoonWords(words)
            .say(subject.rules().howSoon(placed, subject.book(), subject.line()))
            .orElse(Html.EMPTY),
        said.remark(placed).orElse(Html.EMPTY));
  }

  private Tag locates() {
    return table(
        Exhibits.LOCATES,
        List.of(
            "column.label",
            "column.where",
            "column.side",
            "column.depth_alone",
            "column.course_deeper",
            "column.fit"),
        Captions.locates(subject).stream().map(this::locate).map(Html::row).toList());
  }

  private List<String> locate(LocateFit fit) {
    return List.of(
        fit.entry().label(),
        subject.distance(fit.place()),
        fit.across() == null
            ? Html.EMPTY
            : words.say(
                fit.across() >= 0 ? "side.left" : "side.right",
                new Argument.Length(Math.abs(fit.across()))),
        uncertain(fit.depth()),
        fit.depthResidual() == null ? Html.EMPTY : words.length(fit.depthResidual()),
        new ReadingFits(words, subject.line()).locate(fit));
  }

  private Tag fall() {
    return table(
        Exhibits.FALL,
        List.of(
            "column.from",
            "column.to",
            "column.how_much",
            "column.fall",
            "column.limit",
            "column.flat",
            "column.against"),
        subject.answers().fall().stretches().stream().map(this::stretch).map(Html::row).toList());
  }

  private List<String> stretch(FallStretch stretch) {
    Printed slope = words.slope(stretch.slope());
    return List.of(
        subject.distance(stretch.from()),
        subject.distance(stretch.to()),
        uncertain(stretch.drop()),
        slope.value() + " " + slope.plusMinus(),
        limit(stretch.limit()),
        stretch.belowLimit() == null
            ? Html.EMPTY
            : words.figure(new Argument.Probability(stretch.belowLimit())),
        words.figure(new Argument.Probability(stretch.adverse())));
  }

  private String limit(@Nullable FallLimit limit) {
    return limit == null
        ? Html.EMPTY
        : words.figure(new Argument.Quantity(Dimension.SLOPE, limit.slope()))
            + ", "
            + limit.rules()
            + " "
            + limit.clause();
  }

  private Tag footage() {
    return table(
        Exhibits.FOOTAGE,
        List.of(
            "column.label",
            "column.file",
            "column.pass",
            "column.runs",
            "column.pixels",
            "column.codec"),
        subject.shots().reels().stream().map(Tables::reel).map(Html::row).toList());
  }

  private static List<String> reel(Reel reel) {
    return List.of(
        reel.media(),
        reel.file(),
        reel.pass() == null ? Html.EMPTY : reel.pass(),
        Html.time(reel.seconds()),
        reel.width() + " × " + reel.height(),
        reel.codec());
  }

  private String uncertain(@Nullable Measured metres) {
    if (metres == null) {
      return Html.EMPTY;
    }
    Printed printed = words.length(metres);
    return printed.value() + " " + printed.plusMinus();
  }
}
