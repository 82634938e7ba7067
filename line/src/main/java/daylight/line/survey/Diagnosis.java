package daylight.line.survey;

import java.util.ArrayList;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.jspecify.annotations.Nullable;

/**
 * The residuals of a settled network and what they can tell. A blunder of one unit in reading i
 * moves the whitened readings along its probe uᵢ; with whitened residuals v and their covariance Q
 * the statistic is wᵢ = uᵢᵀv/√(uᵢᵀQuᵢ), the redundancy uᵢᵀQuᵢ/uᵢᵀuᵢ, the estimated blunder
 * −uᵢᵀv/(uᵢᵀQuᵢ) (Baarda 1968; for uncorrelated readings v/(σ√r), r and −v/r).
 */
final class Diagnosis {
  private final List<Equation> equations;
  private final double[] misfit;
  private final DMatrixRMaj covariance;
  private final List<double[]> probes;

  Diagnosis(List<Equation> equations, Linearised settled, Factored factored) {
    this.equations = equations;
    this.misfit = settled.misfit();
    this.covariance = factored.residualCovariance();
    this.probes = new ArrayList<>();
    for (int i = 0; i < equations.size(); i++) {
      probes.add(probe(i));
    }
  }

  /** The whitened image of one unit of reading i: its own row and the one after. */
  private double[] probe(int i) {
    Equation equation = equations.get(i);
    double rho = equation.correlation();
    double own = 1 / (equation.sd() * StrictMath.sqrt(1 - rho * rho));
    double next = i + 1 < equations.size() ? equations.get(i + 1).correlation() : 0;
    return new double[] {own, -next * own / StrictMath.sqrt(1 - next * next)};
  }

  /** uᵢᵀQuⱼ */
  private double joint(int i, int j) {
    double sum = 0;
    for (int a = 0; a < 2; a++) {
      for (int b = 0; b < 2; b++) {
        double weight = probes.get(i)[a] * probes.get(j)[b];
        sum += weight == 0 ? 0 : weight * covariance.get(i + a, j + b);
      }
    }
    return sum;
  }

  private double along(int i) {
    double[] u = probes.get(i);
    return u[0] * misfit[i] + (u[1] == 0 ? 0 : u[1] * misfit[i + 1]);
  }

  double redundancy(int i) {
    double[] u = probes.get(i);
    return Math.clamp(joint(i, i) / (u[0] * u[0] + u[1] * u[1]), 0, 1);
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

  /** How alike the statistics of two readings are, 0 to 1. */
  double alikeness(int i, int j) {
    return Math.abs(joint(i, j)) / StrictMath.sqrt(joint(i, i) * joint(j, j));
  }

  Residual residual(int i, double noncentrality) {
    Equation equation = equations.get(i);
    double rho = equation.correlation();
    double rest = StrictMath.sqrt(1 - rho * rho);
    double own = rest * misfit[i] + (rho == 0 ? 0 : rho * misfit[i - 1]);
    double variance = rest * rest * covariance.get(i, i);
    if (rho != 0) {
      variance +=
          rho * rho * covariance.get(i - 1, i - 1) + 2 * rho * rest * covariance.get(i, i - 1);
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
        equation.sd() * own,
        equation.sd() * StrictMath.sqrt(Math.max(0, variance)),
        redundancy(i),
        standardised,
        detectable);
  }
}
