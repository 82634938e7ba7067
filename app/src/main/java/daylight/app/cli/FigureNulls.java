package daylight.app.cli;

import daylight.line.book.Priors;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import daylight.line.sonde.NoDipole;
import daylight.line.sonde.NullFix;
import daylight.line.sonde.NullMarks;
import daylight.line.sonde.Sonde;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Depth of the transmitter from where the receiver falls silent along the pipe. */
@Command(
    name = "nulls",
    mixinStandardHelpOptions = true,
    description = {
      "Depth of the transmitter from where the receiver falls silent.",
      "",
      "How deep the transmitter is below the receiver's antenna, from the two places along the pipe",
      "where the receiver, its antenna along the pipe, falls silent: before the transmitter and",
      "beyond it. Give their spacing, or how far each lies from where the upright antenna falls",
      "silent, which also tells where the transmitter is and how it is tilted."
    })
final class FigureNulls extends SondeFigure {
  @Option(
      names = "--spacing",
      paramLabel = "LENGTH",
      description = "From null to null, along the pipe.")
  private @Nullable String spacing;

  @Option(
      names = "--before",
      paramLabel = "LENGTH",
      description = "Back from the mark (where the upright antenna is silent) to the first null.")
  private @Nullable String before;

  @Option(
      names = "--after",
      paramLabel = "LENGTH",
      description = "On from that mark to the second null.")
  private @Nullable String after;

  @Option(
      names = "--beside",
      paramLabel = "LENGTH",
      description = "How far beside the pipe you walked; default: over it.")
  private @Nullable String beside;

  @Option(
      names = "--give-or-take",
      paramLabel = "LENGTH",
      description = "How far off a mark may be, 19 times of 20; default: what is usual.")
  private @Nullable String giveOrTake;

  @Option(
      names = "--tilt",
      paramLabel = "ANGLE",
      description = "Tilt of the transmitter, nose up the way you walked; default: 0.")
  private @Nullable String tilt;

  @Option(
      names = "--tilt-give-or-take",
      paramLabel = "ANGLE",
      description = "How far off that may be, 19 times of 20; default: what is usual in a pipe.")
  private @Nullable String tiltGiveOrTake;

  @Override
  @Nullable Figured figured(Given given, Priors priors) {
    Measured believed = believed(given, priors);
    NullMarks marks = marks(given, priors);
    if (marks == null || !given.sound()) {
      return null;
    }
    Figured figured = new Figured("nulls");
    switch (Sonde.nulls(marks, believed)) {
      case NullFix fix -> say(figured, fix, marks, believed);
      case NoDipole no ->
          figured
              .saying(
                  no.reason().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                  new Argument.Length(no.excess()))
              .contradicted();
    }
    return figured;
  }

  private static void say(Figured figured, NullFix fix, NullMarks marks, Measured believed) {
    figured.with("depth", new Argument.UncertainLength(fix.depth()));
    if (marks.over() != null) {
      figured
          .with("tilt", new Argument.UncertainAngle(fix.tilt()))
          .with("position", new Argument.UncertainLength(fix.position()));
      if (Sonde.nullsAlone(marks) instanceof NullFix alone) {
        figured.with("tilt-alone", new Argument.UncertainAngle(alone.tilt()));
      }
    }
    Measured level = Sonde.level(marks.spacing());
    double most = StrictMath.abs(believed.value()) + Measured.Z95 * believed.sd();
    double over = Sonde.overReadByTilt(StrictMath.min(most, StrictMath.toRadians(85))) - 1;
    figured
        .with("level", new Argument.UncertainLength(level))
        .saying(
            "over-read",
            new Argument.Quantity(Dimension.ANGLE, most),
            new Argument.Length(level.value() * over / (1 + over)));
  }

  private Measured believed(Given given, Priors priors) {
    Reading at = given.quantity(Dimension.ANGLE, "--tilt", tilt);
    Reading width =
        given.positive(
            "--tilt-give-or-take",
            given.quantity(Dimension.ANGLE, "--tilt-give-or-take", tiltGiveOrTake));
    double value = at == null ? 0 : at.value();
    if (!(StrictMath.abs(value) < StrictMath.toRadians(80))) {
      given.complain("--tilt", "figure.nulls.too-steep", new Argument.Text(String.valueOf(tilt)));
    }
    return new Measured(value, given.sd(width, priors.sd(Priors.Kind.SONDE_TILT, 0)));
  }

  private @Nullable NullMarks marks(Given given, Priors priors) {
    Reading apart = given.positiveLength("--spacing", spacing);
    Reading back = given.positiveLength("--before", before);
    Reading on = given.positiveLength("--after", after);
    Reading aside = given.length("--beside", beside);
    Reading off = given.positiveLength("--give-or-take", giveOrTake);
    if (spacing != null && (before != null || after != null)) {
      given.complain("--spacing", "figure.nulls.either");
    } else if (spacing == null) {
      if (before == null && after == null) {
        given.complain("--spacing", "figure.nulls.needed");
      } else {
        given.need("--before", before);
        given.need("--after", after);
      }
    }
    double first = apart != null ? 0 : back != null ? -back.value() : 0;
    double second = apart != null ? apart.value() : on != null ? on.value() : 0;
    if (!(first < second)) {
      return null;
    }
    double level = Sonde.level(new Measured(second - first, 1)).value();
    double sd = given.sd(off, priors.sd(Priors.Kind.NULL_MARK, level));
    return new NullMarks(
        new Measured(first, sd),
        new Measured(second, sd),
        apart == null ? new Measured(0, sd) : null,
        aside == null ? null : new Measured(aside.value(), sd));
  }
}
