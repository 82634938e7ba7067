package daylight.line.flow;

import daylight.line.measure.Filled;
import daylight.line.measure.Measured;
import java.util.function.DoubleUnaryOperator;

/**
 * Steady flow by gravity in one stretch of round pipe. All of it in SI units.
 *
 * <p>Whether a pipe carries a flow is asked of its slope: the slope that the flow needs against the
 * slope there is. A fall is what is least known of a drain, and in the slope it is normal, in the
 * capacity, which goes by its root, it is not. The interval of a capacity is found the same way.
 */
public final class Gravity {
  /** Slower than 2 ft/s grit stays behind, metres per second (ASPE Data Book vol. 2). */
  public static final double SELF_CLEANSING = 0.6096;

  /** Up to this share of the bore flow grows with depth, by either law. */
  private static final double RISING = 0.93;

  private static final int HALVINGS = 80;
  private static final int THIRDS = 120;

  private Gravity() {}

  /** What a pipe carries when full. */
  public static Capacity capacity(GravityPipe pipe) {
    double slope = pipe.slope().value();
    if (!(slope > 0)) {
      return new Capacity.NotFalling(slope);
    }
    Propagated flow = inputs(pipe).of(x -> flow(pipe, Filled.full(across(pipe, x[0])), x[1], x[2]));
    Propagated speed =
        inputs(pipe).of(x -> speed(pipe, Filled.full(across(pipe, x[0])), x[1], x[2]));
    double bore = pipe.bore().value();
    double figure = pipe.roughness().figure().value();
    double peak = peakShare(pipe);
    return new Capacity.Carries(
        flow,
        quantile(pipe, -Measured.Z95),
        quantile(pipe, Measured.Z95),
        flow(pipe, new Filled(bore, peak * bore), slope, figure),
        peak,
        speed.value(),
        regime(pipe, Filled.full(bore), speed.value().value()));
  }

  /**
   * How a flow runs in it.
   *
   * @param outlet depth of the water into which the pipe lets out, above its inside bottom there,
   *     metres; 0 where it falls free
   */
  public static Running at(GravityPipe pipe, Measured flow, double outlet) {
    double slope = pipe.slope().value();
    double bore = pipe.bore().value();
    double figure = pipe.roughness().figure().value();
    if (!(flow.value() > 0)) {
      return new Running.NoFlow();
    }
    if (!(slope > 0)) {
      return new Running.NotFalling(slope);
    }
    double full = flow(pipe, Filled.full(bore), slope, figure);
    if (flow.value() > full) {
      double needs = needs(pipe, flow.value(), bore, figure);
      return new Running.Surcharged(full, needs, needs - slope);
    }
    Propagation inputs = inputs(pipe).with(FlowInput.FLOW, flow);
    Propagated depth = inputs.of(x -> depth(pipe, x[3], across(pipe, x[0]), x[1], x[2]));
    Propagated speed =
        inputs.of(
            x -> {
              Filled water =
                  new Filled(across(pipe, x[0]), depth(pipe, x[3], across(pipe, x[0]), x[1], x[2]));
              return speed(pipe, water, x[1], x[2]);
            });
    double deep = depth.value().value();
    return new Running.PartFull(
        depth,
        deep / bore,
        speed,
        regime(pipe, new Filled(bore, deep), speed.value().value()),
        outlet > deep);
  }

  /**
   * The slope at which a pipe filled to a share of its bore runs at a speed.
   *
   * @param bore inside diameter, metres
   * @param share depth over bore, above 0
   * @param speed metres per second, above 0
   */
  public static double slopeFor(
      double bore, Roughness roughness, double share, double speed, double viscosity) {
    double radius = new Filled(bore, share * bore).radius();
    return roughness.law().slope(roughness.figure().value(), speed, radius, viscosity);
  }

  /** The slope that a flow needs to run through the full pipe. */
  public static double needs(GravityPipe pipe, double flow) {
    return needs(pipe, flow, pipe.bore().value(), pipe.roughness().figure().value());
  }

