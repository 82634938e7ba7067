package daylight.line.flow;

import daylight.line.measure.Filled;
import daylight.line.measure.Measured;
import java.util.Comparator;
import java.util.List;

/**
 * A pump on its pipe: the flow at which the head it lifts is the head the pipe needs, lift +
 * friction + fittings. The speed with which the water leaves is a loss of the fittings (an exit
 * counts 1).
 */
public final class Pumping {
  private static final int HALVINGS = 80;

  /** Lift, and the curve's scale, stand first among the inputs; then four of each piece. */
  private static final int FIRST = 2;

  private static final int EACH = 4;

  /** Stands for fittings where there are none: no loss, and no doubt worth the name. */
  private static final Measured NO_FITTINGS = new Measured(0, 1e-9);

  private final PumpCurve curve;
  private final Discharge discharge;
  private final double viscosity;

  private Pumping(PumpCurve curve, Discharge discharge, double viscosity) {
    this.curve = curve;
    this.discharge = discharge;
    this.viscosity = viscosity;
  }

  /**
   * What the pump does.
   *
   * @param wear what the pump's head is of that of its curve, as a ratio: 1 for a new one, with how
   *     well that is known
   * @param viscosity of the water, square metres per second
   */
  public static Operation of(
      PumpCurve curve, Measured wear, Discharge discharge, double viscosity) {
    return new Pumping(curve, discharge, viscosity).operation(wear);
  }

  /** The head that a pipe needs for a flow, metres. */
  public static double head(Discharge discharge, double flow, double viscosity) {
    Pumping pumping = new Pumping(new PumpCurve.Parabola(1, 1), discharge, viscosity);
    return pumping.needed(flow, values(discharge, new Measured(1, 1)));
  }

  private Operation operation(Measured wear) {
    double[] usual = values(discharge, wear);
    double shutOff = wear.value() * curve.shutOff();
    double lift = discharge.lift().value();
    Measured margin =
        new Measured(
            shutOff - lift, StrictMath.hypot(discharge.lift().sd(), wear.sd() * curve.shutOff()));
    double pumps = 1 - margin.probabilityBelow(0);
    if (!(shutOff > lift)) {
      return new Operation.WillNotPump(shutOff, discharge.lift(), pumps);
    }
    double last = curve.last();
    double needed = needed(last, usual);
    if (wear.value() * curve.head(last) > needed) {
      return new Operation.BeyondCurve(last, wear.value() * curve.head(last), needed);
    }
    Propagation inputs = inputs(wear);
    Propagated flow = inputs.of(this::flow);
    Propagated head = inputs.of(x -> needed(flow(x), x));
    Discharge.Piece narrow =
        discharge.pieces().stream()
            .min(Comparator.comparingDouble(piece -> piece.bore().value()))
            .orElseThrow();
    double bore = narrow.bore().value();
    double speed = flow.value().value() / Filled.full(bore).area();
    double weight = Water.density(Water.USUAL_CELSIUS) * Water.GRAVITY;
    return new Operation.Pumps(
        flow,
        head,
        lift,
        speed,
        Regime.of(speed * bore / viscosity),
        weight * flow.value().value() * head.value().value(),
        pumps);
  }

  private Propagation inputs(Measured wear) {
    Propagation inputs =
        new Propagation().with(FlowInput.LIFT, discharge.lift()).with(FlowInput.PUMP, wear);
    for (Discharge.Piece piece : discharge.pieces()) {
      Measured fittings = piece.fittings();
      inputs
          .with(FlowInput.LENGTH, piece.length())
          .with(FlowInput.BORE, piece.bore())
          .with(FlowInput.ROUGHNESS, piece.roughness().figure())
          .with(FlowInput.FITTINGS, fittings == null ? NO_FITTINGS : fittings);
    }
    return inputs;
  }

  private static double[] values(Discharge discharge, Measured wear) {
    double[] values = new double[FIRST + EACH * discharge.pieces().size()];
    values[0] = discharge.lift().value();
    values[1] = wear.value();
    int at = FIRST;
    for (Discharge.Piece piece : discharge.pieces()) {
      Measured fittings = piece.fittings();
      values[at++] = piece.length().value();
      values[at++] = piece.bore().value();
      values[at++] = piece.roughness().figure().value();
      values[at++] = fittings == null ? 0 : fittings.value();
    }
    return values;
  }

  /** The flow at which both heads are the same; 0 where the lift is too high. */
  private double flow(double[] x) {
    double low = 0;
    double high = curve.last();
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (x[1] * curve.head(middle) > needed(middle, x)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  private double needed(double flow, double[] x) {
    double head = x[0];
    if (!(flow > 0)) {
      return head;
    }
    List<Discharge.Piece> pieces = discharge.pieces();
    for (int i = 0; i < pieces.size(); i++) {
      int at = FIRST + EACH * i;
      double bore = Math.max(x[at + 1], pieces.get(i).bore().value() / 1000);
      double speed = flow / Filled.full(bore).area();
      FrictionLaw law = pieces.get(i).roughness().law();
      double figure = Math.clamp(x[at + 2], law.least(), law.most());
      head += x[at] * law.slope(figure, speed, bore / 4, viscosity);
      head += Math.max(0, x[at + 3]) * speed * speed / (2 * Water.GRAVITY);
    }
    return head;
  }
}
