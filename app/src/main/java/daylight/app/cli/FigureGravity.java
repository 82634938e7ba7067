package daylight.app.cli;

import daylight.line.book.Priors;
import daylight.line.flow.Capacity;
import daylight.line.flow.FlowInput;
import daylight.line.flow.FlowTables;
import daylight.line.flow.FrictionLaw;
import daylight.line.flow.Gravity;
import daylight.line.flow.GravityPipe;
import daylight.line.flow.Propagated;
import daylight.line.flow.Running;
import daylight.line.flow.Water;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What a pipe carries by gravity, and how a flow runs in it. */
@Command(
    name = "gravity",
    mixinStandardHelpOptions = true,
    description = {
      "What a round pipe carries by gravity, and how deep and fast a flow runs in it.",
      "",
      "From its bore, slope and wall: what it carries when full, with its doubt, how fast, and whether",
      "that keeps grit moving; with --flow how deep and fast that runs, how likely the pipe carries it,",
      "and what happens where it does not. By Manning, or by Colebrook with --wall or --law",
      "darcy-weisbach. Leaves with 1 where it does not fall or does not carry the flow."
    })
final class FigureGravity extends SondeFigure {
  /** How far off a slope may be that was given without its doubt, of itself; common practice. */
  private static final double SLOPE_OFF = 0.05;

  @Mixin private PipeChoices pipes = new PipeChoices();

  @Option(
      names = "--slope",
      paramLabel = "SLOPE",
      description = "How it falls with the water: 2 %%, 1/4 in/ft, 1:48; below 0 backward.")
  private @Nullable String slope;

  @Option(
      names = "--slope-give-or-take",
      paramLabel = "SLOPE",
      description = "How far off the slope may be, 19 times of 20.")
  private @Nullable String slopeOff;

  @Option(names = "--flow", paramLabel = "FLOW", description = "A flow that runs in it.")
  private @Nullable String flow;

  @Option(
      names = "--flow-give-or-take",
      paramLabel = "FLOW",
      description = "How far off the flow may be, 19 times of 20.")
  private @Nullable String flowOff;

  @Option(
      names = "--outlet",
      paramLabel = "LENGTH",
      description = "How deep water stands at its outlet, above the inside bottom there.")
  private @Nullable String outlet;

  @Option(
      names = "--filled",
      paramLabel = "SHARE",
      description = "The share of the section that was measured to be filled by something.")
  private @Nullable String filled;

  @Option(
      names = "--temperature",
      paramLabel = "TEMPERATURE",
      description = "Of the water; default: 10 °C.")
  private @Nullable String temperature;

  @Override
  @Nullable Figured figured(Given given, Priors priors) {
    FlowTables tables = pipes.tables(given);
    PipeChoices.Pipe pipe =
        pipes.pipe(given, priors, tables, List.of(FrictionLaw.MANNING, FrictionLaw.DARCY_WEISBACH));
    given.need("--slope", slope);
    Reading falls = given.quantity(Dimension.SLOPE, "--slope", slope);
    Reading fallsOff =
        given.positive(
            "--slope-give-or-take",
            given.quantity(Dimension.SLOPE, "--slope-give-or-take", slopeOff));
    Measured runs = runs(given);
    Reading stands = given.lengthFromZero("--outlet", outlet);
    Reading taken = given.quantity(Dimension.SHARE, "--filled", filled);
    if (taken != null && taken.value() >= 1) {
      given.complain("--filled", "figure.gravity.all-filled", Given.text(taken.written()));
    }
    Double celsius = PipeChoices.celsius(given, temperature, Water.USUAL_CELSIUS);
    if (pipe == null || falls == null || celsius == null || !given.sound()) {
      return null;
    }
    double usual = Math.max(1e-6, SLOPE_OFF * Math.abs(falls.value()));
    Measured fall = new Measured(falls.value(), given.sd(fallsOff, usual));
    double free = taken == null ? 1 : 1 - taken.value();
    GravityPipe of =
        new GravityPipe(pipe.bore(), fall, pipe.roughness(), free, Water.viscosity(celsius));
    return told(of, pipe, runs, stands == null ? 0 : stands.value());
  }

