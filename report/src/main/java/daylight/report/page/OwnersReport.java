package daylight.report.page;

import daylight.line.answer.Answers;
import daylight.line.answer.Caution;
import daylight.line.measure.Argument;
import daylight.line.measure.Complaint;
import daylight.line.measure.Statement;
import daylight.report.draw.FrostDrawing;
import daylight.report.draw.PlanSheets;
import daylight.report.draw.PumpDrawing;
import daylight.report.draw.Subject;
import daylight.report.draw.Typeface;
import daylight.report.markup.Tag;
import daylight.report.view.CursorPanel;
import daylight.report.view.Side;
import daylight.report.words.Words;
import java.io.BufferedWriter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** The door for the owner's report. */
public final class OwnersReport {
  /** So many things to do are told on the first page; all are in the log of findings. */
  private static final int MOST = 6;

  private static final List<String> SECTIONS =
      List.of(
          "causes",
          "answers",
          "unsaid",
          "declined",
          "dates",
          "digs",
          Exhibits.SERVICES,
          Exhibits.PLAN,
          Exhibits.PROFILE,
          Exhibits.STRIP,
          Exhibits.PUMPS,
          Exhibits.FROST,
          "stills",
          Exhibits.FINDINGS,
          Exhibits.LOCATES,
          Exhibits.FALL,
          Exhibits.CONNECTIONS,
          Exhibits.FOOTAGE,
          "doubts",
          "book",
          "cautions",
          "method",
          "terms",
          "warranty");

  private static final int MEBIBYTE = 1 << 20;

  private final Subject subject;
  private final Sender sender;
  private final Words words;
  private final Answers answers;
  private final Exhibits exhibits;
  private final LiveLine line;
  private final Tag main;

  private OwnersReport(Subject subject, Sender sender) {
    this.subject = subject;
    this.sender = sender;
    this.words = subject.words();
    this.answers = subject.answers();
    this.exhibits = new Exhibits(subject);
    this.line = new LiveLine(subject, exhibits);
    this.main = told(false, List.of());
  }

  /** The report of a subject, which it knows, from nobody in particular. */
  public static OwnersReport of(Subject subject) {
    return of(subject, Sender.NOBODY);
  }

  /** The report of a subject, which it knows, from somebody. */
  public static OwnersReport of(Subject subject, Sender sender) {
    return new OwnersReport(subject, sender);
  }

  /** The report for paper, where a plan that is too long for one sheet is on several. */
  public Edition edition() {
    Tag paper = PlanSheets.isLong(subject) ? told(false, PlanSheets.of(subject)) : main;
    return new Edition(subject, sender, title(), words.word("report.subtitle"), paper);
  }

  /** The whole page, well-formed and complete in itself. */
  public String page() {
    return new String(file(), StandardCharsets.UTF_8);
  }

