package daylight.app.cli;

import daylight.line.book.Priors;
import daylight.line.flow.Discharge;
import daylight.line.flow.FlowTables;
import daylight.line.flow.FrictionLaw;
import daylight.line.flow.Gravity;
import daylight.line.flow.Operation;
import daylight.line.flow.PumpCurve;
import daylight.line.flow.Pumping;
import daylight.line.flow.Regime;
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

/** What a pump does on its pipe. */
@Command(
    name = "pump",
    mixinStandardHelpOptions = true,
    description = {
      "What a pump does on its pipe.",
      "",
      "From its curve or plate, how high it lifts, and the pipe with its fittings: how much it pumps at",
      "what head, with the doubt of both, how fast, the power that goes into the water, the energy it",
      "takes, and what runs back when it stops. That it will not pump is a result. Leaves with 1 where",
      "it will not, or its curve ends before the pipe is satisfied."
    })
final class FigurePump extends SondeFigure {
  /**
   * How far off a lift or a length may be that was given without its doubt, of itself; common
   * practice.
   */
  private static final double USUAL = 0.02;

  @Mixin private PipeChoices pipes = new PipeChoices();

  @Mixin private PumpChoices pump = new PumpChoices();

  @Option(
      names = "--lift",
      paramLabel = "LENGTH",
      description =
          "From the water half way between where the pump starts and stops up to the highest point of"
              + " the pipe.")
  private @Nullable String lift;

  @Option(
      names = "--lift-give-or-take",
      paramLabel = "LENGTH",
      description = "How far off the lift may be, 19 times of 20.")
  private @Nullable String liftOff;

  @Option(names = "--length", paramLabel = "LENGTH", description = "Length of the pipe.")
  private @Nullable String length;

  @Option(
      names = "--efficiency",
      paramLabel = "SHARE",
      description = "Of pump and motor together; without it the energy is that of the water alone.")
  private @Nullable String efficiency;

  @Option(
      names = "--temperature",
      paramLabel = "TEMPERATURE",
      description = "Of the water; default: 10 °C.")
  private @Nullable String temperature;

  @Override
  @Nullable Figured figured(Given given, Priors priors) {
    FlowTables tables = pipes.tables(given);
    PipeChoices.Pipe pipe =
        pipes.pipe(
            given, priors, tables, List.of(FrictionLaw.HAZEN_WILLIAMS, FrictionLaw.DARCY_WEISBACH));
    PumpCurve curve = pump.curve(given);
    Measured wear = pump.wear(given);
    Measured fittings = pump.fittings(given, tables);
    given.need("--lift", lift);
    Reading high = given.length("--lift", lift);
    Reading highOff = given.positiveLength("--lift-give-or-take", liftOff);
    given.need("--length", length);
    Reading along = given.positiveLength("--length", length);
    Reading share =
        given.positive("--efficiency", given.quantity(Dimension.SHARE, "--efficiency", efficiency));
    Double celsius = PipeChoices.celsius(given, temperature, Water.USUAL_CELSIUS);
    if (pipe == null || curve == null || high == null || along == null || celsius == null) {
      return null;
    }
    if (!given.sound() || wear == null) {
      return null;
    }
    double usual = Math.max(0.01, USUAL * Math.abs(high.value()));
    Discharge discharge =
        new Discharge(
            new Measured(high.value(), given.sd(highOff, usual)),
            List.of(
                new Discharge.Piece(
                    new Measured(along.value(), USUAL * along.value()),
                    pipe.bore(),
                    pipe.roughness(),
                    fittings)));
    Operation operation = Pumping.of(curve, wear, discharge, Water.viscosity(celsius));
    return told(operation, discharge, pipe, share == null ? null : share.value());
  }

  private Figured told(
      Operation operation, Discharge discharge, PipeChoices.Pipe pipe, @Nullable Double efficient) {
    Figured figured = new Figured("pump");
    FlowTold told = new FlowTold(figured);
    switch (operation) {
      case Operation.WillNotPump(double shutOff, Measured up, double may) ->
          figured
              .contradicted()
              .with(
                  "will-not-pump",
                  new Argument.Length(shutOff),
                  new Argument.Length(up.value()),
                  new Argument.Probability(may));
      case Operation.BeyondCurve(double last, double head, double needed) ->
          figured
              .contradicted()
              .with(
                  "beyond-curve",
                  new Argument.Quantity(Dimension.FLOW, last),
                  new Argument.Length(head),
                  new Argument.Length(needed));
      case Operation.Pumps pumps -> {
        told.with("flow", Dimension.FLOW, pumps.flow().value());
        Measured head = pumps.head().value();
        figured.with(
            "head",
            new Argument.UncertainLength(head),
            new Argument.Length(pumps.lift()),
            new Argument.Length(head.value() - pumps.lift()));
        figured.with("speed", new Argument.Quantity(Dimension.SPEED, pumps.speed()));
        figured.with("power", FlowTold.rounded(pumps.power()));
        energy(figured, pumps, efficient);
        figured.with("pumps", new Argument.Probability(pumps.pumps()));
        slowOrLaminar(figured, pumps, pipe);
        told.decides(pumps.flow()).regime(pumps.regime());
      }
    }
    if (!(operation instanceof Operation.WillNotPump)) {
      figured.with(
          pump.checkValve() ? "held-back" : "runs-back",
          new Argument.Quantity(Dimension.VOLUME, discharge.volume()));
    }
    told.origins(pipe.origins());
    return figured
        .saying("law", new Argument.Term(pipe.roughness().law().key()))
        .saying("usual-doubt")
        .saying("caution");
  }

  /** A watt-hour is 3600 joules. */
  private static void energy(Figured figured, Operation.Pumps pumps, @Nullable Double efficient) {
    double joules = pumps.energy(efficient == null ? 1 : efficient);
    figured.with(
        efficient == null ? "energy-of-water" : "energy",
        FlowTold.rounded(joules / 3600),
        new Argument.Quantity(Dimension.VOLUME, 1));
  }

  private static void slowOrLaminar(Figured figured, Operation.Pumps pumps, PipeChoices.Pipe pipe) {
    if (pumps.speed() < Gravity.SELF_CLEANSING) {
      figured.saying("slow", new Argument.Quantity(Dimension.SPEED, Gravity.SELF_CLEANSING));
    }
    boolean eddies = pumps.regime() == Regime.TURBULENT;
    if (!eddies && pipe.roughness().law() == FrictionLaw.HAZEN_WILLIAMS) {
      figured.saying("not-by-hazen");
    }
  }
}
