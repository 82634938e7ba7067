package daylight.app.web;

import daylight.report.markup.Tag;
import java.util.List;

/** The few shapes the pages are made of. */
final class Pieces {
  private Pieces() {}

  static Tag section(String id, String heading) {
    return Tag.of("section")
        .with("id", id)
        .with("aria-labelledby", id + "-heading")
        .add(Tag.of("h2", heading).with("id", id + "-heading"));
  }

  static Tag list(List<String> items) {
    return Tag.of("ul").addAll(items.stream().map(item -> Tag.of("li", item)).toList());
  }

  /** Two blocks beside each other where there is room. */
  static Tag pair(String style, Tag left, Tag right) {
    return Tag.of("div").with("class", "pair " + style).add(left).add(right);
  }

  static Tag paragraph(String style, String text) {
    return Tag.of("p", text).with("class", style);
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

  /** Minutes and seconds of a recording, as players show them. */
  static String moment(double seconds) {
    long whole = (long) StrictMath.floor(seconds);
    return whole / 60 + ":" + (whole % 60 < 10 ? "0" : "") + whole % 60;
  }

  /** Where the file of a book lies, for those who named it. */
  static List<Tag> place(Property property) {
    return property.home() == null
        ? List.of(paragraph("quiet", property.file().toString()))
        : List.of();
  }
}
