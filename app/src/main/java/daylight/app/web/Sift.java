package daylight.app.web;

import daylight.line.course.PlacedFinding;
import daylight.line.measure.Argument;
import daylight.line.urgency.HowSoon;
import daylight.line.urgency.Urgency;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * By what the table of findings is sifted and put in order: how soon something is to be done, and
 * what it is. The browser does it; without its script the controls are not there, and the table
 * stands along the drain.
 */
final class Sift {
  /** So few are seen at a glance. */
  private static final int FEWEST = 4;

  private static final String STOP = "soon.stop";
  private static final String OPEN = "soon.open";
  private static final String NOTHING = "web.sift.nothing";

  private final Words words;
  private final Function<PlacedFinding, HowSoon> soon;

  /**
   * @param soon how soon something is to be done about a finding
   */
  Sift(Words words, Function<PlacedFinding, HowSoon> soon) {
    this.words = words;
    this.soon = soon;
  }

  /** Has a row say for itself what the browser sifts by. */
  Tag mark(Tag row, PlacedFinding placed) {
    HowSoon how = soon.apply(placed);
    return row.with("data-kind", placed.finding().kind())
        .with("data-soon", word(how))
        .with("data-rank", how.rank());
  }

  /** The controls; none for a table that is seen at a glance. */
  List<Tag> controls(List<PlacedFinding> findings) {
    if (findings.size() < FEWEST) {
      return List.of();
    }
    Function<PlacedFinding, String> how = one -> word(soon.apply(one));
    Function<PlacedFinding, String> what = one -> one.finding().kind();
    Comparator<PlacedFinding> soonest = Comparator.comparingInt(one -> soon.apply(one).rank());
    Tag show =
        select("show")
            .add(option("", words.word("web.sift.all"), findings.size()))
            .add(group("soon", findings.stream().sorted(soonest).map(how).toList(), words::word))
            .add(group("kind", findings.stream().map(what).toList(), words::kind));
    Tag order =
        select("order")
            .add(Tag.of("option", words.word("web.sift.along")).with("value", "along"))
            .add(Tag.of("option", words.word("web.sift.soonest")).with("value", "rank"));
    Tag holding =
        named(Tag.of("input"), "holding").with("type", "search").with("autocomplete", "off");
    return List.of(
        Tag.of("div")
            .with("class", "sift")
            .with("role", "search")
            .with("aria-label", words.word("web.sift"))
            .with("data-told", told())
            .with("hidden", "")
            .add(line("show", show))
            .add(line("order", order))
            .add(line("holding", holding))
            .add(Tag.of("p").with("class", "told").with("role", "status")));
  }

  /** With places for two numbers, which the browser counts. */
  private String told() {
    return words.say("web.sift.told", new Argument.Text("{0}"), new Argument.Text("{1}"));
  }

  /** The key of what is said of it, whatever else it might be. */
  private static String word(HowSoon how) {
    return switch (how) {
      case HowSoon.Stop stop -> STOP;
      case HowSoon.Listed listed -> Urgency.AT_ONCE.key();
      case HowSoon.Ruled ruled -> ruled.urgency().key();
      case HowSoon.CannotSay cannot -> OPEN;
      case HowSoon.Nothing nothing -> NOTHING;
    };
  }

  /** A choice of each value, in the order in which they come, with how many there are of it. */
  private Tag group(String by, List<String> values, Function<String, String> said) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    values.forEach(value -> counts.merge(value, 1, Integer::sum));
    Tag group = Tag.of("optgroup").with("label", words.word("web.sift." + by));
    counts.forEach(
        (value, count) ->
            group.add(option(by + ":" + value, Words.capitalised(said.apply(value)), count)));
    return group;
  }

  private static Tag option(String value, String said, int count) {
    return Tag.of("option", said + " (" + count + ")").with("value", value);
  }

  private static Tag select(String name) {
    return named(Tag.of("select"), name);
  }

  private static Tag named(Tag tag, String name) {
    return tag.with("name", name).with("id", "sift-" + name);
  }

  private Tag line(String name, Tag control) {
    return Tag.of("div")
        .add(Tag.of("label", words.word("web.sift.by." + name)).with("for", "sift-" + name))
        .add(control);
  }
}
