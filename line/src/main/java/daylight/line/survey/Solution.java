package daylight.line.survey;

import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;

/**
 * A settled adjustment, one for plan and levels alike. Covariances take the standard deviations of
 * the readings at face value.
 */
final class Solution {
  private final double[] state;
  private final List<Equation> equations;

  /** Change of each unknown (row) by one standard deviation of each whitened reading (column). */
  private final DMatrixRMaj gain;

  private final DMatrixRMaj covariance;
  private final Fit fit;

  Solution(double[] state, List<Equation> equations, Factored factored, Fit fit) {
    this.state = state.clone();
    this.equations = List.copyOf(equations);
    this.gain = factored.gain();
    this.covariance = factored.covariance();
    this.fit = fit;
  }

  double at(int unknown) {
    return state[unknown];
  }

  double[] state() {
    return state.clone();
  }

  Fit fit() {
    return fit;
  }

  /** Covariance of two unknowns; a held coordinate, marked −1, has none. */
  double covariance(int a, int b) {
    return a < 0 || b < 0 ? 0 : covariance.get(a, b);
  }

  /** The variance of a linear function of the unknowns, by entry. */
  Shares shares(double[] weights) {
    var byEntry = new TreeMap<String, Double>();
    double variance = 0;
    int[] used = IntStream.range(0, weights.length).filter(k -> weights[k] != 0).toArray();
    for (int row = 0; row < gain.numCols; row++) {
      double influence = 0;
      for (int unknown : used) {
        influence += weights[unknown] * gain.get(unknown, row);
      }
      byEntry.merge(equations.get(row).entry(), influence * influence, Double::sum);
      variance += influence * influence;
    }
    return new Shares(variance, byEntry);
  }

  int unknowns() {
    return state.length;
  }
}
