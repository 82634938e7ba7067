package daylight.app.cli;

import daylight.line.book.Priors;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import daylight.line.sonde.Sonde;
import daylight.line.sonde.TwoHeights;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Depth from the strengths at two heights. */
@Command(
    name = "heights",
    mixinStandardHelpOptions = true,
    description = {
      "Depth of the transmitter from strengths at two heights.",
      "",
      "How deep the transmitter is below the lower of two antennas, or of two heights of one, right",
      "over it: its field falls with the cube of the distance, however it is tilted."
    })
final class FigureHeights extends SondeFigure {
  private static final double LARGEST = 1e9;
  private static final double SMALLEST = 1e-9;
  private static final double MOST_DECIBELS = 120;

  @Option(
      names = "--low",
      paramLabel = "STRENGTH",
      description = "Strength at the lower antenna, in any unit.")
  private @Nullable String low;

  @Option(
      names = "--high",
      paramLabel = "STRENGTH",
      description = "Strength at the upper antenna, in the same unit.")
  private @Nullable String high;

  @Option(
      names = "--decibels",
      paramLabel = "DB",
      description = "Instead of both: by how many decibels the lower is stronger.")
  private @Nullable String decibels;

  @Option(names = "--apart", paramLabel = "LENGTH", description = "How far one is above the other.")
  private @Nullable String apart;

  @Option(
      names = "--give-or-take",
      paramLabel = "SHARE",
      description = "How far off a strength may be, 19 times of 20: 4 %%; default: what is usual.")
  private @Nullable String giveOrTake;

  @Override
  @Nullable Figured figured(Given given, Priors priors) {
    given.need("--apart", apart);
    Reading spacing = given.positiveLength("--apart", apart);
    Double ratio = ratio(given);
    Reading share =
        given.positive(
            "--give-or-take", given.quantity(Dimension.SHARE, "--give-or-take", giveOrTake));
    if (spacing == null || ratio == null || !given.sound()) {
      return null;
    }
    double relative = given.sd(share, priors.sd(Priors.Kind.SIGNAL, 0));
    Measured tape = new Measured(spacing.value(), priors.sd(Priors.Kind.TAPE, spacing));
    TwoHeights told =
        Sonde.heights(new Measured(ratio, relative * ratio), new Measured(1, relative), tape);
    return said(told);
  }

  private static Figured said(TwoHeights told) {
    Figured figured = new Figured("heights");
    switch (told) {
      case TwoHeights.Depth depth -> {
        figured.with("depth", new Argument.UncertainLength(depth.depth()));
        if (depth.upper95().isPresent()) {
          figured
              .with(
                  "from",
                  new Argument.Length(depth.lower95()),
                  new Argument.Length(depth.upper95().getAsDouble()))
              .with("to", new Argument.Length(depth.upper95().getAsDouble()));
        } else {
          figured.with("from-only", new Argument.Length(depth.lower95()));
        }
        figured.with("as-cable", new Argument.Length(depth.asCable()));
      }
      case TwoHeights.NotBelow _ -> figured.saying("not-below").contradicted();
    }
    return figured;
  }

  private @Nullable Double ratio(Given given) {
    if (decibels != null) {
      if (low != null || high != null) {
        given.complain("--decibels", "figure.heights.either");
      }
      Double db = given.number("--decibels", decibels, -MOST_DECIBELS, MOST_DECIBELS);
      return db == null ? null : (Double) StrictMath.pow(10, db / 20);
    }
    given.need("--low", low);
    given.need("--high", high);
    Double below = given.number("--low", low, SMALLEST, LARGEST);
    Double above = given.number("--high", high, SMALLEST, LARGEST);
    return below == null || above == null ? null : (Double) (below / above);
  }
}
