package daylight.report.page;

import daylight.line.answer.Evidence;
import daylight.line.book.Priors;
import daylight.line.course.Source;
import daylight.report.markup.Tag;
import java.util.Locale;
import java.util.UUID;

/** The ids on a page that an answer can be walked back to. */
public final class Anchors {
  private Anchors() {}

  /** The row of an entry among the readings. */
  public static String entry(UUID entry) {
    return "entry-" + entry;
  }

  /** The row of what is taken as usual. */
  static String prior(Priors.Kind kind) {
    return "prior-" + kind.id();
  }

  /** The row of a rule. */
  static String rule(Evidence.Rule rule) {
    String whole = rule.rules() + " " + rule.clause();
    return "rule-" + whole.toLowerCase(Locale.ROOT).replaceAll("[^\\p{Alnum}.]+", "-");
  }

  /** Where an uncertainty comes from. */
  static String of(Source source) {
    return switch (source) {
      case Source.OfEntry entry -> entry(entry.id().uuid());
      case Source.OfPrior(Priors.Kind kind) -> prior(kind);
    };
  }

  /** Leads to a place on the page. */
  static Tag link(String id, String text) {
    return link("", id, text);
  }

  /**
   * Leads to a place on a page.
   *
   * @param page its address; empty for the very page
   */
  static Tag link(String page, String id, String text) {
    return Tag.of("a", text).with("href", page + "#" + id);
  }
}
