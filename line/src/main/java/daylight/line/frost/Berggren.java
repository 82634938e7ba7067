package daylight.line.frost;

import daylight.line.measure.Measured;
import java.util.Map;

/**
 * The modified Berggren formula at one set of inputs: λ√(2·k·n·F/L), which is Stefan's depth times
 * Neumann's λ. In feet, °F·days and Btu the 2 becomes the 48 of the manuals.
 *
 * <p>Sources: ufc-3-130-06 (formula, latent heat 144 Btu/lb, specific heat 0.17 of the dry ground,
 * 0.75 of its water as the mean of ice and water); neumann for λ. Snow is a layer without heat of
 * its own: of the winter's index it takes its resistance times the heat that goes through it, which
 * is what leaves the ground, 2·C·v_s·√(κt)/(√π·erf γ) by Neumann (derived); for frost that is not
 * deep that is the manual's sum over layers.
 */
final class Berggren {
  static final double DAY = 86_400;

  /** Joules in a kilogram of water that freezes: 144 Btu/lb. */
  static final double LATENT = 144 * 2326.0;

  /** Joules per kilogram and kelvin in 1 Btu/lb·°F. */
  private static final double SPECIFIC = 4186.8;

  private static final double MINERAL = 0.17 * SPECIFIC;
  private static final double WATER_AND_ICE = 0.75 * SPECIFIC;
  private static final int HALVINGS = 60;

  private final double index;
  private final double warm;
  private final double season;
  private final double latent;
  private final double capacity;
  private final double conductivity;
  private final double snow;
  private final double formula;

  /**
   * At values by input; what is not there is not in the way.
   *
   * @param ground what it is, and its conductivity where that was given: the input is a factor to
   *     it
   */
  Berggren(Ground ground, Map<Input, Double> at) {
    double density = get(at, Input.DRY_DENSITY, 0);
    double moisture = get(at, Input.MOISTURE, 0);
    index = get(at, Input.SURFACE, 1) * get(at, Input.FREEZING_INDEX, 0) * DAY;
    warm = get(at, Input.MEAN_TEMPERATURE, 0);
    season = get(at, Input.SEASON, 1);
    latent = LATENT * density * moisture;
    capacity = density * (MINERAL + WATER_AND_ICE * moisture);
    Measured given = ground.conductivity();
    double usual = given == null ? Kersten.mean(ground.grain(), density, moisture) : given.value();
    conductivity = usual * get(at, Input.CONDUCTIVITY, 1);
    snow = get(at, Input.SNOW, 0) / get(at, Input.SNOW_CONDUCTIVITY, 1);
    formula = get(at, Input.FORMULA, 1);
  }

  private static double get(Map<Input, Double> at, Input input, double otherwise) {
    return at.getOrDefault(input, otherwise);
  }

  /** The depth in metres; 0 where the ground does not freeze. */
  double depth() {
    double through = through();
    if (!(through > 0)) {
      return 0;
    }
    FrostDepth.Terms terms = terms(through);
    return formula * terms.lambda() * terms.stefan();
  }

  /** What of the winter's index comes through the snow to the ground, kelvin seconds. */
  double through() {
    return snow == 0 || !(index > 0) ? index : throughSnow();
  }

  /**
   * The front that the whole index drives: the heat that leaves the ground comes through the snow,
   * and what the snow takes of the index is its resistance times that heat.
   */
  private double throughSnow() {
    double heat =
        2 * capacity * StrictMath.sqrt(conductivity / capacity * season) / StrictMath.sqrt(Math.PI);
    double inSnow = snow * heat;
    double low = 0;
    double high = Neumann.farthest(index / season * capacity / latent);
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      double gradient = gradient(middle);
      if (gradient * (Neumann.erf(middle) * season + inSnow) < index) {
        low = middle;
      } else {
        high = middle;
      }
    }
    // Where nothing but the ground's own warmth is held off, the front stays at the surface.
    return gradient(0) * inSnow >= index ? 0 : gradient(low) * Neumann.erf(low) * season;
  }

  private double gradient(double gamma) {
    return Neumann.coldOverErf(gamma, Math.max(0, warm), latent / capacity);
  }

  private double mu(double cold) {
    return cold * capacity / latent;
  }

  FrostDepth.Terms terms(double through) {
    double cold = through / season;
    double alpha = Math.max(0, warm) / cold;
    double mu = mu(cold);
    double stefan = StrictMath.sqrt(2 * conductivity * through / latent);
    return new FrostDepth.Terms(
        through / DAY,
        cold,
        alpha,
        mu,
        Neumann.lambda(alpha, mu),
        stefan,
        conductivity,
        latent,
        capacity);
  }
}
