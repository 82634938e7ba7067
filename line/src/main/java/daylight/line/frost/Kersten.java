package daylight.line.frost;

/**
 * How well ground conducts heat, from its density and water.
 *
 * <p>Source: M. S. Kersten, <em>Thermal Properties of Soils</em>, University of Minnesota, 1949:
 * four equations in W/m·K with the dry density in g/cm³ and the water in per cent by dry weight,
 * looked up as an open program quotes them; they agree with the American ones from memory. He
 * called them good to a quarter of the value, and the thawed ones to hold from 7 % of water for
 * silt and clay, from 1 % for sand (from memory); below, the water is taken as that.
 */
final class Kersten {
  /** Standard uncertainty of what comes out, a share of it: a quarter, 19 times of 20. */
  static final double DOUBT = 0.125;

  private static final double LEAST_FINE = 7;
  private static final double LEAST_COARSE = 1;

  private Kersten() {}

  /** The mean of frozen and thawed ground, watts per metre and kelvin. */
  static double mean(Ground.Grain grain, double dryDensity, double moisture) {
    return (frozen(grain, dryDensity, moisture) + thawed(grain, dryDensity, moisture)) / 2;
  }

  static double frozen(Ground.Grain grain, double dryDensity, double moisture) {
    double rho = dryDensity / 1000;
    double w = 100 * moisture;
    return switch (grain) {
      case FINE -> 0.001442 * tenTo(1.373 * rho) + 0.01226 * tenTo(0.4994 * rho) * w;
      case COARSE -> 0.01096 * tenTo(0.8116 * rho) + 0.00461 * tenTo(0.9115 * rho) * w;
    };
  }

  static double thawed(Ground.Grain grain, double dryDensity, double moisture) {
    double rho = dryDensity / 1000;
    double w = 100 * moisture;
    double share =
        switch (grain) {
          case FINE -> 0.9 * StrictMath.log10(Math.max(LEAST_FINE, w)) - 0.2;
          case COARSE -> 0.7 * StrictMath.log10(Math.max(LEAST_COARSE, w)) + 0.4;
        };
    return 0.1442 * share * tenTo(0.6243 * rho);
  }

  private static double tenTo(double power) {
    return StrictMath.pow(10, power);
  }
}
