package daylight.line.survey;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The residuals of a settled network and what they can tell. A blunder of one unit in reading i
 * moves the whitened readings along its probe uᵢ; with whitened residuals v and their covariance Q
 * the statistic is wᵢ = uᵢᵀv/√(uᵢᵀQuᵢ), the redundancy uᵢᵀQuᵢ/uᵢᵀuᵢ, the estimated blunder
 * −uᵢᵀv/(uᵢᵀQuᵢ) with standard deviation 1/√(uᵢᵀQuᵢ) (Baarda 1968; for uncorrelated readings
 * v/(σ√r), r, −v/r and σ/√r).
 */
final class Diagnosis {
  private final List<Equation> equations;
  private final double[] misfit;
  private final Factored factored;
  private final List<double[]> probes;

  Diagnosis(List<Equation> equations, Linearised settled, Factored factored) {
    this.equations = equations;
    this.misfit = settled.misfit();
    this.factored = factored;
    this.probes = equations.stream().map(e -> e.block().probe(e.row())).toList();
  }

  /** uᵢᵀQuⱼ */
  private double joint(int i, int j) {
    double[] one = probes.get(i);
    double[] other = probes.get(j);
    double sum = 0;
    for (int a = 0; a < one.length; a++) {
      for (int b = 0; b < other.length; b++) {
        double weight = one[a] * other[b];
        sum += weight == 0 ? 0 : weight * factored.residualCovariance(i + a, j + b);
      }
    }
    return sum;
  }

  private double along(int i) {
    double[] u = probes.get(i);
    double sum = 0;
    for (int a = 0; a < u.length; a++) {
      sum += u[a] * misfit[i + a];
    }
    return sum;
  }

  double redundancy(int i) {
    double square = 0;
    for (double each : probes.get(i)) {
      square += each * each;
    }
    return Math.clamp(joint(i, i) / square, 0, 1);
  }

  boolean checked(int i) {
    return redundancy(i) >= Residual.UNCHECKED_BELOW;
  }

  double statistic(int i) {
    return along(i) / StrictMath.sqrt(joint(i, i));
  }

  double blunder(int i) {
    return -along(i) / joint(i, i);
  }

  double blunderSd(int i) {
    return 1 / StrictMath.sqrt(joint(i, i));
  }

  /** How alike the statistics of two readings are, 0 to 1. */
  double alikeness(int i, int j) {
    return Math.abs(joint(i, j)) / StrictMath.sqrt(joint(i, i) * joint(j, j));
  }

  Residual residual(int i, double noncentrality) {
    Equation equation = equations.get(i);
    Block block = equation.block();
    int row = equation.row();
    int first = i - row;
    double own = 0;
    double variance = 0;
    for (int a = 0; a <= row; a++) {
      own += block.root(row, a) * misfit[first + a];
      for (int b = 0; b <= row; b++) {
        double weight = block.root(row, a) * block.root(row, b);
        variance += weight == 0 ? 0 : weight * factored.residualCovariance(first + a, first + b);
      }
    }
    @Nullable Double standardised = null;
    @Nullable Double detectable = null;
    if (checked(i)) {
      standardised = statistic(i);
      detectable = noncentrality / StrictMath.sqrt(joint(i, i));
    }
    return new Residual(
        equation.entry(),
        equation.quantity(),
        equation.observed(),
        block.sd(row),
        own,
        StrictMath.sqrt(Math.max(0, variance)),
        redundancy(i),
        standardised,
        detectable);
  }
}
