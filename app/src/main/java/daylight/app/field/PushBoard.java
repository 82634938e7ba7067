package daylight.app.field;

import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.archive.Bundled;
import daylight.line.book.Catalogue;
import daylight.line.book.Pass;
import daylight.report.markup.Tag;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

/** The page of a push: distance, keys, what was touched last, what was entered. */
final class PushBoard {
  /** Words of the page that its script says. */
  private static final String SAID = "push.js.";

  private final Phrases phrases;

  PushBoard(Phrases phrases) {
    this.phrases = phrases;
  }

  /**
   * @param about identities and units, to which kinds and words are added
   */
  List<Tag> told(String title, ObjectNode about) {
    about.set("kinds", kinds());
    ObjectNode words = about.putObject("words");
    for (String key : new TreeSet<>(phrases.messages().stringPropertyNames())) {
      if (key.startsWith(SAID)) {
        words.put(key.substring(SAID.length()), phrases.say(key, "{0}", "{1}"));
      }
    }
    for (String part : new TreeSet<>(phrases.messages().stringPropertyNames())) {
      if (part.startsWith("push.part.")) {
        words.put("part." + part.substring("push.part.".length()), phrases.say(part));
      }
    }
    Tag board = Tag.of("div").with("id", "push").with("data-board", about.toString());
    board.add(stop()).add(distance()).add(sight()).add(keys()).add(last()).add(orders());
    board.add(rest()).add(ended()).add(PushFilmPart.told(phrases)).add(card()).add(entered());
    return List.of(
        Tag.of("link").with("rel", "stylesheet").with("href", "/field/push.css"),
        Parts.heading(title).with("class", "small"),
        Tag.of("noscript").add(Parts.paragraph("empty", phrases.say("push.noscript"))),
        board);
  }

  private ObjectNode kinds() {
    ObjectNode kinds = EntryJson.object();
    for (Catalogue.Kind kind : Bundled.catalogue().kinds()) {
      ObjectNode one = kinds.putObject(kind.id());
      one.put("says", phrases.kind(kind.id()));
      one.put("stop", kind.hazard() == Catalogue.Hazard.STOP);
      one.put("stretch", kind.stretch());
      ObjectNode quantities = one.putObject("quantities");
      kind.quantities()
          .forEach((name, of) -> quantities.put(name, of.name().toLowerCase(Locale.ROOT)));
      ObjectNode words = one.putObject("words");
      for (String word : kind.words()) {
        List<String> may = kind.says().getOrDefault(word, List.of());
        may.forEach(words.putArray(word)::add);
      }
    }
    return kinds;
  }

  private Tag button(String act, String says) {
    return Tag.of("button", says).with("type", "button").with("data-act", act);
  }

  /** What is deadly stands first; what to do is said as soon as the key is touched. */
  private Tag stop() {
    Tag panel = Tag.of("div").with("id", "stop-panel").with("class", "panel").with("hidden", "");
    panel.add(Parts.paragraph("stop", phrases.say("push.stop.do")));
    Tag keys = Tag.of("div").with("class", "keys");
    PushKeys.stop().forEach(kind -> keys.add(kindKey(kind, "key deadly")));
    return Tag.of("div")
        .add(
            button("stop", phrases.say("push.stop"))
                .with("class", "deadly wide")
                .with("aria-expanded", "false")
                .with("aria-controls", "stop-panel"))
        .add(panel.add(keys));
  }

  private Tag kindKey(Catalogue.Kind kind, String style) {
    return Tag.of("button", phrases.kind(kind.id()))
        .with("type", "button")
        .with("class", style)
        .with("data-kind", kind.id());
  }

  private Tag distance() {
    Tag row = Tag.of("div").with("class", "nudges");
    for (String nudge : List.of("-1", "-0.1")) {
      row.add(nudge(nudge));
    }
    row.add(
        Tag.of("input")
            .with("id", "distance")
            .with("type", "text")
            .with("inputmode", "decimal")
            .with("autocomplete", "off")
            .with("aria-describedby", "unit"));
    for (String nudge : List.of("+0.1", "+1")) {
      row.add(nudge(nudge));
    }
    return Tag.of("div")
        .with("class", "far")
        .add(
            Tag.of("label", phrases.say("push.distance") + " ")
                .with("for", "distance")
                .add(Tag.of("span").with("id", "unit").with("class", "quiet")))
        .add(row)
        .add(
            Tag.of("div")
                .with("class", "row")
                .add(pressed("later", "push.later"))
                .add(pressed("pulling", "push.pulling")));
  }

