package daylight.line.measure;

/**
 * The water in a round pipe, cut across.
 *
 * @param bore inside diameter, metres
 * @param depth of the water above the inside bottom, metres, from 0 to the bore
 */
public record Filled(double bore, double depth) {
  /** Below this angle the difference of the angle and its sine is taken from its series. */
  private static final double SMALL = 0.5;

  private static final double TURN = 2 * StrictMath.PI;

  /** How often an interval is halved: more than the digits of a double. */
  private static final int HALVINGS = 80;

  public Filled {
    if (!(bore > 0) || Double.isInfinite(bore)) {
      throw new IllegalArgumentException("bore must be positive, was " + bore);
    }
    if (!(depth >= 0 && depth <= bore)) {
      throw new IllegalArgumentException("depth must be 0 to " + bore + ", was " + depth);
    }
  }

  /** A full pipe. */
  public static Filled full(double bore) {
    return new Filled(bore, bore);
  }

  /** Water of a depth; nothing where it is less than nothing, full where it is more. */
  public static Filled upTo(double bore, double depth) {
    return new Filled(bore, Math.clamp(depth, 0, bore));
  }

  /** The water of so many square metres of cross-section; no more than the pipe holds. */
  public static Filled ofArea(double bore, double area) {
    double wanted = 8 * area / (bore * bore);
    if (!(area >= 0) || wanted > TURN * (1 + 1e-12)) {
      throw new IllegalArgumentException("a bore of " + bore + " does not hold " + area);
    }
    double low = 0;
    double high = TURN;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (lens(middle) < wanted) {
        low = middle;
      } else {
        high = middle;
      }
    }
    double sine = StrictMath.sin((low + high) / 8);
    return new Filled(bore, Math.min(bore, bore * sine * sine));
  }

  /** The angle at the middle of the pipe over which its wall is wet, radians, from 0 to 2π. */
  public double angle() {
    return 4 * StrictMath.asin(StrictMath.sqrt(depth / bore));
  }

  /** Square metres of water. */
  public double area() {
    return bore * bore * lens(angle()) / 8;
  }

  /** Metres of wet wall. */
  public double perimeter() {
    return bore * angle() / 2;
  }

  /** Hydraulic radius, metres: area over wet wall; 0 in a dry pipe. */
  public double radius() {
    return depth == 0 ? 0 : area() / perimeter();
  }

  /** Width of the surface of the water, metres; 0 in a full pipe. */
  public double width() {
    return 2 * StrictMath.sqrt(depth * (bore - depth));
  }

  /** Angle less its sine, without losing digits where both are nearly the same. */
  private static double lens(double angle) {
    if (angle >= SMALL) {
      return angle - StrictMath.sin(angle);
    }
    double s = angle * angle;
    double series = 1 - s / 20 * (1 - s / 42 * (1 - s / 72 * (1 - s / 110 * (1 - s / 156))));
    return angle * s / 6 * series;
  }
}