  private @Nullable Measured runs(Given given) {
    Reading reading = given.quantity(Dimension.FLOW, "--flow", flow);
    Reading off =
        given.positive(
            "--flow-give-or-take", given.quantity(Dimension.FLOW, "--flow-give-or-take", flowOff));
    if (flowOff != null) {
      given.need("--flow", flow);
    }
    return reading == null
        ? null
        : new Measured(reading.value(), given.sd(off, Math.max(1e-9, 0.05 * reading.value())));
  }

  private Figured told(
      GravityPipe of, PipeChoices.Pipe pipe, @Nullable Measured runs, double stands) {
    Figured figured = new Figured("gravity");
    FlowTold told = new FlowTold(figured);
    switch (Gravity.capacity(of)) {
      case Capacity.NotFalling(double down) -> {
        figured.contradicted();
        figured.with(
            down == 0 ? "level" : "backward", new Argument.Quantity(Dimension.SLOPE, down));
      }
      case Capacity.Carries carries -> {
        told.with("capacity", Dimension.FLOW, carries.flow().value());
        figured.with(
            "between",
            new Argument.Quantity(Dimension.FLOW, carries.least()),
            new Argument.Quantity(Dimension.FLOW, carries.most()));
        told.with("speed", Dimension.SPEED, carries.speed());
        figured.with(
            "peak",
            new Argument.Quantity(Dimension.FLOW, carries.peak()),
            new Argument.Quantity(Dimension.SHARE, carries.peakShare()));
        cleansing(figured, of, carries);
        if (runs != null) {
          running(figured, told, of, runs, stands);
        }
        told.decides(carries.flow()).regime(carries.regime());
      }
    }
    told.origins(pipe.origins());
    return figured
        .saying("law", new Argument.Term(of.roughness().law().key()))
        .saying("usual-doubt")
        .saying("caution");
  }

  private static void cleansing(Figured figured, GravityPipe of, Capacity.Carries carries) {
    double needed =
        Gravity.slopeFor(
            of.bore().value(), of.roughness(), 0.5, Gravity.SELF_CLEANSING, of.viscosity());
    figured.with(
        carries.cleans() ? "cleans" : "does-not-clean",
        new Argument.Quantity(Dimension.SLOPE, needed),
        new Argument.Quantity(Dimension.SPEED, Gravity.SELF_CLEANSING));
  }

  private static void running(
      Figured figured, FlowTold told, GravityPipe of, Measured runs, double stands) {
    switch (Gravity.at(of, runs, stands)) {
      case Running.NoFlow none -> figured.saying("no-flow");
      case Running.NotFalling none -> figured.contradicted();
      case Running.PartFull part -> {
        Measured depth = part.depth().value();
        figured.with(
            "depth",
            new Argument.Small(depth.value()),
            new Argument.Small(Measured.Z95 * depth.sd()),
            new Argument.Quantity(Dimension.SHARE, part.filled()));
        told.with("runs", Dimension.SPEED, part.speed().value()).regime(part.regime());
        if (!part.cleans()) {
          figured.saying("slow", new Argument.Quantity(Dimension.SPEED, Gravity.SELF_CLEANSING));
        }
        if (part.outletDrowned()) {
          figured.saying(stands >= of.bore().value() ? "submerged" : "held-up");
        }
        likely(figured, of, runs);
      }
      case Running.Surcharged over -> {
        figured.contradicted();
        figured.with(
            "surcharged",
            new Argument.Quantity(Dimension.SLOPE, over.slope()),
            new Argument.Quantity(Dimension.SLOPE, over.rise()));
        likely(figured, of, runs);
      }
    }
  }

  private static void likely(Figured figured, GravityPipe of, Measured runs) {
    double carries = Gravity.carries(of, Propagated.measured(FlowInput.FLOW, "", runs));
    figured.with("carries", new Argument.Probability(carries));
  }
}
