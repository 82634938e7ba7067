package daylight.app.cli;

import daylight.line.answer.NextBest;
import daylight.line.book.Place;
import daylight.line.course.Line;
import daylight.line.course.Wanted;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import daylight.report.Handout;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Which measurement to make next, before the van leaves. */
@Command(
    name = "next",
    mixinStandardHelpOptions = true,
    description = {
      "Which one measurement more would tell most about a figure of a line: its depth or its place",
      "at a spot, or its fall between two. One of each kind is told, the one that tells most for its",
      "minutes first. Leaves with 1 where the figure is not known at all."
    })
final class FigureNext extends BookFigure {
  /** What is to be known better. */
  enum About {
    depth,
    place,
    fall
  }

  @Option(
      names = "--about",
      paramLabel = "FIGURE",
      description = "What to know better: ${COMPLETION-CANDIDATES}; default: depth.")
  private About about = About.depth;

  @Option(
      names = "--to",
      paramLabel = "PLACE",
      description = "For a fall: where it ends, downstream.")
  private @Nullable String to;

  @Override
  void read(Given given) {
    if (about == About.fall) {
      given.need("--to", to);
    }
  }

  @Override
  @Nullable Figured figured(Given given, Handout handout) {
    Line line = handout.line();
    Optional<Place> from = at(given, line).map(PlaceWritten::place);
    String end = to;
    Optional<Place> until =
        end == null ? from : PlaceWritten.of(given, line, "--to", end).map(PlaceWritten::place);
    if (from.isEmpty() || until.isEmpty()) {
      return null;
    }
    Wanted wanted =
        switch (about) {
          case depth -> new Wanted.Depth(from.get());
          case place -> new Wanted.Across(from.get());
          case fall -> new Wanted.Fall(from.get(), until.get());
        };
    Figured figured = new Figured("next");
    Optional<Measured> now = line.now(wanted);
    if (now.isEmpty()) {
      return figured.saying("not-known").contradicted();
    }
    figured.with(about.name(), told(now.get()));
    List<NextBest.Option> options = NextBest.of(line, wanted);
    for (NextBest.Option option : options) {
      Measured then = new Measured(now.get().value(), option.then());
      figured.with(
          option.kind().name().toLowerCase(Locale.ROOT),
          told(then),
          new Argument.Label(option.extra().place().reach()),
          new Argument.Length(option.extra().place().distance()),
          new Argument.Quantity(Dimension.DURATION, 60 * option.kind().minutes()));
    }
    if (options.isEmpty()) {
      figured.saying("nothing-helps");
    }
    return figured;
  }

  /** A place has no size of its own: what counts is how far to either side it may be. */
  private Argument told(Measured figure) {
    return about == About.place
        ? new Argument.Length(Measured.Z95 * figure.sd())
        : new Argument.UncertainLength(figure);
  }
}
