package daylight.report.words;

import daylight.line.book.Priors;
import daylight.line.course.Source;
import daylight.line.measure.Argument;
import java.util.Locale;

/** Says what an uncertainty comes from. */
public record SourceWords(Words words) {

  /** A reading of an entry, or what was assumed. */
  public String say(Source source) {
    return switch (source) {
      case Source.OfEntry entry ->
          words.say(
              "source.entry",
              new Argument.Text(sort(entry.sort())),
              new Argument.Label(entry.id().label()),
              new Argument.Text(part(entry)));
      case Source.OfPrior(Priors.Kind kind) -> prior(kind);
    };
  }

  /** What is taken as usual. */
  public String prior(Priors.Kind kind) {
    return words.word("priors." + kind.name().toLowerCase(Locale.ROOT));
  }

  /** A sort of entry. */
  public String sort(Source.Sort sort) {
    return words.word("source.sort." + sort.name().toLowerCase(Locale.ROOT));
  }

  private String part(Source.OfEntry entry) {
    return words.word("source.part." + entry.part().name().toLowerCase(Locale.ROOT));
  }
}
