package daylight.app.cli;

import daylight.archive.Bundled;
import daylight.archive.DataReader;
import daylight.line.book.Priors;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import daylight.line.proving.Hold;
import daylight.line.proving.HoldLimits;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What a hold test lost, and what published limits say to that. */
@Command(
    name = "leak",
    mixinStandardHelpOptions = true,
    description = {
      "What a plugged and filled pipe lost, and what published limits say to that.",
      "",
      "From the drop of the level in a riser, or from what was topped up, over the time it was held:",
      "the water lost a day with its doubt, and for each limit by itself whether it passes, fails or",
      "is too close to say, how likely, and what would tell. The limits are for new work. Leaves with",
      "1 where by the first limit it neither passes nor fails."
    })
final class FigureLeak extends SondeFigure {
  @Option(
      names = "--drop",
      paramLabel = "LENGTH",
      description = "How far the level fell in the riser; 0 in where no drop could be read.")
  private @Nullable String drop;

  @Option(
      names = "--riser",
      paramLabel = "LENGTH",
      description = "Inside diameter of the riser in which the level was read.")
  private @Nullable String riser;

  @Option(
      names = "--topped-up",
      paramLabel = "VOLUME",
      description = "What was poured in to bring the level back, in place of --drop and --riser.")
  private @Nullable String toppedUp;

  @Option(names = "--over", paramLabel = "TIME", description = "How long it was held.")
  private @Nullable String over;

  @Option(names = "--bore", paramLabel = "LENGTH", description = "Inside diameter of the pipe.")
  private @Nullable String bore;

  @Option(names = "--length", paramLabel = "LENGTH", description = "Length of pipe held full.")
  private @Nullable String length;

  @Option(
      names = "--head",
      paramLabel = "LENGTH",
      description = "Water above the top of the highest pipe held, at the start.")
  private @Nullable String head;

  @Option(
      names = "--give-or-take",
      paramLabel = "SIZE",
      description = "How far off the drop or the topped-up water may be, 19 times of 20.")
  private @Nullable String giveOrTake;

  @Option(
      names = "--length-give-or-take",
      paramLabel = "LENGTH",
      description = "How far off the length may be, 19 times of 20.")
  private @Nullable String lengthOff;

  @Option(
      names = "--hold-limits",
      paramLabel = "FILE",
      description = "Limits of your own in place of those of Daylight.")
  private @Nullable Path limits;

  @Override
  @Nullable Figured figured(Given given, Priors priors) {
    HoldLimits held =
        limits == null
            ? Bundled.holdLimits()
            : FigureChoices.taken(
                given, "--hold-limits", DataReader.holdLimits(limits), Bundled.holdLimits());
    Hold.Loss loss = loss(given, priors);
    given.need("--over", over);
    Reading time = given.positive("--over", given.quantity(Dimension.DURATION, "--over", over));
    Measured stretch = stretch(given, priors);
    Reading above = given.lengthFromZero("--head", head);
    if (loss == null || time == null || !given.sound()) {
      return null;
    }
    Measured duration = new Measured(time.value(), priors.sd(Priors.Kind.WATCH, time));
    Hold hold = new Hold(loss, duration, stretch, above == null ? null : above.value());
    return new LeakTold(hold, held, giveOrTake == null || lengthOff == null).figured();
  }

  private Hold.@Nullable Loss loss(Given given, Priors priors) {
    boolean level = drop != null || riser != null;
    if (level == (toppedUp != null)) {
      given.complain(level ? "--topped-up" : "--drop", "figure.leak.one-loss");
    }
    if (level) {
      given.need("--drop", drop);
      given.need("--riser", riser);
    }
    Dimension sort = level ? Dimension.LENGTH : Dimension.VOLUME;
    Reading off =
        given.positive("--give-or-take", given.quantity(sort, "--give-or-take", giveOrTake));
    Reading inside = given.positiveLength("--riser", riser);
    Reading fell = given.length("--drop", drop);
    Reading volume = given.quantity(Dimension.VOLUME, "--topped-up", toppedUp);
    if (fell != null && fell.value() < 0) {
      given.complain("--drop", "figure.leak.gains", Given.text(fell.written()));
    }
    if (volume != null) {
      double usual = priors.sd(Priors.Kind.VOLUME, volume);
      return new Hold.Loss.ToppedUp(new Measured(volume.value(), given.sd(off, usual)));
    }
    if (fell == null || inside == null) {
      return null;
    }
    double usual = priors.sd(Priors.Kind.WATER_DROP, fell);
    return new Hold.Loss.Drop(
        new Measured(fell.value(), given.sd(off, usual)),
        new Measured(inside.value(), priors.sd(Priors.Kind.BORE, inside)));
  }

  /** Bore times length; null where neither is given. One without the other is complained of. */
  private @Nullable Measured stretch(Given given, Priors priors) {
    if ((bore == null) != (length == null)) {
      given.need("--bore", bore);
      given.need("--length", length);
    }
    Reading inside = given.positiveLength("--bore", bore);
    Reading along = given.positiveLength("--length", length);
    Reading off = given.positiveLength("--length-give-or-take", lengthOff);
    if (inside == null || along == null) {
      return null;
    }
    double alongSd = given.sd(off, priors.sd(Priors.Kind.TAPE, along));
    double boreSd = priors.sd(Priors.Kind.BORE, inside);
    return new Measured(
        inside.value() * along.value(),
        StrictMath.hypot(along.value() * boreSd, inside.value() * alongSd));
  }
}
