package daylight.app.web;

import daylight.line.measure.Argument;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What all pages share: their head, the way back to the others, and the foot. */
final class Frame {
  private final Words words;
  private final int properties;
  private final @Nullable Home home;
  private final @Nullable String page;
  private final @Nullable Light light;

  Frame(Words words, int properties) {
    this(words, properties, null, null, null);
  }

  private Frame(
      Words words,
      int properties,
      @Nullable Home home,
      @Nullable String page,
      @Nullable Light light) {
    this.words = words;
    this.properties = properties;
    this.home = home;
    this.page = page;
    this.light = light;
  }

  /** The same with a way back to the page that a property was opened from, where there is one. */
  Frame under(@Nullable Home from) {
    return new Frame(words, properties, from, page, light);
  }

  /** The same in the light that was chosen, with switches for the page that was asked for. */
  Frame as(Wish wish) {
    return new Frame(words, properties, home, wish.page(), wish.light());
  }

  Words words() {
    return words;
  }

  /** The whole page. */
  String write(String title, List<Tag> contents) {
    Tag body =
        Tag.of("body")
            .add(Tag.of("a", words.word("web.skip")).with("class", "skip").with("href", "#main"))
            .add(top())
            .add(Tag.of("main").with("id", "main").addAll(contents))
            .add(foot());
    Tag html = Tag.of("html").with("lang", words.language().code());
    if (light != null) {
      html.with("data-light", light.code());
    }
    html.add(head(title)).add(body);
    return "<!DOCTYPE html>\n" + html.write() + "\n";
  }

  private Tag foot() {
    Tag foot = Tag.of("footer");
    if (page != null) {
      foot.add(Switches.of(words, page, light));
    }
    return foot.add(Tag.of("p", words.word("web.foot")));
  }

  private Tag head(String title) {
    return Tag.of("head")
        .add(Tag.of("meta").with("charset", "utf-8"))
        .add(
            Tag.of("meta")
                .with("name", "viewport")
                .with("content", "width=device-width, initial-scale=1"))
        .add(Tag.of("title", words.say("web.title", new Argument.Text(title))))
        .add(link("icon", "mark.svg"))
        .add(link("stylesheet", "look.css"))
        .add(link("stylesheet", "digs.css"))
        .add(link("stylesheet", "cursor.css"))
        .add(link("stylesheet", "line.css"))
        .add(link("stylesheet", "switches.css"))
        .add(link("stylesheet", "why.css"))
        .add(link("stylesheet", "sift.css"))
        .add(module("places.js"))
        .add(module("moments.js"))
        .add(module("proxies.js"))
        .add(module("reading.js"))
        .add(module("line.js"))
        .add(module("sift.js"));
  }

  private static Tag link(String what, String asset) {
    return Tag.of("link").with("rel", what).with("href", "/assets/" + asset);
  }

  private static Tag module(String asset) {
    return Tag.of("script").with("type", "module").with("src", "/assets/" + asset);
  }

  private Tag top() {
    Tag top = Tag.of("nav").with("class", "top").with("aria-label", words.word("web.name"));
    top.add(
        Tag.of("a")
            .with("href", "/")
            .with("class", "name")
            .add(
                Tag.of("img")
                    .with("src", "/assets/mark.svg")
                    .with("alt", "")
                    .with("width", "28")
                    .with("height", "28"))
            .add(Tag.of("span", words.word("web.name"))));
    if (home != null) {
      return top.add(
          Tag.of("a", words.word("web.site")).with("href", home.address()).with("class", "all"));
    }
    return properties > 1
        ? top.add(Tag.of("a", words.word("web.all")).with("href", "/").with("class", "all"))
        : top;
  }
}
