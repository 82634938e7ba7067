package daylight.app.cli;

import daylight.line.book.Priors;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import daylight.line.sonde.LiftCheck;
import daylight.line.sonde.Lifted;
import daylight.line.sonde.Sonde;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Whether the depth shown grew by as much as the receiver was raised. */
@Command(
    name = "lift",
    mixinStandardHelpOptions = true,
    description = {
      "Whether a depth grows as the receiver is raised.",
      "",
      "Whether the depth shown grew by as much as the receiver was raised, how wrong a receiver this",
      "check could have found, and its vote for the receiver's scale. No single depth is corrected",
      "by it."
    })
final class FigureLift extends SondeFigure {
  @Option(
      names = "--shown",
      paramLabel = "LENGTH",
      description = "Depth shown with the receiver on the ground.")
  private @Nullable String shown;

  @Option(
      names = "--raised",
      paramLabel = "LENGTH",
      description = "How far it was raised; may be given several times, each with its --then.")
  private List<String> raised = new ArrayList<>();

  @Option(names = "--then", paramLabel = "LENGTH", description = "Depth it then showed.")
  private List<String> then = new ArrayList<>();

  @Option(
      names = "--give-or-take",
      paramLabel = "LENGTH",
      description = "Noise of one reading, 19 times of 20; default: what is usual.")
  private @Nullable String giveOrTake;

  @Override
  @Nullable Figured figured(Given given, Priors priors) {
    given.need("--shown", shown);
    Reading first = given.positiveLength("--shown", shown);
    Reading noise = given.positiveLength("--give-or-take", giveOrTake);
    List<Lifted> lifts = lifts(given, priors, noise);
    if (first == null || lifts.isEmpty() || !given.sound()) {
      return null;
    }
    LiftCheck check = Sonde.lift(depth(given, priors, noise, first), lifts);
    Figured figured = said(check, priors);
    if (check.verdict() != LiftCheck.Verdict.AGREES) {
      figured.contradicted();
    }
    return figured;
  }

  private static Figured said(LiftCheck check, Priors priors) {
    double distortion = priors.of(Priors.Kind.DEPTH_DISTORTION).b();
    Measured vote = check.vote(distortion);
    return new Figured("lift")
        .with("growth", new Argument.UncertainSlope(check.growth()))
        .with("chance", new Argument.Quantity(Dimension.SHARE, Math.min(1, check.chance())))
        .with("detectable", new Argument.Quantity(Dimension.SLOPE, check.detectable()))
        .with("vote", new Argument.UncertainSlope(vote))
        .saying(check.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }

  private List<Lifted> lifts(Given given, Priors priors, @Nullable Reading noise) {
    if (raised.isEmpty()) {
      given.complain("--raised", "cli.option.needed");
    }
    if (raised.size() != then.size()) {
      given.complain(
          "--then",
          "figure.lift.pairs",
          new Argument.Number(raised.size()),
          new Argument.Number(then.size()));
    }
    List<Lifted> lifts = new ArrayList<>();
    for (int i = 0; i < Math.max(raised.size(), then.size()); i++) {
      Reading by = i < raised.size() ? given.positiveLength("--raised", raised.get(i)) : null;
      Reading depth = i < then.size() ? given.positiveLength("--then", then.get(i)) : null;
      if (by != null && depth != null) {
        Measured height = new Measured(by.value(), priors.sd(Priors.Kind.TAPE, by));
        lifts.add(new Lifted(height, depth(given, priors, noise, depth)));
      }
    }
    return lifts;
  }

  private static Measured depth(
      Given given, Priors priors, @Nullable Reading noise, Reading depth) {
    return new Measured(
        depth.value(), given.sd(noise, priors.sd(Priors.Kind.DEPTH_READING, depth.value())));
  }
}
