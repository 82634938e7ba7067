package daylight.app.field;

import daylight.line.book.Boundary;
import daylight.line.book.Papers;
import daylight.report.markup.Tag;
import java.util.List;
import java.util.Locale;

/**
 * The shapes of the page for the walk; what stands in them comes from {@code walk.js}. Whatever is
 * pressed or filled in is at least 56 pixels high, for gloves.
 */
final class WalkForm {
  private final Phrases phrases;
  private final WalkUnits units;

  WalkForm(Phrases phrases, WalkUnits units) {
    this.phrases = phrases;
    this.units = units;
  }

  List<Tag> told() {
    return List.of(
        Parts.paragraph("care", say("insecure")).with("id", "insecure").with("hidden", "hidden"),
        Tag.of("p").with("id", "reach").with("class", "sending").with("role", "status"),
        Tag.of("div").with("id", "troubles").with("role", "alert"),
        button("over", "over", "button over"),
        locate(),
        listed(),
        sketch(),
        new WalkUnder(phrases).told(),
        answer(),
        landmarks(),
        Parts.paragraph("quiet", say("rules")));
  }

  private String say(String key) {
    return phrases.say("walk." + key);
  }

  private Tag button(String id, String says, String style) {
    return Tag.of("button", say(says)).with("id", id).with("type", "button").with("class", style);
  }

  private Tag locate() {
    return Tag.of("form")
        .with("id", "locate")
        .with("hidden", "hidden")
        .with("autocomplete", "off")
        .with("aria-labelledby", "locate-heading")
        .add(Tag.of("h2").with("id", "locate-heading"))
        .add(choice("pass", "pass"))
        .add(length("cable", "distance", false))
        .add(choice("wall", "wall"))
        .add(
            Tag.of("div")
                .with("class", "pair")
                .add(length("along", "distance", true))
                .add(length("out", "distance", true)))
        .add(length("depth", "depth", false))
        .add(chips("signal", List.of("good", "fair", "poor")))
        .add(chips("surface", List.of("yard", "slab", "drive", "other")))
        .add(line("surface-other", "surface.other"))
        .add(more())
        .add(Tag.of("p").with("id", "checks").with("class", "why").with("role", "status"))
        .add(
            Tag.of("div")
                .with("class", "keeping")
                .add(Tag.of("button", say("keep")).with("id", "keep").with("class", "button"))
                .add(button("withdraw", "withdraw", "button second")));
  }

  /** What most spots do without. */
  private Tag more() {
    Tag gnss =
        Tag.of("div")
            .with("class", "line")
            .add(button("gnss", "gnss", "button second"))
            .add(Tag.of("p").with("id", "gnss-told").with("class", "hint").with("role", "status"));
    return Tag.of("div")
        .add(details("tapes", Tag.of("div").with("id", "tapes-rows"), side()))
        .add(
            details(
                "more",
                length("receiver-height", "depth", false),
                length("cover", "depth", false),
                Tag.of("div")
                    .with("class", "pair")
                    .add(length("lift-by", "depth", false))
                    .add(length("lift-depth", "depth", false)),
                chips("off-on", List.of("yes", "stayed", "no")),
                line("remark", "remark")))
        .add(
            details(
                "other-ways",
                button("drop", "drop", "button second"),
                Tag.of("p").with("id", "drop-told").with("class", "hint").with("role", "status"),
                gnss));
  }

  private Tag side() {
    return choice("side", "side");
  }

  private Tag details(String id, Tag... contents) {
    return Tag.of("details")
        .with("id", id)
        .add(Tag.of("summary", say(id)))
        .add(Tag.of("div").with("class", "inside").add(contents));
  }

  /** A length: feet with inches beside them, or one figure; the numbers' keypad comes up. */
  Tag length(String key, String kind, boolean signed) {
    String unit =
        switch (kind) {
          case "depth" -> units.depth();
          case "level" -> units.level();
          default -> units.distance();
        };
    boolean two = unit.equals("ft") && !key.equals("cable");
    Tag fields =
        Tag.of("div")
            .with("class", "length")
            .with("data-key", key)
            .with("data-unit", unit)
            .with("data-kind", kind);
    if (signed) {
      fields.add(
          Tag.of("button", "+")
              .with("type", "button")
              .with("class", "sign")
              .with("aria-pressed", "false")
              .with("aria-label", say("sign." + key)));
    }
    fields.add(number(key, "main")).add(Tag.of("span", unit).with("aria-hidden", "true"));
    if (two) {
      fields
          .add(
              number(key + "-inches", "inches")
                  .with("aria-label", phrases.say("walk.inches", say(key))))
          .add(Tag.of("span", "in").with("aria-hidden", "true"));
    }
    return Tag.of("div")
        .with("class", "line")
        .add(Tag.of("label", phrases.say("walk.in_unit", say(key), unit)).with("for", "w-" + key))
        .add(fields);
  }