  private Tag pressed(String act, String key) {
    return button(act, phrases.say(key)).with("class", "small").with("aria-pressed", "false");
  }

  private Tag nudge(String by) {
    return Tag.of("button", by.replace("-", "−").replace(".", phrases.tongue().point()))
        .with("type", "button")
        .with("class", "small")
        .with("data-nudge", by.replace("+", ""));
  }

  private Tag sight() {
    Tag group =
        Tag.of("div")
            .with("class", "row")
            .with("role", "group")
            .with("aria-label", phrases.say("push.sight"));
    group.add(Tag.of("span", phrases.say("push.sight")).with("aria-hidden", "true"));
    for (Pass.Clarity one : Pass.Clarity.values()) {
      String code = one.name().toLowerCase(Locale.ROOT);
      group.add(
          Tag.of("button", phrases.say("push.sight." + code))
              .with("type", "button")
              .with("class", "small")
              .with("data-sight", code)
              .with("aria-pressed", "false"));
    }
    return group;
  }

  private Tag keys() {
    Tag keys = Tag.of("div").with("class", "keys").with("role", "group");
    keys.with("aria-label", phrases.say("push.keys"));
    PushKeys.large().forEach(kind -> keys.add(kindKey(kind, "key")));
    return keys;
  }

  private Tag orders() {
    return Tag.of("div")
        .with("class", "keys orders")
        .add(
            button("more", phrases.say("push.more"))
                .with("aria-expanded", "false")
                .with("aria-controls", "more-panel"))
        .add(button("undo", phrases.say("push.undo")))
        .add(
            button("ended", phrases.say("push.ended"))
                .with("aria-expanded", "false")
                .with("aria-controls", "ended-panel"));
  }

  private Tag rest() {
    Tag panel = Tag.of("div").with("id", "more-panel").with("class", "panel").with("hidden", "");
    for (Catalogue.Bears bears : Catalogue.Bears.values()) {
      Tag keys = Tag.of("div").with("class", "keys");
      PushKeys.rest(bears).forEach(kind -> keys.add(kindKey(kind, "key")));
      String code = bears.name().toLowerCase(Locale.ROOT);
      panel.add(Tag.of("h2", phrases.say("push.group." + code))).add(keys);
    }
    return panel;
  }

  private Tag ended() {
    Tag panel = Tag.of("div").with("id", "ended-panel").with("class", "panel").with("hidden", "");
    Tag keys = Tag.of("div").with("class", "keys");
    for (Pass.Why why : Pass.Why.values()) {
      String code = why.name().toLowerCase(Locale.ROOT).replace('_', '-');
      keys.add(
          Tag.of("button", phrases.say("push.why." + code))
              .with("type", "button")
              .with("class", "key")
              .with("data-why", code));
    }
    return panel.add(Tag.of("h2", phrases.say("push.ended.why"))).add(keys);
  }

  /** One line that says what was done last and whether it is on the disk of the archive. */
  private Tag last() {
    return Tag.of("p").with("id", "told").with("class", "sending").with("role", "status");
  }

  private Tag card() {
    return Tag.of("section")
        .with("id", "card")
        .with("aria-label", phrases.say("push.card"))
        .with("hidden", "");
  }

  private Tag entered() {
    Tag section = Parts.section("entered", phrases.say("push.entered"));
    section.add(Tag.of("ol").with("id", "rows"));
    Tag keys =
        Tag.of("p")
            .with("class", "tick")
            .add(Tag.of("input").with("type", "checkbox").with("id", "letters"))
            .add(Tag.of("label", phrases.say("push.letters")).with("for", "letters"));
    return section
        .add(
            Tag.of("div")
                .with("class", "row")
                .add(button("voice", phrases.say("push.js.voice")).with("class", "small"))
                .add(button("start", phrases.say("push.start")).with("class", "small")))
        .add(keys)
        .add(Parts.paragraph("quiet", phrases.say("push.letters.why")));
  }

  /** Particulars that a kind may have, for the test that they all have a name. */
  static Set<String> parts() {
    Set<String> parts = new TreeSet<>();
    for (Catalogue.Kind kind : Bundled.catalogue().kinds()) {
      parts.addAll(kind.quantities().keySet());
      parts.addAll(kind.words());
      kind.says().values().forEach(parts::addAll);
    }
    return parts;
  }
}
