package daylight.app.cli;

import daylight.line.book.Place;
import daylight.line.book.Reach;
import daylight.line.course.Line;
import daylight.line.course.Run;
import daylight.line.fall.FallLimit;
import daylight.line.fall.FallStretch;
import daylight.line.fall.Faller;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Mark;
import daylight.report.Handout;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** How a pipe falls between two places of one reach. */
@Command(
    name = "fall",
    mixinStandardHelpOptions = true,
    description = {
      "How far and how steeply a pipe falls from one place of a reach to another, how likely it is",
      "flatter than the rule for new work asks, and how likely it runs against the water. Leaves with 1",
      "where nothing tells heights there."
    })
final class FigureFall extends BookFigure {
  @Option(
      names = "--to",
      paramLabel = "PLACE",
      description = "Where it ends, downstream, on the same reach.")
  private @Nullable String to;

  @Override
  void read(Given given) {
    given.need("--to", to);
  }

  @Override
  @Nullable Figured figured(Given given, Handout handout) {
    Line line = handout.line();
    String end = to == null ? "" : to;
    Optional<Place> from = at(given, line).map(PlaceWritten::place);
    Optional<Place> until = PlaceWritten.of(given, line, "--to", end).map(PlaceWritten::place);
    if (from.isEmpty() || until.isEmpty()) {
      return null;
    }
    double length = until.get().distance() - from.get().distance();
    if (!from.get().reach().equals(until.get().reach()) || length <= 0) {
      given.complain("--to", "figure.fall.not-downstream", Given.text(end));
      return null;
    }
    Figured figured = new Figured("fall");
    Optional<FallStretch> fall =
        Faller.between(line, from.get(), until.get(), handout.rules().fall());
    if (fall.isEmpty()) {
      return figured.saying("not-known").contradicted();
    }
    FallStretch stretch = fall.get();
    figured.with("drop", new Argument.UncertainLength(stretch.drop()), new Argument.Length(length));
    figured.with("slope", new Argument.UncertainSlope(stretch.slope()));
    Reach reach = line.findRun(from.get().reach()).map(Run::reach).orElseThrow();
    rule(figured, handout, reach, stretch);
    if (reach.water() instanceof Reach.Water.Unknown) {
      figured.saying("which-way");
    } else {
      figured.with("adverse", new Argument.Probability(stretch.adverse()));
    }
    return figured;
  }

  private static void rule(Figured figured, Handout handout, Reach reach, FallStretch stretch) {
    FallLimit limit = stretch.limit();
    Double below = stretch.belowLimit();
    if (limit == null || below == null) {
      figured.saying(reach.bore() == null ? "no-bore" : "no-rule");
      return;
    }
    figured.with(
        "below",
        new Argument.Probability(below),
        new Argument.Quantity(Dimension.SLOPE, limit.slope()),
        new Argument.Text(handout.rules().fall().title()));
    if (limit.mark() == Mark.FROM_MEMORY) {
      figured.saying("from-memory");
    }
    figured.saying("new-work");
  }
}
