package daylight.app.web;

import daylight.line.measure.Shown;
import daylight.report.markup.Tag;
import daylight.report.words.Language;
import daylight.report.words.Words;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The choice of language, units and light at the foot of a page. Each is a link to the same page,
 * so that it works without script and these pages need take no forms.
 */
final class Switches {
  private Switches() {}

  static Tag of(Words words, String page, @Nullable Light light) {
    return Tag.of("div")
        .with("class", "switches")
        .add(
            group(
                words.word("web.switch.units"),
                Stream.of(Shown.FEET_INCHES, Shown.METRES)
                    .map(
                        one ->
                            link(
                                page + "?units=" + Look.code(one),
                                words.word("web.switch.units." + Look.code(one)),
                                one == words.shown()))
                    .toList()))
        .add(
            group(
                words.word("web.switch.language"),
                Stream.of(Language.values())
                    .map(
                        one ->
                            link(
                                    page + "?language=" + one.code(),
                                    one.own(),
                                    one == words.language())
                                .with("lang", one.code())
                                .with("hreflang", one.code()))
                    .toList()))
        .add(
            group(
                words.word("web.switch.light"),
                Stream.concat(
                        Stream.of(lit(words, page, Light.DEVICE, light == null)),
                        Stream.of(Light.values())
                            .map(one -> lit(words, page, one.code(), one == light)))
                    .toList()));
  }

  private static Tag lit(Words words, String page, String code, boolean chosen) {
    return link(page + "?light=" + code, words.word("web.switch.light." + code), chosen);
  }

  private static Tag group(String says, List<Tag> links) {
    return Tag.of("div")
        .with("class", "switch")
        .with("role", "group")
        .with("aria-label", says)
        .addAll(links);
  }

  private static Tag link(String address, String says, boolean chosen) {
    Tag link = Tag.of("a", says).with("href", address).with("rel", "nofollow");
    return chosen ? link.with("aria-current", "true") : link;
  }
}
