package daylight.line.survey;

import java.util.Arrays;
import java.util.List;
import org.ejml.data.DMatrixRMaj;

/**
 * The equations of a network at one state, whitened: every row divided by its standard deviation,
 * and freed of its correlation with the rows before it in its block.
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
    double[] gradient = new double[unknowns];
    for (int row = 0; row < equations.size(); row++) {
      Equation equation = equations.get(row);
      Arrays.fill(gradient, 0);
      double raw = equation.misfit(state, gradient);
      Block block = equation.block();
      int at = equation.row();
      int first = row - at;
      for (int before = 0; before < at; before++) {
        double share = block.root(at, before);
        raw -= share * misfit[first + before];
        for (int k = 0; k < unknowns; k++) {
          gradient[k] -= share * design.get(first + before, k);
        }
      }
      double own = block.root(at, at);
      misfit[row] = raw / own;
      for (int k = 0; k < unknowns; k++) {
        design.set(row, k, gradient[k] / own);
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
