package daylight.line.flow;

import daylight.line.measure.Measured;

/**
 * How rough a wall is, by one law of friction.
 *
 * @param law by which
 * @param figure Manning's n, Hazen and Williams' C, or the height of the roughness in metres
 */
public record Roughness(FrictionLaw law, Measured figure) {
  public Roughness {
    if (!(figure.value() >= law.least() && figure.value() <= law.most())) {
      throw new IllegalArgumentException(
          law + " takes " + law.least() + " to " + law.most() + ", was " + figure.value());
    }
  }
}
