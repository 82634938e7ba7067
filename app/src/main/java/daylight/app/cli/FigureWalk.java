package daylight.app.cli;

import daylight.line.book.Priors;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Reading;
import daylight.line.sonde.Dipole;
import daylight.line.sonde.Sonde;
import daylight.line.sonde.WalkFix;
import daylight.line.sonde.WalkRefused;
import daylight.line.sonde.Walked;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The transmitter from strengths walked all about it. */
@Command(
    name = "walk",
    mixinStandardHelpOptions = true,
    description = {
      "The transmitter from strengths walked all about it.",
      "",
      "Where the transmitter is, how deep and which way it lies, from strengths read at many places",
      "about it. FILE is a table with a head, its columns parted by commas, semicolons or tabs:",
      "",
      "  x, y        the place: to the right and ahead of a spot of your own, with units in each",
      "              cell or in the head, as x (ft)",
      "  height      of the antenna above the ground; default: on it",
      "  whole       strength of the whole field, whatever way the receiver is held",
      "  upright     strength by an upright antenna",
      "  level       strength by a level antenna that points to the bearing in column bearing,",
      "              in degrees clockwise from ahead",
      "  bx, by, bz  all three parts with their signs against each other",
      "",
      "A row holds any of these strengths; empty cells were not read. Lines that begin with # are",
      "left out."
    })
final class FigureWalk extends SondeFigure {
  /** The noise of silence, as a share of the noise of the loudest strength; common practice. */
  private static final double FLOOR = 0.2;

  /** More left than this by chance is no longer called a fit. */
  private static final double RARE = 0.01;

  @Parameters(paramLabel = "FILE", description = "The table of readings.")
  private Path file = Path.of("");

  @Option(
      names = "--give-or-take",
      paramLabel = "SHARE",
      description = "How far off a strength may be, 19 times of 20: 4 %%; default: what is usual.")
  private @Nullable String giveOrTake;

  @Override
  @Nullable Figured figured(Given given, Priors priors) {
    Reading share =
        given.positive(
            "--give-or-take", given.quantity(Dimension.SHARE, "--give-or-take", giveOrTake));
    double relative = given.sd(share, priors.sd(Priors.Kind.SIGNAL, 0));
    List<Walked> readings = new WalkFile(file, given).read(relative, FLOOR * relative);
    if (!given.sound()) {
      return null;
    }
    Figured figured = new Figured("walk");
    switch (Sonde.walk(readings)) {
      case WalkRefused no ->
          figured
              .saying(
                  no.reason().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                  new Argument.Number(no.given()))
              .contradicted();
      case WalkFix fix -> said(figured, fix);
    }
    return figured;
  }

  private static void said(Figured figured, WalkFix fix) {
    figured
        .with("depth", new Argument.UncertainLength(fix.depth()))
        .with("x", new Argument.UncertainLength(fix.x()))
        .with("y", new Argument.UncertainLength(fix.y()))
        .with("bearing", new Argument.UncertainAngle(fix.bearing()))
        .with("tilt", new Argument.UncertainAngle(fix.tilt()))
        .with("misfit", new Argument.Number(StrictMath.rint(fix.sigmaNought() * 100) / 100));
    if (fix.chance() < RARE) {
      figured.saying("poor-fit").contradicted();
    }
    if (StrictMath.abs(fix.sonde().tilt()) > StrictMath.toRadians(60)) {
      figured.saying("upright");
    }
    Dipole other = fix.other();
    if (other != null) {
      figured
          .saying(
              "other",
              new Argument.Length(other.x()),
              new Argument.Length(other.y()),
              new Argument.Length(other.depth()))
          .contradicted();
    }
  }
}
