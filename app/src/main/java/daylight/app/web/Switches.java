package daylight.app.web;

import daylight.line.measure.Shown;
import daylight.report.markup.Tag;
import daylight.report.words.Language;
import daylight.report.words.Words;
import java.util.List;
import java.util.stream.Stream;

/**
 * The choice of language and units at the foot of a page. Each is a link to the same page, so that
 * it works without script and these pages need take no forms.
 */
final class Switches {
  private Switches() {}

  static Tag of(Words words, String page) {
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
                    .toList()));
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
