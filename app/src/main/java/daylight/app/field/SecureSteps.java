package daylight.app.field;

import daylight.app.door.Authority;
import daylight.app.door.Doorkeeper;
import daylight.report.markup.Tag;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** What one does on a phone so that it trusts this machine, and how that is undone. */
final class SecureSteps {
  private static final int ANDROID = 4;
  private static final int APPLE = 4;

  private SecureSteps() {}

  /**
   * @param open where the door is open; null where it is shut
   */
  static List<Tag> of(Phrases phrases, Authority authority, Doorkeeper.@Nullable Open open) {
    List<Tag> contents = new ArrayList<>();
    contents.add(
        Parts.section("load", phrases.say("secure.load"))
            .add(Tag.of("p", phrases.say("secure.load.how")))
            .add(
                Tag.of("p")
                    .add(
                        Parts.button(
                            "/join/daylight.crt",
                            phrases.say("secure.load.go", authority.name())))));
    contents.add(
        Parts.section("android", phrases.say("secure.android"))
            .add(steps(phrases, "secure.android.", ANDROID)));
    contents.add(
        Parts.section("apple", phrases.say("secure.apple"))
            .add(steps(phrases, "secure.apple.", APPLE)));
    contents.add(
        // The fingerprint itself stands at the machine alone: whoever is in between could put
        // another one here.
        Parts.section("compare", phrases.say("secure.compare"))
            .add(Tag.of("p", phrases.say("secure.compare.how"))));
    Tag go =
        Parts.section("go", phrases.say("secure.go"))
            .add(Tag.of("p", phrases.say("secure.go.how")));
    if (open != null && open.secure()) {
      go.add(Tag.of("p").add(Parts.button(open.origin() + "/join", open.origin() + "/join")));
    }
    contents.add(go);
    contents.add(
        Parts.section("remove", phrases.say("secure.remove"))
            .add(Tag.of("p", phrases.say("secure.remove.android", authority.name())))
            .add(Tag.of("p", phrases.say("secure.remove.apple", authority.name()))));
    contents.add(Parts.paragraph("care", phrases.say("secure.care", until(authority))));
    return contents;
  }

  static String until(Authority authority) {
    return authority.until().atZone(ZoneId.systemDefault()).toLocalDate().toString();
  }

  /**
   * @param key how the keys of the steps begin
   */
  private static Tag steps(Phrases phrases, String key, int count) {
    return Tag.of("ol")
        .addAll(
            IntStream.rangeClosed(1, count)
                .mapToObj(i -> Tag.of("li", phrases.say(key + i)))
                .toList());
  }

  static Tag fingerprint(Authority authority) {
    // Broken in the middle, as phones show it on two lines or more.
    Tag shown = Tag.of("p").with("class", "fingerprint");
    for (String group : authority.fingerprint().split("(?<=\\G.{12})", -1)) {
      shown.add(Tag.of("span", group)).text(" ");
    }
    return shown;
  }
}
