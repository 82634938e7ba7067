package daylight.app.web;

import daylight.line.answer.Caution;
import daylight.line.measure.Statement;
import daylight.report.draw.FrostDrawing;
import daylight.report.draw.PumpDrawing;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.page.ComplaintTold;
import daylight.report.page.ConnectionTable;
import daylight.report.page.DigCards;
import daylight.report.page.ServiceTable;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One property: stop orders, the complaint, the answers, and what they rest on. */
final class PropertyPage {
  private final int properties;
  private final Wish wish;
  private final Frame frame;
  private final Property property;
  private final Reading.Answered answered;
  private final Subject subject;
  private final Words words;

  PropertyPage(int properties, Property property, Reading.Answered answered, Wish wish) {
    this.properties = properties;
    this.wish = wish;
    this.property = property;
    this.answered = answered;
    this.subject = answered.subject();
    this.words = subject.words();
    this.frame = new Frame(words, properties).under(property.home()).as(wish);
  }

  String write() {
    List<Recording> recordings = Recording.of(property, answered);
    List<Object> depends =
        List.of(
            properties,
            String.valueOf(wish.page()),
            Optional.ofNullable(wish.light()),
            property.isCut(),
            recordings,
            recordings.stream().map(property::proxy).toList());
    return answered.page(depends, () -> made(recordings));
  }

  private String made(List<Recording> recordings) {
    Moments moments = new Moments(property, subject, recordings);
    List<Tag> contents = new ArrayList<>(Titles.stops(subject, "h2"));
    contents.add(header());
    contents.add(Pieces.pair("opening", opening(), answers(moments).all()));
    contents.add(new LineSection(property, answered, recordings).section());
    List<Tag> pumps = PumpDrawing.sheets(subject);
    if (!pumps.isEmpty()) {
      contents.add(drawings("pumps", "report.pumps", pumps));
    }
    if (FrostDrawing.isFor(subject)) {
      contents.add(drawing("frost", "report.frost", FrostDrawing.draw(subject)));
    }
    contents.add(new Findings(subject, moments).section());
    contents.add(
        Pieces.section("digs", words.word("report.digs")).addAll(new DigCards(subject).told("h3")));
    contents.add(connections());
    contents.add(services());
    contents.add(Pieces.pair("closing", doubts(), cautions()));
    contents.add(backing());
    contents.add(HandOver.section(property, subject));
    return frame.write(subject.book().site().name(), contents);
  }

  private Tag header() {
    Tag header = Titles.header(subject).addAll(VisitChoice.links(property, answered));
    return property.isCut() ? header.addAll(UnderwayPage.cut(property, words)) : header;
  }

  private AnswerList answers(Moments moments) {
    return new AnswerList(subject, moments, property.address(BackingPage.NAME));
  }

  private Tag opening() {
    return Pieces.section("complaint", words.word("report.complaint"))
        .addAll(new ComplaintTold(subject).told("h3", "h4"));
  }

  private Tag said(List<Statement> statements, String none) {
    return statements.isEmpty()
        ? Tag.of("p", words.word(none))
        : Pieces.list(statements.stream().map(words::say).toList());
  }

  private Tag connections() {
    return Pieces.section("connections", words.word("report.connections"))
        .addAll(new ConnectionTable(subject).told(words.word("report.connections.caption")));
  }

  private Tag services() {
    return Pieces.section("services", words.word("report.services"))
        .addAll(new ServiceTable(subject).told(words.word("report.services.caption")));
  }

  private Tag drawing(String id, String key, Tag svg) {
    return drawings(id, key, List.of(svg));
  }

  private Tag drawings(String id, String key, List<Tag> sheets) {
    String heading = words.word(key);
    Tag section = Pieces.section(id, heading);
    for (Tag sheet : sheets) {
      section.add(Pieces.drawing(heading, sheet));
    }
    return section;
  }

  private Tag doubts() {
    Tag section =
        Pieces.section("doubts", words.word("report.doubts"))
            .add(said(subject.line().doubts(), "report.doubts.none"))
            .addAll(
                subject.line().unchecked().stream()
                    .map(unchecked -> Tag.of("p", words.say(unchecked)))
                    .toList());
    return subject.complaints().isEmpty()
        ? section
        : section
            .add(Tag.of("h3", words.word("report.book")))
            .add(Pieces.list(subject.complaints().stream().map(words::complaint).toList()));
  }

  private Tag backing() {
    return Pieces.section("why", words.word("web.why"))
        .add(Tag.of("p", words.word("web.why.link")))
        .add(
            Tag.of("p")
                .add(
                    Tag.of("a", words.word("web.why.open"))
                        .with("class", "button")
                        .with("href", property.address(BackingPage.NAME))));
  }

  private Tag cautions() {
    return Pieces.section("cautions", words.word("report.cautions"))
        .add(
            Pieces.list(
                subject.answers().cautions().stream().map(Caution::key).map(words::word).toList()));
  }
}
