package daylight.report.page;

import daylight.line.answer.Evidence;
import daylight.line.book.Priors;
import daylight.line.course.Source;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.words.SourceWords;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** The rules that answers were held against, and what was taken as usual, each with its source. */
public final class RulesUsed {
  /** What stands for a source in the table of priors where there is none. */
  private static final String NO_SOURCE = "common-practice";

  private final Words words;
  private final Subject subject;
  private final Map<String, Evidence.Rule> rules = new LinkedHashMap<>();
  private final Set<Priors.Kind> priors = new TreeSet<>();

  /** Those that figures and answers lead to. */
  public RulesUsed(Subject subject, WhyList why) {
    this.subject = subject;
    this.words = subject.words();
    for (Evidence evidence : why.evidence()) {
      if (evidence instanceof Evidence.Rule rule) {
        rules.putIfAbsent(Anchors.rule(rule), rule);
      }
    }
    for (Source source : why.sources()) {
      if (source instanceof Source.OfPrior(Priors.Kind kind)) {
        priors.add(kind);
      }
    }
  }

  /** A table of each; none where there is neither. */
  public List<Tag> told() {
    List<Tag> told = new ArrayList<>();
    if (!rules.isEmpty()) {
      told.add(
          table(
              "rules.rules",
              List.of("column.rule", "column.limit", "column.source"),
              rules.entrySet().stream().map(one -> row(one.getKey(), one.getValue())).toList()));
    }
    if (!priors.isEmpty()) {
      told.add(
          table(
              "rules.priors",
              List.of("column.usual", "column.doubt", "column.source"),
              priors.stream().map(this::row).toList()));
    }
    return told;
  }

  private Tag table(String caption, List<String> heads, List<Tag> rows) {
    Tag head = Tag.of("tr");
    heads.forEach(one -> head.add(Tag.of("th", words.word(one)).with("scope", "col")));
    return Tag.of("table")
        .with("class", "readings")
        .add(Tag.of("caption", words.word(caption)))
        .add(Tag.of("thead").add(head))
        .add(Tag.of("tbody").addAll(rows));
  }

  private Tag row(String id, Evidence.Rule rule) {
    return Tag.of("tr")
        .with("id", id)
        .add(Tag.of("th", rule.rules() + ", " + rule.clause()).with("scope", "row"))
        .add(cell("column.limit", words.figure(rule.limit())))
        .add(cell("column.source", rule.source()));
  }

  private Tag row(Priors.Kind kind) {
    Priors.Prior prior = subject.rules().priors().of(kind);
    return Tag.of("tr")
        .with("id", Anchors.prior(kind))
        .add(
            Tag.of("th", Words.capitalised(new SourceWords(words).prior(kind)))
                .with("scope", "row"))
        .add(cell("column.doubt", doubt(prior)))
        .add(
            cell(
                "column.source",
                words.word("mark." + prior.mark().name().toLowerCase(Locale.ROOT))
                    + (prior.source().equals(NO_SOURCE) ? "" : "; " + prior.source())));
  }

  /** Its standard uncertainty, with the part that grows with what is measured. */
  private String doubt(Priors.Prior prior) {
    Argument flat = flat(prior);
    Argument grows = new Argument.Number(Math.rint(prior.b() * 10_000) / 100);
    return prior.b() == 0
        ? words.say("rules.flat", flat)
        : prior.a() == 0 ? words.say("rules.grows", grows) : words.say("rules.both", flat, grows);
  }

  /** The part that does not grow, in the unit of its measurement. */
  private static Argument flat(Priors.Prior prior) {
    return switch (prior.kind()) {
      case BEARING,
          ANGLE,
          BEND_ANGLE,
          STRAIGHT_RIGID,
          STRAIGHT_FLEXIBLE,
          GRADE_RIGID,
          GRADE_FLEXIBLE,
          JUNCTION_TURN,
          SONDE_TILT ->
          new Argument.Quantity(Dimension.ANGLE, prior.a());
      case COUNTER_SCALE, RECEIVER_SCALE, SIGNAL, SOIL_WATER, FALL ->
          new Argument.Quantity(Dimension.SHARE, prior.a());
      default -> new Argument.Small(prior.a());
    };
  }

  private Tag cell(String head, String text) {
    return Html.cell(text).with("data-label", words.word(head));
  }
}
