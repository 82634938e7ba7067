package daylight.app.cli;

import daylight.line.book.Place;
import daylight.line.book.Reach;
import daylight.line.course.Line;
import daylight.line.course.Run;
import daylight.line.fall.FallLimit;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
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
    Optional<Measured> drop = line.fall(from.get(), until.get());
    if (drop.isEmpty()) {
      return figured.saying("not-known").contradicted();
    }
    Measured slope = drop.get().times(1 / length);
    figured.with("drop", new Argument.UncertainLength(drop.get()), new Argument.Length(length));
    figured.with("slope", new Argument.UncertainSlope(slope));
    Reach reach = line.findRun(from.get().reach()).map(Run::reach).orElseThrow();
    rule(figured, handout, reach, slope);
    if (reach.water() instanceof Reach.Water.Unknown) {
      figured.saying("which-way");
    } else {
      figured.with("adverse", new Argument.Probability(slope.probabilityBelow(0)));
    }
    return figured;
  }

  private static void rule(Figured figured, Handout handout, Reach reach, Measured slope) {
    Reading bore = reach.bore();
    Optional<FallLimit> limit =
        handout.rules().fall().limit(bore == null ? null : bore.value(), reach.use());
    if (limit.isEmpty()) {
      figured.saying(bore == null ? "no-bore" : "no-rule");
      return;
    }
    figured.with(
        "below",
        new Argument.Probability(slope.probabilityBelow(limit.get().slope())),
        new Argument.Quantity(Dimension.SLOPE, limit.get().slope()),
        new Argument.Text(handout.rules().fall().title()));
    figured.saying("new-work");
  }
}
