package daylight.line.normal;

import java.util.Optional;

/** Normal equations, built up equation by equation. */
public final class Normal {
  private final Pattern pattern;
  private final Blocks blocks;
  private final double[] right;
  private double cost;

  public Normal(Pattern pattern) {
    this.pattern = pattern;
    this.blocks = new Blocks(pattern);
    this.right = new double[pattern.size()];
  }

  /**
   * Adds one observation.
   *
   * @param gradient of the modelled value
   * @param misfit observed less modelled
   * @param sd standard uncertainty of the observation, above zero
   * @throws IllegalArgumentException if it ties blocks that are not neighbours
   */
  public void observe(Gradient gradient, double misfit, double sd) {
    double weight = 1 / (sd * sd);
    cost += weight * misfit * misfit;
    for (int i = 0; i < gradient.count(); i++) {
      int a = gradient.unknown(i);
      double wa = weight * gradient.value(i);
      right[a] += wa * misfit;
      blocks.add(a, a, wa * gradient.value(i));
      for (int j = 0; j < i; j++) {
        blocks.add(a, gradient.unknown(j), wa * gradient.value(j));
      }
    }
  }

  /** The weighted sum of squared misfits. */
  public double cost() {
    return cost;
  }

  /**
   * The factor of the matrix; empty where an unknown is determined by nothing.
   *
   * @param damping by what share every diagonal element is raised first, zero or more
   */
  public Optional<Factor> factor(double damping) {
    return Factor.of(pattern, blocks.copy(), damping);
  }

  /** The step of every unknown that takes the misfits away as well as can be. */
  public double[] step(Factor factor) {
    return factor.solve(right);
  }

  /** By how much a step lessens the weighted sum of squared misfits, if the model were linear. */
  public double gain(double[] step) {
    double gain = 0;
    for (int k = 0; k < step.length; k++) {
      gain += right[k] * step[k];
    }
    return gain;
  }
}
