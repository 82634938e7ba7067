package daylight.line.flow;

import daylight.line.measure.Key;
import java.util.Locale;

/**
 * A law of friction: how much slope or head water loses by its wall, and how fast it runs on a
 * slope. Each has a figure of its own for the wall. Speeds in metres per second, radii in metres,
 * slopes as ratios, viscosities in square metres per second.
 */
public enum FrictionLaw implements Key {
  /** Manning: speed = R^⅔ S^½ ÷ n; the figure is n, in SI units. For gravity flow. */
  MANNING(0.005, 0.1) {
    @Override
    double slope(double n, double speed, double radius, double viscosity) {
      double root = n * speed / StrictMath.pow(radius, 2.0 / 3);
      return root * root;
    }

    @Override
    double speed(double n, double slope, double radius, double viscosity) {
      return StrictMath.pow(radius, 2.0 / 3) * StrictMath.sqrt(slope) / n;
    }
  },
  /**
   * Darcy and Weisbach with Colebrook's factor; the figure is the height of the wall's roughness,
   * ε, in metres. Holds for laminar flow, too.
   */
  DARCY_WEISBACH(0, 0.02) {
    @Override
    double slope(double height, double speed, double radius, double viscosity) {
      double across = 4 * radius;
      double f = Friction.factor(speed * across / viscosity, height / across);
      return f / across * speed * speed / (2 * Water.GRAVITY);
    }

    @Override
    double speed(double height, double slope, double radius, double viscosity) {
      double across = 4 * radius;
      double laminar = Water.GRAVITY * slope * across * across / (32 * viscosity);
      if (laminar * across / viscosity < Regime.LAMINAR_TO) {
        return laminar;
      }
      double root = StrictMath.sqrt(2 * Water.GRAVITY * across * slope);
      double inner = height / (3.7 * across) + 2.51 * viscosity / (across * root);
      double turbulent = -2 * root * StrictMath.log10(inner);
      if (turbulent * across / viscosity >= Regime.TURBULENT_FROM) {
        return turbulent;
      }
      double power = Friction.bridge(height / across);
      double base = across / (viscosity * Regime.LAMINAR_TO);
      double by = root * root * Regime.LAMINAR_TO / (64 * StrictMath.pow(base, power));
      return StrictMath.pow(by, 1 / (2 + power));
    }
  },
  /**
   * Hazen and Williams: slope = 10.67 Q^1.852 ÷ (C^1.852 D^4.8704) in SI units; the figure is C.
   * For water in full pipes only, and turbulent.
   */
  HAZEN_WILLIAMS(20, 200) {
    @Override
    double slope(double c, double speed, double radius, double viscosity) {
      double across = 4 * radius;
      double flow = speed * StrictMath.PI / 4 * across * across;
      return 10.67 * StrictMath.pow(flow / c, POWER) / StrictMath.pow(across, 4.8704);
    }

    @Override
    double speed(double c, double slope, double radius, double viscosity) {
      double across = 4 * radius;
      double flow = c * StrictMath.pow(slope * StrictMath.pow(across, 4.8704) / 10.67, 1 / POWER);
      return flow / (StrictMath.PI / 4 * across * across);
    }
  };

  private static final double POWER = 1.852;

  private final double least;
  private final double most;

  FrictionLaw(double least, double most) {
    this.least = least;
    this.most = most;
  }

  /** The slope lost at a speed greater than 0. */
  abstract double slope(double figure, double speed, double radius, double viscosity);

  /** The speed on a slope greater than 0. */
  abstract double speed(double figure, double slope, double radius, double viscosity);

  /** The least figure of a wall that this law is meant for. */
  public double least() {
    return least;
  }

  /** The greatest. */
  public double most() {
    return most;
  }

  @Override
  public String key() {
    return "friction." + name().toLowerCase(Locale.ROOT);
  }
}
