package daylight.app.field;

import daylight.app.web.Light;
import daylight.app.web.Look;
import daylight.line.measure.Shown;
import daylight.report.markup.Tag;
import daylight.report.words.Language;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What all pages share: head, the way back, the switches for light, language and units. */
final class SheetWriter {
  private final Caller caller;
  private final Phrases phrases;
  private final String path;

  /**
   * @param path of the page, to come back to when something was switched
   */
  SheetWriter(Caller caller, String path) {
    this.caller = caller;
    this.phrases = caller.phrases();
    this.path = path;
  }

  String write(Sheet sheet) {
    Look look = caller.look();
    Tag html = Tag.of("html").with("lang", look.language().code());
    if (look.light() != null) {
      html.with("data-light", look.light().code());
    }
    html.with("data-units", Look.code(look.shown())).add(head(sheet)).add(body(sheet));
    return "<!DOCTYPE html>\n" + html.write() + "\n";
  }

  private Tag head(Sheet sheet) {
    Tag head =
        Tag.of("head")
            .add(Tag.of("meta").with("charset", "utf-8"))
            .add(meta("viewport", "width=device-width, initial-scale=1"))
            .add(meta("color-scheme", "light dark"))
            .add(meta("daylight-token", caller.token()))
            .add(Tag.of("title", phrases.say("frame.title", sheet.title())))
            .add(link("icon", "/assets/mark.svg"))
            .add(link("stylesheet", "/field/field.css"));
    if (sheet.book() != null) {
      head.add(meta("daylight-book", sheet.book().toString()));
    }
    sheet
        .modules()
        .forEach(
            name ->
                head.add(Tag.of("script").with("type", "module").with("src", "/field/" + name)));
    return head;
  }

  private static Tag meta(String name, String content) {
    return Tag.of("meta").with("name", name).with("content", content);
  }

  private static Tag link(String rel, String href) {
    return Tag.of("link").with("rel", rel).with("href", href);
  }

  private Tag body(Sheet sheet) {
    return Tag.of("body")
        .add(Tag.of("a", phrases.say("frame.skip")).with("class", "skip").with("href", "#main"))
        .add(top(sheet))
        .add(Tag.of("main").with("id", "main").addAll(sheet.contents()))
        .add(foot());
  }

  private Tag top(Sheet sheet) {
    Tag steps = Tag.of("ol");
    if (caller.standing() == Standing.STRANGER) {
      return top(steps.add(step("/join", phrases.say("join"))));
    }
    steps.add(step("/sites", phrases.say("frame.sites")));
    sheet.way().forEach(step -> steps.add(step(step.href(), step.says())));
    return top(steps);
  }

  private Tag top(Tag steps) {
    return Tag.of("header")
        .with("class", "top")
        .add(
            Tag.of("nav")
                .with("aria-label", phrases.say("frame.way"))
                .add(
                    Tag.of("img")
                        .with("src", "/assets/mark.svg")
                        .with("alt", "")
                        .with("width", "28")
                        .with("height", "28"))
                .add(steps));
  }

  private static Tag step(String href, String says) {
    return Tag.of("li").add(Tag.of("a", says).with("href", href));
  }

  private Tag foot() {
    Tag foot = Tag.of("footer").add(switches());
    if (caller.standing() == Standing.STRANGER) {
      return foot;
    }
    Tag who = Tag.of("p").with("class", "who");
    if (caller.person() != null) {
      who.text(phrases.say("frame.who", caller.person(), caller.device()) + " ");
    }
    who.add(
        Tag.of("a", phrases.say(caller.person() == null ? "frame.who.say" : "frame.who.change"))
            .with("href", "/who?back=" + Forms.encoded(path)));
    return foot.add(who).add(Tag.of("p", phrases.say("frame.foot")));
  }

  /** One press each; every button sends the form by itself, so that no script is needed. */
  private Tag switches() {
    Look look = caller.look();
    Tag form =
        Forms.form(caller, "/look")
            .with("class", "switches")
            .add(Forms.hidden("back", path))
            .add(
                group(
                    "light",
                    Stream.of(Light.values())
                        .map(one -> choice("light", one.code(), one == look.light()))))
            .add(
                group(
                    "units",
                    Stream.of(Shown.FEET_INCHES, Shown.METRES)
                        .map(one -> choice("units", Look.code(one), one == look.shown()))));
    return form.add(group("language", Stream.of(Language.values()).map(this::language)));
  }

  private Tag group(String what, Stream<Tag> choices) {
    return Tag.of("div")
        .with("class", "switch")
        .with("role", "group")
        .with("aria-label", phrases.say("switch." + what))
        .addAll(choices.toList());
  }

  private Tag choice(String what, String code, boolean chosen) {
    return button(what, code, phrases.say("switch." + what + "." + code), chosen, null);
  }

  private Tag language(Language one) {
    return button("language", one.code(), one.own(), one == caller.look().language(), one.code());
  }

  private static Tag button(
      String name, String value, String says, boolean chosen, @Nullable String lang) {
    Tag button =
        Tag.of("button", says)
            .with("name", name)
            .with("value", value)
            .with("aria-pressed", Boolean.toString(chosen));
    return lang == null ? button : button.with("lang", lang);
  }
}