  private static Tag number(String id, String part) {
    return Tag.of("input")
        .with("id", "w-" + id)
        .with("data-part", part)
        .with("inputmode", "decimal")
        .with("enterkeyhint", "next")
        .with("maxlength", "12");
  }

  private Tag line(String id, String label) {
    return Tag.of("div")
        .with("class", "line")
        .with("id", id + "-line")
        .add(Tag.of("label", say(label)).with("for", "w-" + id))
        .add(
            Tag.of("input")
                .with("id", "w-" + id)
                .with("maxlength", "400")
                .with("enterkeyhint", "done"));
  }

  private Tag choice(String id, String label) {
    return Tag.of("div")
        .with("class", "line")
        .with("id", id + "-line")
        .add(Tag.of("label", say(label)).with("for", "w-" + id))
        .add(Tag.of("select").with("id", "w-" + id));
  }

  private Tag chips(String key, List<String> values) {
    Tag group = Tag.of("fieldset").with("class", "chips").add(Tag.of("legend", say(key)));
    for (String value : values) {
      String id = "w-" + key + "-" + value;
      group
          .add(
              Tag.of("input")
                  .with("type", "radio")
                  .with("name", key)
                  .with("id", id)
                  .with("value", value))
          .add(Tag.of("label", say(key + "." + value)).with("for", id));
    }
    return group;
  }

  private Tag listed() {
    return Parts.section("marked", say("marked")).add(Tag.of("ol").with("id", "spots"));
  }

  private Tag sketch() {
    return Parts.section("sketch", say("sketch"))
        .add(
            Tag.of("div")
                .with("id", "drawing")
                .with("role", "img")
                .with("aria-label", say("sketch.alt")))
        .add(Parts.paragraph("quiet", say("sketch.legend")));
  }

  private Tag answer() {
    return Parts.section("answer", say("answer"))
        .add(Tag.of("p").with("id", "answer-state").with("class", "quiet").with("role", "status"))
        .add(Tag.of("div").with("id", "answer-told").with("lang", "en"));
  }

  private Tag landmarks() {
    Tag kinds = Tag.of("div").with("class", "kinds");
    for (String kind : List.of("corner", "post", "tree", "well", "cover", "other")) {
      kinds.add(
          Tag.of("button", say("kind." + kind))
              .with("type", "button")
              .with("class", "button second")
              .with("data-kind", kind));
    }
    return Parts.section("landmarks", say("landmarks"))
        .add(Parts.paragraph("quiet", say("landmarks.why")))
        .add(kinds)
        .add(Tag.of("ul").with("id", "points").with("class", "plain"))
        .add(house())
        .add(between())
        .add(placed())
        .add(Tag.of("ul").with("id", "lines-list").with("class", "plain"))
        .add(lines());
  }

  /**
   * Other services by whose mark they are, then walls and boundaries; each by name, not by colour.
   */
  private Tag lines() {
    Tag kinds = Tag.of("select").with("id", "w-line-kind");
    for (Papers.Service one : Papers.Service.values()) {
      kinds.add(kind("service." + code(one)));
    }
    for (Boundary.Kind one : Boundary.Kind.values()) {
      kinds.add(kind("boundary." + code(one)));
    }
    Tag inside = Tag.of("div").with("class", "pair");
    for (String one : List.of("1", "2", "3", "4")) {
      inside.add(choice("line-" + one, one.equals("1") ? "line.from" : "line.then"));
    }
    return form(
        "lines",
        Parts.paragraph("hint", say("lines.why")),
        Tag.of("div")
            .with("class", "line")
            .add(Tag.of("label", say("line.kind")).with("for", "w-line-kind"))
            .add(kinds),
        inside,
        line("line-left", "line.left"),
        line("line-right", "line.right"));
  }

  private Tag kind(String code) {
    return Tag.of("option", say("js." + code)).with("value", code);
  }

  private static String code(Enum<?> one) {
    return one.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private Tag form(String id, Tag... contents) {
    return details(
        id,
        Tag.of("form")
            .with("id", id + "-form")
            .with("autocomplete", "off")
            .add(contents)
            .add(Tag.of("p").with("class", "why").with("role", "status"))
            .add(Tag.of("button", say(id + ".go")).with("class", "button")));
  }

  private Tag house() {
    return form(
        "house",
        Parts.paragraph("hint", say("house.why")),
        length("house-front", "distance", false),
        length("house-side", "distance", false));
  }

  private Tag between() {
    return form(
        "between", choice("from", "from"), choice("to", "to"), length("tape", "distance", false));
  }

  private Tag placed() {
    return form(
        "placed",
        choice("placed-point", "point"),
        choice("placed-wall", "wall"),
        length("placed-along", "distance", true),
        length("placed-out", "distance", true));
  }
}
