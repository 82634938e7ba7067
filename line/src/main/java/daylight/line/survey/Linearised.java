package daylight.line.survey;

import java.util.List;
import org.ejml.data.DMatrixRMaj;

/**
 * The equations of a network at one state, whitened: every row divided by its standard deviation,
 * and freed of its correlation with the row before.
 */
final class Linearised {
  private final DMatrixRMaj design;
  private final double[] misfit;

  private Linearised(DMatrixRMaj design, double[] misfit) {
    this.design = design;
    this.misfit = misfit;
  }

  static Linearised of(List<Equation> equations, double[] state) {
    int unknowns = state.length;
    var design = new DMatrixRMaj(equations.size(), unknowns);
    double[] misfit = new double[equations.size()];
    for (int row = 0; row < equations.size(); row++) {
      Equation equation = equations.get(row);
      double[] gradient = new double[unknowns];
      double raw = equation.misfit(state, gradient);
      double rho = equation.correlation();
      double rest = StrictMath.sqrt(1 - rho * rho);
      double before = rho == 0 ? 0 : misfit[row - 1];
      misfit[row] = (raw / equation.sd() - rho * before) / rest;
      for (int k = 0; k < unknowns; k++) {
        double above = rho == 0 ? 0 : design.get(row - 1, k);
        design.set(row, k, (gradient[k] / equation.sd() - rho * above) / rest);
      }
    }
    return new Linearised(design, misfit);
  }

  /** One row per equation, one column per unknown. Not to be changed. */
  DMatrixRMaj design() {
    return design;
  }

  /** Computed minus observed, in standard deviations. Not to be changed. */
  double[] misfit() {
    return misfit;
  }

  double sumOfSquares() {
    double sum = 0;
    for (double each : misfit) {
      sum += each * each;
    }
    return sum;
  }
}
