package daylight.report.words;

import daylight.line.answer.Evidence;
import daylight.line.book.Place;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import java.util.function.Function;

/**
 * Says what an answer rests on.
 *
 * @param place says where a place is
 */
public record EvidenceWords(Words words, Function<Place, String> place) {

  /** One piece of evidence as a line of text. */
  public String say(Evidence evidence) {
    return Words.capitalised(
        switch (evidence) {
          case Evidence.Figure figure -> figure(figure);
          case Evidence.Seen seen -> seen(seen);
          case Evidence.Noted noted ->
              words.say("evidence.noted", new Argument.Label(noted.entry().label()), noted.what());
          case Evidence.Rule rule ->
              words.say(
                  "evidence.rule",
                  new Argument.Text(rule.rules()),
                  new Argument.Text(rule.clause()),
                  rule.limit());
        });
  }

  private String figure(Evidence.Figure figure) {
    Argument what = new Argument.Text(words.word(figure.what()));
    Place at = figure.at();
    return at == null
        ? words.say("evidence.figure", what, figure.figure())
        : words.say(
            "evidence.figure_at", what, new Argument.Text(place.apply(at)), figure.figure());
  }

  private String seen(Evidence.Seen seen) {
    Argument kind = new Argument.Text(words.kind(seen.kind()));
    Argument label = new Argument.Label(seen.finding());
    Argument at = new Argument.Text(place.apply(seen.at()));
    Argument size = seen.size();
    return size == null
        ? words.say("evidence.seen", kind, label, at)
        : words.say("evidence.seen_size", kind, label, at, small(size));
  }

  /** Sizes of findings are of the order of a pipe's wall, not of a yard. */
  private static Argument small(Argument size) {
    return size instanceof Argument.Quantity(Dimension dimension, double metres)
            && dimension == Dimension.LENGTH
            && metres >= 0
        ? new Argument.Small(metres)
        : size;
  }
}
