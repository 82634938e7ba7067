package daylight.app.web;

import daylight.line.answer.Answer;
import daylight.line.answer.Question;
import daylight.report.draw.Captions;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;

/** All properties that are open: what each complains of, and what to do. */
final class IndexPage {
  private final List<Property> properties;
  private final Frame frame;
  private final Words words;
  private final Wish wish;

  IndexPage(Shelf shelf, Wish wish) {
    this.properties = shelf.all();
    this.wish = wish;
    this.words = wish.words(shelf.settings());
    this.frame = new Frame(words, 1).as(wish);
  }

  String write() {
    List<Tag> contents = new ArrayList<>();
    contents.add(Tag.of("header").add(Tag.of("h1", words.word("web.index"))));
    properties.forEach(property -> contents.add(card(property)));
    return frame.write(words.word("web.index"), contents);
  }

  private Tag card(Property property) {
    return switch (property.soon()) {
      case null -> plain(property, "reading").addAll(UnderwayPage.told(property, words));
      case Reading.Answered answered ->
          answered(
              property,
              answered
                  .in(
                      wish.language(property.settings()),
                      wish.shown(answered.handout().shown()),
                      null)
                  .subject());
      case Reading.Refused refused ->
          plain(property, "refused").add(Tag.of("p", words.word("web.index.refused")));
      case Reading.Failed failed ->
          plain(property, "refused").add(Tag.of("p", words.word("web.fault")));
    };
  }

  private static Tag plain(Property property, String style) {
    return card(property, property.name(), style);
  }

  private static Tag card(Property property, String name, String style) {
    return Tag.of("article")
        .with("class", "card " + style)
        .add(Tag.of("h2").add(Tag.of("a", name).with("href", property.address(""))));
  }

  private static Tag answered(Property property, Subject subject) {
    Words said = subject.words();
    Tag card = card(property, subject.book().site().name(), "answered");
    card.add(Pieces.paragraph("quiet", Captions.under(subject)));
    if (subject.book().site().invented()) {
      card.add(Pieces.paragraph("invented", said.word("report.invented")));
    }
    card.addAll(Titles.stops(subject, "h3"));
    String complaint = subject.answers().opening().words();
    if (complaint != null) {
      card.add(Tag.of("blockquote").add(Tag.of("p", said.quoted(complaint))));
    }
    List<String> next =
        subject.answers().lines().stream()
            .flatMap(line -> line.answers().stream())
            .filter(answer -> answer.question() == Question.WHAT_NOW)
            .map(Answer::headline)
            .map(said::say)
            .distinct()
            .toList();
    next.forEach(sentence -> card.add(Pieces.paragraph("next", sentence)));
    return card;
  }
}
