package daylight.line.survey;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How well the readings of one network fit together.
 *
 * @param residuals one per component of every reading used, in order of entry
 * @param dof readings beyond the necessary
 * @param weightedSumOfSquares of the residuals, each over its standard deviation
 * @param suspects the readings that do not fit, the worst first
 */
public record Fit(
    List<Residual> residuals, int dof, double weightedSumOfSquares, List<Suspect> suspects) {
  public Fit {
    residuals = List.copyOf(residuals);
    suspects = List.copyOf(suspects);
  }

  /**
   * √(weighted sum of squares / dof): near 1 when the standard deviations given are right. Only
   * reported; nothing is scaled by it. Empty without redundancy.
   */
  public OptionalDouble sigma0Ratio() {
    return dof == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(StrictMath.sqrt(weightedSumOfSquares / dof));
  }

  /** Entries of which no component is checked by the others, in order. */
  public List<String> unchecked() {
    var checked = residuals.stream().filter(Residual::checked).map(Residual::entry).toList();
    return residuals.stream()
        .map(Residual::entry)
        .filter(entry -> !checked.contains(entry))
        .distinct()
        .toList();
  }

  /** Entries the result was computed without, because they alone explain a misfit. */
  public List<String> setAside() {
    return suspects.stream().filter(Suspect::setAside).map(Suspect::entry).distinct().toList();
  }
}
