package daylight.app.field;

import daylight.app.web.Guard;
import daylight.report.markup.Tag;

/** The part of a push's page on which its recording is gone through; see {@code push-film.js}. */
final class PushFilmPart {
  /** A recording of this very device is played from its own memory, which has such an address. */
  static final String POLICY = Guard.FORMS + "; media-src 'self' blob:";

  private PushFilmPart() {}

  static Tag told(Phrases phrases) {
    Tag inside = Tag.of("div").with("class", "inside");
    inside
        .add(Tag.of("label", phrases.say("push.film.which")).with("for", "film-which"))
        .add(Tag.of("select").with("id", "film-which"))
        .add(
            Tag.of("label", phrases.say("push.film.own"))
                .with("class", "photo")
                .with("for", "film-own")
                .add(
                    Tag.of("input")
                        .with("type", "file")
                        .with("id", "film-own")
                        .with("accept", "video/*,.avi,.mkv,.mpg,.ts,.asf")))
        .add(
            Tag.of("video")
                .with("id", "film-shown")
                .with("controls", "")
                .with("playsinline", "")
                .with("preload", "metadata")
                .with("aria-label", phrases.say("push.film"))
                .with("hidden", ""))
        .add(Tag.of("p").with("id", "film-told").with("class", "quiet").with("role", "status"))
        .add(
            Tag.of("progress")
                .with("id", "film-share")
                .with("max", "1")
                .with("aria-label", phrases.say("push.film.reading"))
                .with("hidden", ""))
        .add(
            Tag.of("div")
                .with("class", "row")
                .add(button("film-read", phrases.say("push.film.read")))
                .add(button("film-stop", phrases.say("push.film.stop")))
                .add(
                    button("film-keys", phrases.say("push.film.keys"))
                        .with("aria-pressed", "true")))
        .add(button("film-place", ""))
        .add(Tag.of("div").with("id", "film-later").with("hidden", ""))
        .add(misread(phrases));
    return Tag.of("details")
        .with("id", "film")
        .add(Tag.of("summary", phrases.say("push.film")))
        .add(inside);
  }

  /** Where the machine misread the counter; see {@code push-misread.js}. */
  private static Tag misread(Phrases phrases) {
    return Tag.of("details")
        .with("id", "misread")
        .with("hidden", "")
        .add(
            Tag.of("summary", phrases.say("push.misread")),
            Tag.of("p", phrases.say("push.misread.why")).with("class", "quiet"),
            Tag.of("div")
                .with("class", "row")
                .add(press("misread-from", ""), press("misread-to", "")),
            Tag.of("label", phrases.say("push.misread.counter")).with("for", "misread-counter"),
            Tag.of("input")
                .with("id", "misread-counter")
                .with("inputmode", "decimal")
                .with("autocomplete", "off"),
            press("misread-put", phrases.say("push.misread.put")).with("disabled", ""),
            Tag.of("ul").with("id", "misread-list").with("class", "entries"));
  }

  private static Tag press(String id, String says) {
    return Tag.of("button", says).with("type", "button").with("id", id).with("class", "small");
  }

  private static Tag button(String id, String says) {
    return press(id, says).with("hidden", "");
  }
}
