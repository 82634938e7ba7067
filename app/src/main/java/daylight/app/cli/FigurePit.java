package daylight.app.cli;

import daylight.line.book.Priors;
import daylight.line.flow.Cycle;
import daylight.line.flow.Cycles;
import daylight.line.flow.FlowInput;
import daylight.line.flow.Pit;
import daylight.line.flow.Propagated;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** How a pump comes and goes over its pit. */
@Command(
    name = "pit",
    mixinStandardHelpOptions = true,
    description = {
      "What comes into a pit, and how a pump comes and goes over it.",
      "",
      "From a timed rise with the pump off: what comes in, with its doubt. With what the pump takes out",
      "and the levels at which it starts and stops: how long it runs and rests, how often it starts,",
      "and whether it keeps up. Leaves with 1 where it does not, or only pumps its own water."
    })
final class FigurePit extends SondeFigure {
  /** How far off an area or a flow may be that was given without its doubt; common practice. */
  private static final double USUAL = 0.05;

  @Option(names = "--area", paramLabel = "AREA", description = "Of the pit, seen from above.")
  private @Nullable String area;

  @Option(
      names = "--across",
      paramLabel = "LENGTH",
      description = "Diameter of a round pit, in place of --area.")
  private @Nullable String across;

  @Option(
      names = "--rise",
      paramLabel = "LENGTH",
      description = "How far the water rose with the pump off; with --over.")
  private @Nullable String rise;

  @Option(names = "--over", paramLabel = "TIME", description = "In how long it rose.")
  private @Nullable String over;

  @Option(
      names = "--inflow",
      paramLabel = "FLOW",
      description = "What comes in, in place of --rise and --over.")
  private @Nullable String inflow;

  @Option(names = "--pump", paramLabel = "FLOW", description = "What the pump takes out.")
  private @Nullable String pump;

  @Option(
      names = "--pump-give-or-take",
      paramLabel = "FLOW",
      description = "How far off that may be, 19 times of 20.")
  private @Nullable String pumpOff;

  @Option(
      names = "--start",
      paramLabel = "LENGTH",
      description = "Water above the floor at which the pump starts.")
  private @Nullable String start;

  @Option(
      names = "--stop",
      paramLabel = "LENGTH",
      description = "Water above the floor at which it stops.")
  private @Nullable String stop;

  @Option(
      names = "--runs-back",
      paramLabel = "VOLUME",
      description = "What runs back out of the pipe when it stops; default: nothing.")
  private @Nullable String runsBack;

  @Override
  @Nullable Figured figured(Given given, Priors priors) {
    Measured surface = surface(given, priors);
    Propagated in = in(given, priors, surface);
    if (pump != null || start != null || stop != null) {
      given.need("--pump", pump);
      given.need("--start", start);
      given.need("--stop", stop);
    }
    Reading out = given.positive("--pump", given.quantity(Dimension.FLOW, "--pump", pump));
    Reading off =
        given.positive(
            "--pump-give-or-take", given.quantity(Dimension.FLOW, "--pump-give-or-take", pumpOff));
    Reading high = given.lengthFromZero("--start", start);
    Reading low = given.lengthFromZero("--stop", stop);
    if (high != null && low != null && !(low.value() < high.value())) {
      given.complain(
          "--stop", "figure.pit.stop", Given.text(low.written()), Given.text(high.written()));
    }
    Reading back = given.quantity(Dimension.VOLUME, "--runs-back", runsBack);
    if (surface == null || in == null || !given.sound()) {
      return null;
    }
    Figured figured = new Figured("pit");
    FlowTold told = new FlowTold(figured);
    if (rise != null) {
      told.with("inflow", Dimension.FLOW, in.value()).decides(in);
    }
    if (out != null && high != null && low != null) {
      double swing = high.value() - low.value();
      double swingOff = StrictMath.sqrt(2) * priors.sd(Priors.Kind.LEVEL, swing);
      Pit pit = new Pit(surface, new Measured(swing, swingOff), back == null ? 0 : back.value());
      Measured takes = new Measured(out.value(), given.sd(off, USUAL * out.value()));
      cycle(figured, told, Cycles.of(pit, in, Propagated.measured(FlowInput.PUMP, "", takes)));
    }
    return figured.saying("usual-doubt").saying("caution");
  }

  private @Nullable Measured surface(Given given, Priors priors) {
    if ((area == null) == (across == null)) {
      given.complain("--area", "figure.pit.one-area");
    }
    Reading seen = given.positive("--area", given.quantity(Dimension.AREA, "--area", area));
    Reading round = given.positiveLength("--across", across);
    if (seen != null) {
      Double stated = seen.sd();
      return new Measured(seen.value(), stated == null ? USUAL * seen.value() : stated);
    }
    if (round == null) {
      return null;
    }
    double d = round.value();
    double sd = priors.sd(Priors.Kind.TAPE, round);
    return new Measured(StrictMath.PI / 4 * d * d, StrictMath.PI / 2 * d * sd);
  }

  private @Nullable Propagated in(Given given, Priors priors, @Nullable Measured surface) {
    boolean timed = rise != null || over != null;
    if (timed == (inflow != null)) {
      given.complain("--rise", "figure.pit.one-inflow");
    }
    if (timed) {
      given.need("--rise", rise);
      given.need("--over", over);
    }
    Reading up = given.positiveLength("--rise", rise);
    Reading time = given.positive("--over", given.quantity(Dimension.DURATION, "--over", over));
    Reading comes = given.quantity(Dimension.FLOW, "--inflow", inflow);
    if (comes != null) {
      double sd = Math.max(1e-9, 2 * USUAL * comes.value());
      return Propagated.measured(FlowInput.INFLOW, "", new Measured(comes.value(), sd));
    }
    if (surface == null || up == null || time == null) {
      return null;
    }
    return Cycles.inflow(
        "",
        surface,
        new Measured(up.value(), priors.sd(Priors.Kind.WATER_DROP, up)),
        new Measured(time.value(), priors.sd(Priors.Kind.WATCH, time)));
  }

  private static void cycle(Figured figured, FlowTold told, Cycle cycle) {
    switch (cycle) {
      case Cycle.Rests none -> figured.saying("rests");
      case Cycle.Turns turns -> {
        told.with("run", Dimension.DURATION, turns.run().value());
        told.with("rest", Dimension.DURATION, turns.rest().value());
        figured.with("starts", FlowTold.rounded(turns.starts().value()));
        figured.with("load", new Argument.Quantity(Dimension.SHARE, turns.load()));
        figured.with("keeps-up", new Argument.Probability(turns.keepsUp()));
      }
      case Cycle.CannotKeepUp(double more, double keepsUp) ->
          figured
              .contradicted()
              .with(
                  "cannot-keep-up",
                  new Argument.Quantity(Dimension.FLOW, more),
                  new Argument.Probability(keepsUp));
      case Cycle.PumpsItsOwnWater(double back, double volume) ->
          figured
              .contradicted()
              .with(
                  "own-water",
                  new Argument.Quantity(Dimension.VOLUME, back),
                  new Argument.Quantity(Dimension.VOLUME, volume));
    }
  }
}
