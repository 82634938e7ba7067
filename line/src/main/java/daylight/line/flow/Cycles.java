package daylight.line.flow;

import daylight.line.measure.Measured;

/** How a pump comes and goes over a pit, and what a pit tells of what comes in. */
public final class Cycles {
  private static final double HOUR = 3600;

  private Cycles() {}

  /**
   * A pit with so much coming in and so much going out. What runs back out of the pipe shortens the
   * rest; the time to fill the pipe again is left out.
   *
   * @param in cubic metres per second, not negative
   * @param out cubic metres per second, positive
   */
  public static Cycle of(Pit pit, Propagated in, Propagated out) {
    double comes = in.value().value();
    double goes = out.value().value();
    if (!(comes > 0)) {
      return new Cycle.Rests();
    }
    if (pit.runsBack() >= pit.volume()) {
      return new Cycle.PumpsItsOwnWater(pit.runsBack(), pit.volume());
    }
    double fails = out.value().minus(in.value()).probabilityBelow(0);
    if (comes >= goes) {
      return new Cycle.CannotKeepUp(comes - goes, 1 - fails);
    }
    Propagation inputs =
        new Propagation()
            .with(FlowInput.PIT_AREA, pit.area())
            .with(FlowInput.LEVELS, pit.swing())
            .with(FlowInput.INFLOW, in.value())
            .with(FlowInput.PUMP, out.value());
    Propagated run = inputs.of(x -> x[0] * x[1] / Math.max(1e-12, x[3] - x[2]));
    Propagated rest = inputs.of(x -> Math.max(0, x[0] * x[1] - pit.runsBack()) / x[2]);
    Measured starts =
        inputs
            .of(
                x ->
                    HOUR
                        / (x[0] * x[1] / Math.max(1e-12, x[3] - x[2])
                            + Math.max(0, x[0] * x[1] - pit.runsBack()) / x[2]))
            .value();
    double time = run.value().value() + rest.value().value();
    return new Cycle.Turns(run, rest, starts, run.value().value() / time, 1 - fails);
  }

  /**
   * What comes into a pit, from a timed rise of its water while the pump is off, cubic metres per
   * second.
   *
   * @param area of the pit seen from above, square metres
   * @param rise metres
   * @param time seconds
   */
  public static Propagated inflow(String test, Measured area, Measured rise, Measured time) {
    return new Propagation()
        .with(FlowInput.PIT_AREA, test, area)
        .with(FlowInput.RISE, test, rise)
        .with(FlowInput.TIME, test, time)
        .of(x -> x[0] * x[1] / x[2]);
  }
}
