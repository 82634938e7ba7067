package daylight.app.field;

import daylight.report.markup.Tag;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The shapes that forms are made of; every form carries the token of the device. */
final class Forms {
  private Forms() {}

  static Tag form(Caller caller, String action) {
    return Tag.of("form")
        .with("method", "post")
        .with("action", action)
        .add(hidden(Gate.FIELD, caller.token()));
  }

  static Tag hidden(String name, String value) {
    return Tag.of("input").with("type", "hidden").with("name", name).with("value", value);
  }

  /**
   * A line to be filled in.
   *
   * @param type as HTML calls it; {@code textarea} for more than a line
   * @param hint said below; null for none
   * @param wrong why it was not taken; null where it was
   */
  static Tag line(
      String name,
      String label,
      String type,
      String value,
      @Nullable String hint,
      @Nullable String wrong) {
    Tag input =
        type.equals("textarea")
            ? Tag.of("textarea", value).with("rows", "3")
            : Tag.of("input").with("type", type).with("value", value);
    input.with("id", name).with("name", name);
    return labelled(name, label, input, hint, wrong);
  }

  /** Something to be filled in or chosen, with its label, what helps, and what was wrong. */
  static Tag labelled(
      String name, String label, Tag input, @Nullable String hint, @Nullable String wrong) {
    Tag block = Tag.of("div").with("class", wrong == null ? "line" : "line wrong");
    block.add(Tag.of("label", label).with("for", name));
    if (hint != null) {
      block.add(Tag.of("p", hint).with("class", "hint").with("id", name + "-hint"));
    }
    if (wrong != null) {
      block.add(Tag.of("p", wrong).with("class", "why").with("id", name + "-why"));
      input.with("aria-invalid", "true");
    }
    if (hint != null || wrong != null) {
      input.with(
          "aria-describedby",
          ((hint == null ? "" : name + "-hint") + (wrong == null ? "" : " " + name + "-why"))
              .strip());
    }
    return block.add(input);
  }

  /** A list to choose one from. */
  static Tag choice(String name, List<Option> options, String chosen) {
    Tag select = Tag.of("select").with("id", name).with("name", name);
    for (Option option : options) {
      Tag tag = Tag.of("option", option.says()).with("value", option.value());
      select.add(option.value().equals(chosen) ? tag.with("selected", "") : tag);
    }
    return select;
  }

  /** One of a list to choose from. */
  record Option(String value, String says) {}

  static Tag submit(String says) {
    return Tag.of("button", says).with("class", "button").with("type", "submit");
  }

  /** A text as part of an address. */
  static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
