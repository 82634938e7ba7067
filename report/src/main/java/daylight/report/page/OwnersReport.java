package daylight.report.page;

import daylight.line.answer.Answers;
import daylight.line.answer.Caution;
import daylight.line.answer.StopOrder;
import daylight.line.course.Route;
import daylight.line.measure.Argument;
import daylight.line.measure.Complaint;
import daylight.line.measure.Statement;
import daylight.report.draw.Captions;
import daylight.report.draw.FrostDrawing;
import daylight.report.draw.PlanDrawing;
import daylight.report.draw.ProfileDrawing;
import daylight.report.draw.PumpDrawing;
import daylight.report.draw.StripDrawing;
import daylight.report.draw.Subject;
import daylight.report.draw.Typeface;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/** The door for the owner's report. */
public final class OwnersReport {
  private static final List<String> SECTIONS =
      List.of(
          "complaint",
          "answers",
          Exhibits.SERVICES,
          "digs",
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
          "method");

  /** Sections that are there only where there is something to draw. */
  private static final Set<String> OPTIONAL = Set.of(Exhibits.PUMPS, Exhibits.FROST);

  private final Subject subject;
  private final Words words;
  private final Answers answers;
  private final Exhibits exhibits;
  private final Tag main;

  private OwnersReport(Subject subject) {
    this.subject = subject;
    this.words = subject.words();
    this.answers = subject.answers();
    this.exhibits = new Exhibits(subject);
    this.main = told();
  }

  /** The report of a subject, which it knows. */
  public static OwnersReport of(Subject subject) {
    return new OwnersReport(subject);
  }

  /** The whole page, well-formed and complete in itself. */
  public String page() {
    return "<!DOCTYPE html>\n" + html().write() + "\n";
  }

  /** What it says, for screen and paper alike. */
  public Tag main() {
    return main;
  }

  private Tag told() {
    List<Tag> sections = new ArrayList<>();
    sections.add(opening());
    answers.lines().forEach(line -> sections.add(new AnswerCards(subject, exhibits).of(line)));
    sections.add(new ServiceTable(subject).section(exhibits));
    sections.add(new DigCards(subject).section());
    sections.add(figure(Exhibits.PLAN, PlanDrawing.sheets(subject)));
    sections.add(figure(Exhibits.PROFILE, ProfileDrawing.sheets(subject)));
    sections.add(figure(Exhibits.STRIP, StripDrawing.sheets(subject)));
    if (exhibits.has(Exhibits.PUMPS)) {
      sections.add(figure(Exhibits.PUMPS, PumpDrawing.sheets(subject)));
    }
    if (exhibits.has(Exhibits.FROST)) {
      sections.add(figure(Exhibits.FROST, List.of(FrostDrawing.draw(subject))));
    }
    new Gallery(subject, exhibits).section().ifPresent(sections::add);
    sections.addAll(new Tables(subject, exhibits).all());
    Tag connections = new ConnectionTable(subject).section(exhibits);
    sections.add(sections.size() - 1, connections);
    sections.addAll(List.of(doubts(), book(), cautions(), method()));
    return Tag.of("main").addAll(stops()).add(head(), contents()).addAll(sections);
  }

  private Tag html() {
    return Tag.of("html")
        .with("xmlns", "http://www.w3.org/1999/xhtml")
        .with("lang", words.language().code())
        .add(
            Tag.of("head")
                .add(Tag.of("meta").with("charset", "utf-8"))
                .add(
                    Tag.of("meta")
                        .with("name", "viewport")
                        .with("content", "width=device-width, initial-scale=1"))
                .add(Tag.of("title", title()))
                .add(Tag.of("style", Typeface.rules() + style("report.css") + style("digs.css"))))
        .add(Tag.of("body").add(main));
  }

  /** What it tells of. */
  public Subject subject() {
    return subject;
  }

  /** What a browser and a reader call it. */
  public String title() {
    return words.say("report.title", new Argument.Text(subject.book().site().name()));
  }

  private static String style(String name) {
    try (InputStream in = OwnersReport.class.getResourceAsStream(name)) {
      return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Tag head() {
    String address = subject.book().site().address();
    Tag head =
        Tag.of("header")
            .add(Tag.of("h1", subject.book().site().name()))
            .add(
                Tag.of(
                        "p",
                        (address == null ? words.word("report.address_missing") : address)
                            + " · "
                            + Captions.visit(subject))
                    .with("class", "quiet"))
            .add(Tag.of("p", words.word("report.subtitle")).with("class", "quiet"));
    if (subject.book().site().invented()) {
      head.add(Tag.of("p", words.word("report.invented")).with("class", "invented"));
    }
    return head;
  }

  private List<Tag> stops() {
    List<Tag> stops = new ArrayList<>();
    Route route = subject.route();
    for (StopOrder stop : answers.stops()) {
      String what =
          words.say(
              "report.stop.what",
              new Argument.Text(words.kind(stop.finding().finding().kind())),
              new Argument.Text(Captions.distance(words, route, stop.finding().from())),
              new Argument.Label(route.from()));
      String id = "stop-" + (stops.size() + 1);
      stops.add(
          Tag.of("section")
              .with("class", "stop")
              .with("aria-labelledby", id)
              .add(Tag.of("p", words.word("report.stop")).with("class", "halt").with("id", id))
              .add(Tag.of("p", Words.capitalised(what)).with("class", "lead"))
              .add(Tag.of("p", words.word("report.stop.do")).with("class", "lead")));
    }
    return stops;
  }

  private Tag opening() {
    return Html.section("complaint", words.word("report.complaint"))
        .addAll(new ComplaintTold(subject).told("h3", "h4"));
  }

  private Tag said(List<Statement> statements, String none) {
    return statements.isEmpty()
        ? Tag.of("p", words.word(none))
        : Html.list(statements.stream().map(words::say).toList());
  }

  /** Where to find what, by the headings. */
  private Tag contents() {
    Tag links = Tag.of("p");
    SECTIONS.stream()
        .filter(id -> !id.equals("stills") || !subject.shots().stills().isEmpty())
        .filter(id -> !OPTIONAL.contains(id) || exhibits.has(id))
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
    for (Tag sheet : sheets) {
      figure.add(
          Tag.of("div")
              .with("class", "drawing")
              .with("tabindex", "0")
              .with("role", "group")
              .with("aria-label", heading)
              .add(sheet));
    }
    return Html.section(id, heading).with("class", "sheet").add(figure);
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
