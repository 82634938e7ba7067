package daylight.app.field;

import daylight.report.markup.Tag;

/**
 * The shapes for a plan or a picture from above that is laid beneath the sketch; what stands in
 * them comes from {@code walk-under.js}.
 */
final class WalkUnder {
  private final Phrases phrases;

  WalkUnder(Phrases phrases) {
    this.phrases = phrases;
  }

  private String say(String key) {
    return phrases.say("walk.under." + key);
  }

  Tag told() {
    return Tag.of("details")
        .with("id", "under")
        .add(Tag.of("summary", say("title")))
        .add(
            Tag.of("div")
                .with("class", "inside")
                .add(Parts.paragraph("hint", say("why")))
                .add(
                    line(
                        "under-file",
                        "file",
                        Tag.of("input")
                            .with("type", "file")
                            .with("accept", "image/jpeg,image/png")))
                .add(
                    Tag.of("p")
                        .with("id", "under-state")
                        .with("class", "hint")
                        .with("role", "status"))
                .add(line("under", "choose", Tag.of("select")))
                .add(chosen()));
  }

  private Tag chosen() {
    Tag form =
        Tag.of("form")
            .with("id", "under-form")
            .with("autocomplete", "off")
            .add(
                Tag.of("div")
                    .with("class", "pair")
                    .add(line("across", "across", number()))
                    .add(line("down", "down", number())))
            .add(line("pin", "pin", Tag.of("select")))
            .add(Tag.of("p").with("class", "why").with("role", "status"))
            .add(Tag.of("button", say("go")).with("class", "button"));
    return Tag.of("div")
        .with("id", "under-chosen")
        .with("hidden", "hidden")
        .add(Tag.of("div").with("id", "under-place"))
        .add(form)
        .add(Tag.of("ul").with("id", "under-pins").with("class", "plain"))
        .add(Tag.of("p").with("id", "under-told").with("role", "status"));
  }

  private static Tag number() {
    return Tag.of("input").with("inputmode", "decimal").with("maxlength", "9");
  }

  private Tag line(String id, String says, Tag field) {
    return Tag.of("div")
        .with("class", "line")
        .add(Tag.of("label", say(says)).with("for", "w-" + id))
        .add(field.with("id", "w-" + id));
  }
}
