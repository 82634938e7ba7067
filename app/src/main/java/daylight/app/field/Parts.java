package daylight.app.field;

import daylight.report.markup.Tag;
import java.util.List;

/** The few shapes that these pages are made of. */
final class Parts {
  private Parts() {}

  static Tag section(String id, String heading) {
    return Tag.of("section")
        .with("id", id)
        .with("aria-labelledby", id + "-heading")
        .add(Tag.of("h2", heading).with("id", id + "-heading"));
  }

  static Tag heading(String title) {
    return Tag.of("h1", title);
  }

  static Tag paragraph(String style, String text) {
    return Tag.of("p", text).with("class", style);
  }

  static Tag list(String style, List<Tag> items) {
    return Tag.of("ul").with("class", style).addAll(items);
  }

  /** A link that looks as if it could be pressed. */
  static Tag button(String href, String says) {
    return Tag.of("a", says).with("class", "button").with("href", href);
  }

  /** Links with what one does there. */
  static Tag links(List<Pages.Link> links) {
    return list(
        "ways",
        links.stream()
            .map(
                link ->
                    Tag.of("li")
                        .add(
                            Tag.of("a")
                                .with("href", link.href())
                                .add(Tag.of("strong", link.says()))
                                .add(Tag.of("span", link.why()))))
            .toList());
  }

  /** A class with its number and its word; the colour only says it again. */
  static Tag grade(int number, String word) {
    return Tag.of("span", number + " " + word).with("class", "grade g" + number);
  }

  /** The line that says what became of what was written; {@code enter.js} fills it in. */
  static Tag sending(Phrases phrases) {
    return Tag.of("p")
        .with("class", "sending")
        .with("role", "status")
        .with("data-kept", phrases.say("sending.kept"))
        .with("data-sending", phrases.say("sending.sending"))
        .with("data-unsent", phrases.say("sending.unsent"))
        .with("data-wrong", phrases.say("sending.wrong"))
        .with("data-clash", phrases.say("sending.clash"));
  }
}
