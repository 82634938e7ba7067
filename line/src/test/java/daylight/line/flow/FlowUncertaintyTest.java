package daylight.line.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import daylight.line.measure.Measured;
import java.util.List;
import java.util.function.DoubleSupplier;
import org.junit.jupiter.api.Test;

/** Uncertainty carried through, against the same drawn many times. */
class FlowUncertaintyTest {
  private static final int DRAWS = 4_000;

  private long state = 42;

  private double uniform() {
    state += 0x9E3779B97F4A7C15L;
    long z = state;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return ((z ^ (z >>> 31)) >>> 11) * 0x1p-53;
  }

  private double draw(Measured of) {
    double normal = Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
    return of.value() + of.sd() * normal;
  }

  private static double sd(DoubleSupplier drawn) {
    double sum = 0;
    double squares = 0;
    double first = drawn.getAsDouble();
    for (int i = 0; i < DRAWS; i++) {
      double off = drawn.getAsDouble() - first;
      sum += off;
      squares += off * off;
    }
    return Math.sqrt((squares - sum * sum / DRAWS) / (DRAWS - 1));
  }

  @Test
  void capacity() {
    Measured bore = new Measured(0.1, 0.002);
    Measured slope = new Measured(0.02, 0.003);
    Measured n = new Measured(0.011, 0.0008);
    Propagated carried = full(bore, slope, FrictionLaw.MANNING, n);
    double drawn =
        sd(
            () ->
                Math.PI
                    / 4
                    * Math.pow(4, -2.0 / 3)
                    * Math.pow(draw(bore), 8.0 / 3)
                    * Math.sqrt(draw(slope))
                    / draw(n));
    assertThat(carried.value().sd()).isCloseTo(drawn, withPercentage(5));
    assertThat(carried.decides().what()).isEqualTo(FlowInput.SLOPE);
  }

  private static Propagated full(Measured bore, Measured slope, FrictionLaw law, Measured wall) {
    if (Gravity.capacity(GravityPipe.of(bore, slope, new Roughness(law, wall)))
        instanceof Capacity.Carries carries) {
      return carries.flow();
    }
    throw new AssertionError("it falls");
  }

  @Test
  void depthAndSpeedOfAFlow() {
    Measured bore = new Measured(0.15, 0.002);
    Measured slope = new Measured(0.015, 0.002);
    Measured wall = new Measured(0.0003, 0.0001);
    Measured flow = new Measured(0.006, 0.0006);
    Running.PartFull part = partFull(bore, slope, wall, flow);
    double depth = sd(() -> drawn(bore, slope, wall, flow).depth().value().value());
    double speed = sd(() -> drawn(bore, slope, wall, flow).speed().value().value());
    assertThat(part.depth().value().sd()).isCloseTo(depth, withPercentage(5));
    assertThat(part.speed().value().sd()).isCloseTo(speed, withPercentage(5));
  }

  private Running.PartFull drawn(Measured bore, Measured slope, Measured wall, Measured flow) {
    return partFull(
        GravityTest.sure(draw(bore)),
        GravityTest.sure(draw(slope)),
        GravityTest.sure(Math.max(0, draw(wall))),
        GravityTest.sure(draw(flow)));
  }

  private static Running.PartFull partFull(
      Measured bore, Measured slope, Measured wall, Measured flow) {
    GravityPipe pipe = GravityPipe.of(bore, slope, new Roughness(FrictionLaw.DARCY_WEISBACH, wall));
    if (Gravity.at(pipe, flow, 0) instanceof Running.PartFull part) {
      return part;
    }
    throw new AssertionError("not part full");
  }

  @Test
  void operatingFlowAndHead() {
    Measured lift = new Measured(2.4, 0.1);
    Measured wear = new Measured(1, 0.04);
    Measured length = new Measured(18, 0.5);
    Measured bore = new Measured(0.041, 0.0006);
    Measured c = new Measured(145, 3);
    Measured fittings = new Measured(6, 1);
    PumpCurve curve = new PumpCurve.Parabola(6.7, 4e5);
    Operation.Pumps carried = pumps(curve, wear, lift, length, bore, c, fittings);
    double flow =
        sd(() -> drawn(curve, wear, lift, length, bore, c, fittings).flow().value().value());
    double head =
        sd(() -> drawn(curve, wear, lift, length, bore, c, fittings).head().value().value());
    assertThat(carried.flow().value().sd()).isCloseTo(flow, withPercentage(5));
    assertThat(carried.head().value().sd()).isCloseTo(head, withPercentage(5));
    assertThat(carried.flow().shares().stream().mapToDouble(Propagated.Share::share).sum())
        .isCloseTo(1, withPercentage(1e-6));
  }

  private Operation.Pumps drawn(
      PumpCurve curve,
      Measured wear,
      Measured lift,
      Measured length,
      Measured bore,
      Measured c,
      Measured fittings) {
    return pumps(
        curve,
        GravityTest.sure(draw(wear)),
        GravityTest.sure(draw(lift)),
        GravityTest.sure(draw(length)),
        GravityTest.sure(draw(bore)),
        GravityTest.sure(draw(c)),
        GravityTest.sure(draw(fittings)));
  }

  private static Operation.Pumps pumps(
      PumpCurve curve,
      Measured wear,
      Measured lift,
      Measured length,
      Measured bore,
      Measured c,
      Measured fittings) {
    Discharge pipe =
        new Discharge(
            lift,
            List.of(
                new Discharge.Piece(
                    length, bore, new Roughness(FrictionLaw.HAZEN_WILLIAMS, c), fittings)));
    if (Pumping.of(curve, wear, pipe, 1.3e-6) instanceof Operation.Pumps pumps) {
      return pumps;
    }
    throw new AssertionError("it pumps");
  }

  @Test
  void runAndRest() {
    Measured area = new Measured(0.64, 0.02);
    Measured swing = new Measured(0.35, 0.01);
    Measured in = new Measured(0.0005, 0.00004);
    Measured out = new Measured(0.002, 0.00008);
    Cycle.Turns carried = turns(area, swing, in, out);
    double run = sd(() -> again(area, swing, in, out).run().value().value());
    double rest = sd(() -> again(area, swing, in, out).rest().value().value());
    assertThat(carried.run().value().sd()).isCloseTo(run, withPercentage(5));
    assertThat(carried.rest().value().sd()).isCloseTo(rest, withPercentage(5));
  }

  private Cycle.Turns again(Measured area, Measured swing, Measured in, Measured out) {
    return turns(
        GravityTest.sure(draw(area)),
        GravityTest.sure(draw(swing)),
        GravityTest.sure(draw(in)),
        GravityTest.sure(draw(out)));
  }

  private static Cycle.Turns turns(Measured area, Measured swing, Measured in, Measured out) {
    if (Cycles.of(
            new Pit(area, swing, 0.01),
            Propagated.measured(FlowInput.INFLOW, "", in),
            Propagated.measured(FlowInput.PUMP, "", out))
        instanceof Cycle.Turns turns) {
      return turns;
    }
    throw new AssertionError("it turns");
  }
}
