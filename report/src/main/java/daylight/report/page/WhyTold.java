package daylight.report.page;

import daylight.line.answer.Answer;
import daylight.line.answer.NextBest;
import daylight.line.answer.Why;
import daylight.line.book.Place;
import daylight.line.course.Contribution;
import daylight.line.course.Source;
import daylight.line.course.Wanted;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.words.SourceWords;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Why a figure is as sure as it is: what its doubt comes from, each share a bar and a number that
 * lead to the reading, and what would make it surer.
 */
public final class WhyTold {
  /** What has less than this of the doubt is told together. */
  private static final double LEAST_SHARE = 0.01;

  /** What has less than this of the doubt is only counted. */
  private static final double COUNTED = 0.005;

  private static final double WHOLE = 100;

  private final Subject subject;
  private final String readings;
  private final Words words;
  private final SourceWords sources;

  /**
   * @param readings address of the page that tells the readings; empty for the very page
   */
  WhyTold(Subject subject, String readings) {
    this.readings = readings;
    this.subject = subject;
    this.words = subject.words();
    this.sources = new SourceWords(words);
  }

  /** What folds out under an answer; empty where it turns on no figure of the line. */
  Optional<Tag> of(String line, Answer answer) {
    Wanted leading = answer.leading();
    return leading == null
        ? Optional.empty()
        : Why.of(subject.line(), new Why.Of.OfAnswer(line, answer.question()), leading)
            .map(why -> folded(why, words.say("why.of_answer", new Argument.Text(figure(why)))));
  }

  /** A figure that folds out. */
  Tag folded(Why why, String heading) {
    return Tag.of("details")
        .with("class", "why")
        .add(Tag.of("summary", heading))
        .add(shares(why))
        .addAll(next(why).map(text -> List.of(Tag.of("p", text))).orElse(List.of()));
  }

  /** The figure in words, with its doubt. */
  String figure(Why why) {
    return switch (why.figure()) {
      case Wanted.Across(Place at) -> within("why.across", at, why.now());
      case Wanted.Widest(Place at) -> within("why.widest", at, why.now());
      case Wanted.Depth(Place at) ->
          words.say("why.depth", at(at), new Argument.UncertainLength(why.now()));
      case Wanted.Fall(Place from, Place to) ->
          words.say("why.fall", at(from), at(to), new Argument.UncertainLength(why.now()));
      case Wanted.Length(String reach) ->
          words.say(
              "why.length", new Argument.Label(reach), new Argument.UncertainLength(why.now()));
    };
  }

  private String within(String key, Place at, Measured now) {
    return words.say(key, at(at), doubt(now.sd()));
  }

  private Argument at(Place place) {
    return new Argument.Text(subject.distance(place));
  }

  /** Half of the 95 % interval. */
  private static Argument doubt(double sd) {
    return new Argument.Length(Measured.Z95 * sd);
  }

  private Tag shares(Why why) {
    Tag list = Tag.of("ul").with("class", "shares");
    List<Contribution> rest = new ArrayList<>();
    for (Contribution one : why.rests()) {
      if (one.share() >= LEAST_SHARE) {
        list.add(share(one));
      } else {
        rest.add(one);
      }
    }
    return rest.isEmpty() ? list : list.add(rest(rest));
  }

  private Tag share(Contribution one) {
    return Tag.of("li").add(link(one.source()), number(one.share()), bar(one));
  }

  private Tag link(Source source) {
    return Anchors.link(
        readings,
        Anchors.of(source),
        source.assumed()
            ? words.say("why.assumed", new Argument.Text(sources.say(source)))
            : Words.capitalised(sources.say(source)));
  }

  private Tag number(double share) {
    return Tag.of("span", words.figure(new Argument.Quantity(Dimension.SHARE, share)))
        .with("class", "share-of");
  }

  /**
   * As long as the share is of the whole; what was assumed is drawn otherwise than what was read.
   */
  private static Tag bar(Contribution one) {
    Tag bar =
        Tag.of("meter")
            .with("max", WHOLE)
            .with("value", Math.rint(one.share() * WHOLE * 10) / 10)
            .with("aria-hidden", "true");
    return one.assumed() ? bar.with("class", "assumed") : bar;
  }

  private Tag rest(List<Contribution> rest) {
    double share = rest.stream().mapToDouble(Contribution::share).sum();
    Tag list = Tag.of("ul").with("class", "rest");
    rest.stream()
        .filter(one -> one.share() >= COUNTED)
        .forEach(one -> list.add(Tag.of("li").add(link(one.source()))));
    long least = rest.stream().filter(one -> one.share() < COUNTED).count();
    if (least > 0) {
      list.add(Tag.of("li", words.say("why.least", new Argument.Count(least))));
    }
    return Tag.of("li")
        .add(
            Tag.of("details")
                .with("class", "rest-of")
                .add(
                    Tag.of(
                        "summary",
                        words.say(
                            "why.rest",
                            new Argument.Count(rest.size()),
                            new Argument.Quantity(Dimension.SHARE, share))))
                .add(list));
  }

  /** What the best further measurement would change. */
  private Optional<String> next(Why why) {
    NextBest.Option best = why.best();
    if (best == null) {
      return Optional.of(words.word("why.next.none"));
    }
    String key =
        switch (best.kind()) {
          case LOCATE -> "why.next.locate";
          case LEVEL -> "why.next.level";
          case PROBE -> "why.next.probe";
        };
    return Optional.of(
        words.say(
            key,
            at(best.extra().place()),
            new Argument.Quantity(Dimension.DURATION, best.kind().minutes() * 60),
            doubt(why.now().sd()),
            doubt(best.then())));
  }
}