  /** The same as a file, UTF-8. */
  public byte[] file() {
    // Four letters for three bytes of a picture: room for all of it saves the growing.
    long pictures = subject.shots().length() / 3 * 4;
    ByteArrayOutputStream out = new ByteArrayOutputStream(Math.toIntExact(pictures + MEBIBYTE));
    try (Writer writer = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8))) {
      writer.append("<!DOCTYPE html>\n");
      html().write(writer);
      writer.append("\n");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  /** What it says, for paper. A screen is told the same, and more of the drawings. */
  public Tag main() {
    return main;
  }

  /**
   * What it says.
   *
   * @param alive whether a screen may move through the drawings
   * @param plan the sheets of the line from above; none where it is on one
   */
  private Tag told(boolean alive, List<Tag> plan) {
    Head head = new Head(subject, sender);
    List<Tag> sections = new ArrayList<>();
    sections.add(causes());
    answers.lines().forEach(line -> sections.add(new AnswerCards(subject, exhibits).of(line)));
    Unsaid unsaid = new Unsaid(subject);
    sections.add(unsaid.section(ToDo.ALL));
    unsaid.declined().ifPresent(sections::add);
    new Dates(subject).section().ifPresent(sections::add);
    sections.add(new DigCards(subject).section());
    sections.add(new ServiceTable(subject).section(exhibits));
    List<Tag> sides =
        Arrays.stream(Side.values())
            .map(
                side ->
                    side == Side.PLAN && !plan.isEmpty()
                        ? figure(Exhibits.PLAN, plan)
                        : line.figure(side))
            .toList();
    sections.addAll(sides);
    if (exhibits.has(Exhibits.PUMPS)) {
      sections.add(figure(Exhibits.PUMPS, PumpDrawing.sheets(subject)));
    }
    if (exhibits.has(Exhibits.FROST)) {
      sections.add(figure(Exhibits.FROST, List.of(FrostDrawing.draw(subject))));
    }
    new Gallery(subject, exhibits).section().ifPresent(sections::add);
    sections.addAll(new Tables(subject, exhibits, alive).all());
    Tag connections = new ConnectionTable(subject).section(exhibits);
    sections.add(sections.size() - 1, connections);
    sections.addAll(List.of(doubts(), book(), cautions(), method()));
    conditions("terms", sender.letterhead().terms()).ifPresent(sections::add);
    conditions("warranty", sender.letterhead().warranty()).ifPresent(sections::add);
    return Tag.of("main")
        .addAll(head.stops())
        .add(head.header())
        .addAll(new FirstPage(subject, sender).told(MOST))
        .add(contents(sections))
        .addAll(alive ? together(sections, sides) : sections);
  }

  /** The sections with the three drawings in one. */
  private List<Tag> together(List<Tag> sections, List<Tag> sides) {
    List<Tag> all = new ArrayList<>(sections);
    all.set(all.indexOf(sides.getFirst()), line.all());
    all.removeAll(sides);
    return all;
  }

  /** What the company wrote, paragraph by paragraph. */
  private Optional<Tag> conditions(String id, List<String> paragraphs) {
    return paragraphs.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Html.section(id, words.word("report." + id))
                .addAll(paragraphs.stream().map(text -> Tag.of("p", text)).toList()));
  }

  private Tag html() {
    boolean alive = !line.isEmpty();
    String style =
        Typeface.rules()
            + style("report.css")
            + style("digs.css")
            + (alive ? CursorPanel.style() : "")
            + Head.colour(sender);
    return Tag.of("html")
        .with("xmlns", "http://www.w3.org/1999/xhtml")
        .with("lang", words.language().code())
        .add(
            Tag.of("head")
                .add(Tag.of("meta").with("charset", "utf-8"))
                .add(
                    Tag.of("meta")
                        .with("http-equiv", "Content-Security-Policy")
                        .with("content", LiveLine.policy(style)))
                .add(
                    Tag.of("meta")
                        .with("name", "viewport")
                        .with("content", "width=device-width, initial-scale=1"))
                .add(Tag.of("title", title()))
                .add(Tag.of("style").code(style)))
        .add(
            Tag.of("body")
                .add(alive ? told(true, List.of()) : main)
                .addAll(alive ? line.scripts() : List.of()));
  }

  /** The digest by which a Content Security Policy knows the one script of every report. */
  public static String script() {
    return LiveLine.script();
  }

  /** What it tells of. */
  public Subject subject() {
    return subject;
  }

  /** What a browser and a reader call it. */
  public String title() {
    return title(subject);
  }

  static String title(Subject subject) {
    return subject.words().say("report.title", new Argument.Text(subject.book().site().name()));
  }

  private static String style(String name) {
    try (InputStream in = OwnersReport.class.getResourceAsStream(name)) {
      return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Tag causes() {
    return Html.section("causes", words.word("report.causes"))
        .addAll(new ComplaintTold(subject).behind("h3"));
  }

  private Tag said(List<Statement> statements, String none) {
    return statements.isEmpty()
        ? Tag.of("p", words.word(none))
        : Html.list(statements.stream().map(words::say).toList());
  }

  /** Where to find what, by the headings of what there is. */
  private Tag contents(List<Tag> sections) {
    Tag links = Tag.of("p");
    SECTIONS.stream()
        .filter(id -> sections.stream().anyMatch(section -> section.is(id)))
        .map(id -> Tag.of("a", words.word("report." + id)).with("href", "#" + id))
        .forEach(link -> links.add(link).text(" "));
    return Tag.of("nav")
        .with("class", "contents")
        .with("aria-label", words.word("report.contents"))
        .add(links);
  }

  private Tag figure(String id, List<Tag> sheets) {
    String heading = words.word("report." + id);
    String caption = exhibits.caption(id, words.word("report." + id + ".caption"));
    Tag figure = Tag.of("figure").add(Tag.of("figcaption", caption));
    List<Tag> drawings = new ArrayList<>();
    for (Tag sheet : sheets) {
      Tag drawing = drawing(heading, sheet);
      sheet
          .value("data-bookmark")
          .ifPresent(
              name -> drawing.with("id", id + "-" + drawings.size()).with("data-name", name));
      drawings.add(drawing);
      figure.add(drawing);
    }
    return Html.section(id, heading).with("class", "sheet").add(figure);
  }

  /** A drawing that scrolls by itself where the page is narrower than its letters can be read. */
  static Tag drawing(String heading, Tag sheet) {
    return Tag.of("div")
        .with("class", "drawing")
        .with("tabindex", "0")
        .with("role", "group")
        .with("aria-label", heading)
        .add(sheet);
  }

  private Tag doubts() {
    return Html.section("doubts", words.word("report.doubts"))
        .add(said(subject.line().doubts(), "report.doubts.none"))
        .addAll(
            subject.line().unchecked().stream()
                .map(unchecked -> Tag.of("p", words.say(unchecked)))
                .toList());
  }

  private Tag book() {
    List<Complaint> complaints = subject.complaints();
    return Html.section("book", words.word("report.book"))
        .add(
            complaints.isEmpty()
                ? Tag.of("p", words.word("report.book.none"))
                : Html.list(complaints.stream().map(words::complaint).toList()));
  }

  private Tag cautions() {
    List<String> all = answers.cautions().stream().map(Caution::key).map(words::word).toList();
    return Html.section("cautions", words.word("report.cautions")).add(Html.list(all));
  }

  private Tag method() {
    return Html.section("method", words.word("report.method"))
        .add(Tag.of("p", words.word("report.method.text")))
        .add(Tag.of("p", words.word("report.method.seen")))
        .add(
            Tag.of(
                "p", words.say("report.source", new Argument.Text(subject.rules().fall().title()))))
        .add(Tag.of("p", words.word("report.fall.note")));
  }
}
