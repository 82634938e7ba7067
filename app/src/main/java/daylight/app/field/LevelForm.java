package daylight.app.field;

import daylight.line.book.Level;
import daylight.report.markup.Tag;
import java.util.List;
import java.util.Locale;

/** The shapes of the page for ground levels; what stands in them comes from {@code levels.js}. */
final class LevelForm {
  private final Phrases phrases;
  private final WalkForm shapes;

  LevelForm(Phrases phrases, WalkUnits units) {
    this.phrases = phrases;
    this.shapes = new WalkForm(phrases, units);
  }

  List<Tag> told() {
    return List.of(
        Tag.of("p").with("id", "reach").with("class", "sending").with("role", "status"),
        Tag.of("div").with("id", "troubles").with("role", "alert"),
        Parts.paragraph("empty", say("no_points")).with("id", "no-points").with("hidden", ""),
        rod(),
        known(),
        heights(),
        Parts.paragraph("quiet", say("rules")));
  }

  private String say(String key) {
    return phrases.say("levels." + key);
  }

  private Tag rod() {
    return form("rod-form")
        .add(Tag.of("h2").with("id", "set-up"))
        .add(choice("of", "point"))
        .add(parts("part"))
        .add(shapes.length("rod", "level", false))
        .add(why())
        .add(
            Tag.of("div")
                .with("class", "keeping")
                .add(Tag.of("button", say("read")).with("id", "read").with("class", "button"))
                .add(button("point", "turning_point"))
                .add(button("turn", "turn")));
  }

  private Tag known() {
    return Tag.of("details")
        .with("id", "known")
        .add(Tag.of("summary", say("known")))
        .add(
            form("known-form")
                .add(Parts.paragraph("hint", say("known.why")))
                .add(choice("known", "point"))
                .add(parts("known-part"))
                .add(shapes.length("height", "level", true))
                .add(why())
                .add(Tag.of("button", say("known.go")).with("class", "button")));
  }

  private static Tag form(String id) {
    return Tag.of("form").with("id", id).with("autocomplete", "off");
  }

  private static Tag why() {
    return Tag.of("p").with("class", "why").with("role", "status");
  }

  private Tag button(String id, String says) {
    return Tag.of("button", say(says))
        .with("id", id)
        .with("type", "button")
        .with("class", "button second");
  }

  private Tag choice(String id, String says) {
    return Tag.of("div")
        .with("class", "line")
        .add(Tag.of("label", say(says)).with("for", "w-" + id))
        .add(Tag.of("select").with("id", "w-" + id));
  }

  private Tag parts(String id) {
    Tag select = Tag.of("select").with("id", "w-" + id);
    for (Level.Part part : Level.Part.values()) {
      String code = part.name().toLowerCase(Locale.ROOT);
      select.add(Tag.of("option", phrases.say("levels.js.part." + code)).with("value", code));
    }
    return Tag.of("div")
        .with("class", "line")
        .add(Tag.of("label", say("part")).with("for", "w-" + id))
        .add(select);
  }

  private Tag heights() {
    Tag head = Tag.of("tr");
    for (String column : List.of("mark", "rod", "instrument", "height", "change")) {
      head.add(Tag.of("th", phrases.say("levels.js.levels.column." + column)).with("scope", "col"));
    }
    return Parts.section("heights", say("heights"))
        .add(Parts.paragraph("empty", say("nothing")).with("id", "nothing"))
        .add(
            Tag.of("table")
                .with("id", "reduced-table")
                .with("class", "cards")
                .with("hidden", "")
                .add(Tag.of("thead").add(head))
                .add(Tag.of("tbody").with("id", "reduced")))
        .add(Tag.of("ul").with("id", "checks").with("class", "plain").with("aria-live", "polite"));
  }
}
