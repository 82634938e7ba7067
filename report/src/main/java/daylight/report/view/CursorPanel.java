package daylight.report.view;

import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.List;

/**
 * What stands beside the drawings for their cursor: what is known where it is, and what moves it.
 * All of it is hidden until a script brings it to life.
 */
public final class CursorPanel {
  private final Words words;

  public CursorPanel(Words words) {
    this.words = words;
  }

  /** The style of all of it, and of the cursor itself. */
  public static String style() {
    return Script.style("cursor.css");
  }

  /**
   * A script, as one module, by which the drawings of a page come alive that brings {@link
   * CursorTable#inPage} along.
   */
  public static String script() {
    return Script.of("line-report.js");
  }

  /** Gives what holds drawings and panel the words that a script says. */
  public Tag said(Tag section) {
    return section
        .with("data-unknown", words.word("web.line.unknown"))
        .with("data-held", words.word("web.line.held"));
  }

  /** How to move along the line. */
  public Tag how(String text) {
    return Tag.of("p", text)
        .with("class", "quiet how")
        .with("data-cursor", "how")
        .with("hidden", "");
  }

  /** What is known at the cursor. */
  public Tag facts() {
    Tag facts = Tag.of("dl");
    for (String name : List.of("where", "depth", "within", "sight")) {
      facts.add(
          Tag.of("div")
              .with("class", "of-" + name)
              .add(
                  Tag.of("dt", words.word("web.line." + name)),
                  Tag.of("dd").with("data-cursor", name)));
    }
    return Tag.of("div")
        .with("class", "at-cursor")
        .with("data-cursor", "bar")
        .with("hidden", "")
        .add(
            Tag.of("p").with("class", "way").with("data-cursor", "way"),
            facts,
            Tag.of("ul").with("class", "there").with("data-cursor", "there"));
  }

  /** The picture nearest to the cursor, of those that stand elsewhere on the page. */
  public Tag picture() {
    return Tag.of("div")
        .with("class", "pictured")
        .with("data-cursor", "picture")
        .with("hidden", "")
        .add(
            Tag.of("p", words.word("web.line.picture")).with("class", "quiet"),
            Tag.of("a").with("href", "#line"));
  }

  /** What moves the cursor, with a word of where it is for those who see nothing else beside it. */
  public Tag mover() {
    return Tag.of("div")
        .with("class", "mover")
        .with("data-cursor", "mover")
        .with("hidden", "")
        .add(
            Tag.of("p").with("class", "short").with("data-cursor", "short"),
            Tag.of("div")
                .with("class", "moved")
                .add(
                    step("before", "‹", "web.line.before"),
                    Tag.of("input")
                        .with("type", "range")
                        .with("min", "0")
                        .with("max", "0")
                        .with("value", "0")
                        .with("aria-label", words.word("web.line.slider"))
                        .with("data-cursor", "slider"),
                    step("next", "›", "web.line.next")),
            Tag.of("p").with("class", "quiet held").with("data-cursor", "held"),
            Tag.of("p").with("class", "spoken").with("role", "status").with("data-cursor", "told"));
  }

  private Tag step(String name, String sign, String says) {
    return Tag.of("button", sign)
        .with("type", "button")
        .with("data-cursor", name)
        .with("aria-label", words.word(says));
  }

  /** What makes a drawing larger and smaller. */
  public Tag zoom(String heading) {
    Tag zoom =
        Tag.of("div")
            .with("class", "zoom")
            .with("role", "group")
            .with("aria-label", heading)
            .with("hidden", "");
    List.of("in +", "out −", "fit ⤢")
        .forEach(
            one -> {
              String[] parts = one.split(" ", 2);
              zoom.add(
                  Tag.of("button", parts[1])
                      .with("type", "button")
                      .with("data-zoom", parts[0])
                      .with("aria-label", words.word("web.zoom." + parts[0])));
            });
    return zoom;
  }
}
