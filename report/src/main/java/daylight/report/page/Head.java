package daylight.report.page;

import daylight.line.answer.StopOrder;
import daylight.line.book.Letterhead;
import daylight.report.draw.Captions;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.shots.Picture;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What stands at the head of every edition: stop orders, whose report it is, of which place. */
final class Head {
  private final Subject subject;
  private final Sender sender;
  private final Words words;

  Head(Subject subject, Sender sender) {
    this.subject = subject;
    this.sender = sender;
    this.words = subject.words();
  }

  /** What may kill is told before all else. */
  List<Tag> stops() {
    List<Tag> stops = new ArrayList<>();
    for (StopOrder stop : subject.answers().stops()) {
      String id = "stop-" + (stops.size() + 1);
      stops.add(
          Tag.of("section")
              .with("class", "stop")
              .with("aria-labelledby", id)
              .add(Tag.of("p", words.word("report.stop")).with("class", "halt").with("id", id))
              .add(Tag.of("p", Captions.stop(subject, stop)).with("class", "lead"))
              .add(Tag.of("p", words.word("report.stop.do")).with("class", "lead")));
    }
    return stops;
  }

  /** Whose report it is, and of which place. */
  Tag header() {
    Tag head = Tag.of("header");
    Tag letter = letter();
    if (!letter.isEmpty()) {
      head.add(letter);
    }
    head.add(Tag.of("h1", subject.book().site().name())).addAll(place());
    return head;
  }

  /** Where and when. */
  List<Tag> place() {
    List<Tag> place = new ArrayList<>();
    place.add(Tag.of("p", Captions.under(subject)).with("class", "quiet"));
    if (subject.book().site().invented()) {
      place.add(Tag.of("p", words.word("report.invented")).with("class", "invented"));
    }
    return place;
  }

  /** What stands at the head of a letter; empty where nobody signs. */
  Tag letter() {
    Letterhead letterhead = sender.letterhead();
    Tag letter = Tag.of("div").with("class", "letter");
    Picture logo = sender.logo();
    if (logo != null) {
      letter.add(Tag.of("div").with("class", "logo").add(picture(logo)));
    }
    Tag said = Tag.of("div").with("class", "whose");
    String name = letterhead.name();
    if (name != null) {
      said.add(Tag.of("p", name).with("class", "name"));
    }
    paragraph(said, letterhead.lines());
    paragraph(said, letterhead.licences());
    if (!said.isEmpty()) {
      letter.add(said);
    }
    return letter;
  }

  /** Whom to ask, in a line; empty where nobody signs. */
  Optional<Tag> signature() {
    Letterhead letterhead = sender.letterhead();
    List<String> said = new ArrayList<>();
    String name = letterhead.name();
    if (name != null) {
      said.add(name);
    }
    said.addAll(letterhead.lines());
    return said.isEmpty()
        ? Optional.empty()
        : Optional.of(Tag.of("p", String.join(" · ", said)).with("class", "quiet from"));
  }

  private static void paragraph(Tag into, List<String> lines) {
    if (!lines.isEmpty()) {
      into.add(Tag.of("p", String.join(" · ", lines)).with("class", "quiet"));
    }
  }

  private Tag picture(Picture logo) {
    String name = sender.letterhead().name();
    return Tag.of("img")
        .with("src", logo)
        .with(
            "alt",
            name == null ? words.word("report.logo") : words.named(words.word("report.logo"), name))
        .with("width", logo.width())
        .with("height", logo.height());
  }

  /** Its own colour, as rules for a style sheet; empty for the usual one. */
  static String colour(Sender sender) {
    String colour = sender.letterhead().colour();
    return colour == null
        ? ""
        : "header{border-bottom-color:%s}.letter .name{color:%s}".formatted(colour, colour);
  }
}
