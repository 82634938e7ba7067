package daylight.app.cli;

import daylight.line.book.Priors;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import daylight.line.sonde.Burial;
import daylight.line.sonde.DepthShown;
import daylight.line.sonde.Sonde;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** From a depth reading to invert and cover. */
@Command(
    name = "depth",
    mixinStandardHelpOptions = true,
    description = {
      "From a depth reading to inside bottom and cover.",
      "",
      "How deep the inside bottom of the pipe and its inside top lie below the surface, from the",
      "depth that a receiver showed and what lay between the two. A depth is never good enough to",
      "dig by machine."
    })
final class FigureDepth extends SondeFigure {
  @Option(names = "--shown", paramLabel = "LENGTH", description = "Depth the receiver showed.")
  private @Nullable String shown;

  @Option(
      names = "--receiver-height",
      paramLabel = "LENGTH",
      description = "How high the receiver was held; default: it stood.")
  private @Nullable String receiverHeight;

  @Option(
      names = "--cover",
      paramLabel = "LENGTH",
      description = "Snow or mulch between receiver and surface; default: none.")
  private @Nullable String cover;

  @Option(
      names = "--paving",
      paramLabel = "LENGTH",
      description = "Thickness of the paving below the receiver; default: not asked.")
  private @Nullable String paving;

  @Option(names = "--bore", paramLabel = "LENGTH", description = "Inside diameter of the pipe.")
  private @Nullable String bore;

  @Option(
      names = "--ride",
      paramLabel = "LENGTH",
      description = "Transmitter's axis above the inside bottom; default: what is usual.")
  private @Nullable String ride;

  @Option(
      names = "--give-or-take",
      paramLabel = "LENGTH",
      description = "How far off the depth shown may be, 19 times of 20; default: what is usual.")
  private @Nullable String giveOrTake;

  @Override
  @Nullable Figured figured(Given given, Priors priors) {
    given.need("--shown", shown);
    Reading depth = given.positiveLength("--shown", shown);
    Reading off = given.positiveLength("--give-or-take", giveOrTake);
    Measured height =
        measured(
            priors, Priors.Kind.TAPE, given.lengthFromZero("--receiver-height", receiverHeight));
    Measured loose = measured(priors, Priors.Kind.TAPE, given.lengthFromZero("--cover", cover));
    Measured hard = measured(priors, Priors.Kind.TAPE, given.lengthFromZero("--paving", paving));
    Measured inside = measured(priors, Priors.Kind.BORE, given.positiveLength("--bore", bore));
    Reading riding = given.lengthFromZero("--ride", ride);
    Measured axis = priors.recordedOrTypical(Priors.Kind.SONDE_ABOVE_INVERT, riding);
    if (inside != null && axis.value() > inside.value()) {
      given.complain("--ride", "figure.depth.outside", new Argument.Bore(inside.value()));
    }
    if (depth == null || !given.sound()) {
      return null;
    }
    double usual = usual(priors, depth.value());
    Measured reading = new Measured(depth.value(), given.sd(off, usual));
    Burial burial = Sonde.buried(new DepthShown(reading, height, loose, hard, axis, inside));
    return said(burial);
  }

  /** Noise, distortion and scale together. */
  private static double usual(Priors priors, double depth) {
    double noise = priors.sd(Priors.Kind.DEPTH_READING, depth);
    double distortion = priors.sd(Priors.Kind.DEPTH_DISTORTION, depth);
    double scale = priors.sd(Priors.Kind.RECEIVER_SCALE, 0) * depth;
    return StrictMath.hypot(noise, StrictMath.hypot(distortion, scale));
  }

  private static @Nullable Measured measured(
      Priors priors, Priors.Kind kind, @Nullable Reading reading) {
    return reading == null ? null : new Measured(reading.value(), priors.sd(kind, reading));
  }

  private static Figured said(Burial burial) {
    Figured figured = new Figured("depth");
    switch (burial) {
      case Burial.NotBuried(double above) ->
          figured.saying("not-buried", new Argument.Length(above)).contradicted();
      case Burial.Buried buried -> {
        figured
            .with("sonde", new Argument.UncertainLength(buried.sonde()))
            .with("invert", new Argument.UncertainLength(buried.invert()));
        Measured crown = buried.crown();
        if (crown != null) {
          figured.with("crown", new Argument.UncertainLength(crown));
        }
        Measured soil = buried.soil();
        if (soil != null) {
          figured.with("soil", new Argument.UncertainLength(soil));
        }
        Burial.Part most = buried.parts().getFirst();
        for (Burial.Part part : buried.parts()) {
          most = part.share() > most.share() ? part : most;
        }
        figured
            .saying(
                "most",
                new Argument.Quantity(Dimension.SHARE, Math.min(1, most.share())),
                new Argument.Term(
                    "figure.depth.part." + most.name().name().toLowerCase(Locale.ROOT)))
            .saying("caution");
      }
    }
    return figured;
  }
}