  /**
   * By how much the pipe's slope is more than a flow needs, and what decides that. Below 0 it does
   * not carry it.
   */
  public static Propagated margin(GravityPipe pipe, Propagated flow) {
    return inputs(pipe)
        .with(FlowInput.INFLOW, flow.value())
        .of(x -> x[1] - (x[3] > 0 ? needs(pipe, x[3], across(pipe, x[0]), x[2]) : 0));
  }

  /** The probability, from 0 to 1, that the pipe carries a flow without filling up. */
  public static double carries(GravityPipe pipe, Propagated flow) {
    return 1 - margin(pipe, flow).value().probabilityBelow(0);
  }

  /**
   * The flow that the pipe carries but for so many standard uncertainties of its slope's margin.
   */
  private static double quantile(GravityPipe pipe, double z) {
    DoubleUnaryOperator standard =
        flow -> {
          Measured margin =
              inputs(pipe).of(x -> x[1] - needs(pipe, flow, across(pipe, x[0]), x[2])).value();
          return margin.value() / margin.sd();
        };
    double high = flow(pipe, pipe.slope().value() + 8 * pipe.slope().sd()) * 4;
    double low = 0;
    if (pipe.slope().value() + z * pipe.slope().sd() <= 0) {
      return 0;
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (standard.applyAsDouble(middle) > -z) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  private static double flow(GravityPipe pipe, double slope) {
    return flow(pipe, Filled.full(pipe.bore().value()), slope, pipe.roughness().figure().value());
  }

  private static Propagation inputs(GravityPipe pipe) {
    return new Propagation()
        .with(FlowInput.BORE, pipe.bore())
        .with(FlowInput.SLOPE, pipe.slope())
        .with(FlowInput.ROUGHNESS, pipe.roughness().figure());
  }

  private static double speed(GravityPipe pipe, Filled water, double slope, double figure) {
    double radius = water.radius() * shrunk(pipe);
    return slope > 0 && radius > 0
        ? pipe.roughness().law().speed(kept(pipe, figure), slope, radius, pipe.viscosity())
        : 0;
  }

  private static double flow(GravityPipe pipe, Filled water, double slope, double figure) {
    return speed(pipe, water, slope, figure) * water.area() * pipe.free();
  }

  private static double needs(GravityPipe pipe, double flow, double bore, double figure) {
    Filled full = Filled.full(bore);
    double speed = flow / (full.area() * pipe.free());
    double radius = full.radius() * shrunk(pipe);
    return pipe.roughness().law().slope(kept(pipe, figure), speed, radius, pipe.viscosity());
  }

  /** A section of which a share is free runs as a smaller one of the same shape. */
  private static double shrunk(GravityPipe pipe) {
    return StrictMath.sqrt(pipe.free());
  }

  /** A bore that is moved by more than itself stays a bore. */
  private static double across(GravityPipe pipe, double bore) {
    return Math.max(bore, pipe.bore().value() / 1000);
  }

  /** Where a figure's uncertainty reaches beyond what the law is meant for, it ends there. */
  private static double kept(GravityPipe pipe, double figure) {
    FrictionLaw law = pipe.roughness().law();
    return Math.clamp(figure, law.least(), law.most());
  }

  /** Normal depth: no deeper than where a deeper one would carry less. */
  private static double depth(
      GravityPipe pipe, double flow, double bore, double slope, double figure) {
    double low = 0;
    double high = RISING * bore;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (flow(pipe, new Filled(bore, middle), slope, figure) < flow) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /** Depth over bore at which most flows with a free surface. */
  private static double peakShare(GravityPipe pipe) {
    double bore = pipe.bore().value();
    double slope = pipe.slope().value();
    double figure = pipe.roughness().figure().value();
    double low = 0.8;
    double high = 1;
    for (int i = 0; i < THIRDS; i++) {
      double one = low + (high - low) / 3;
      double other = high - (high - low) / 3;
      if (flow(pipe, new Filled(bore, one * bore), slope, figure)
          < flow(pipe, new Filled(bore, other * bore), slope, figure)) {
        low = one;
      } else {
        high = other;
      }
    }
    return (low + high) / 2;
  }

  private static Regime regime(GravityPipe pipe, Filled water, double speed) {
    return Regime.of(4 * water.radius() * speed / pipe.viscosity());
  }
}
