package daylight.line.survey;

import java.util.List;

/**
 * A reading that does not fit the others at the family-wise rate asked for.
 *
 * @param entry the book entry with the largest standardised residual
 * @param quantity which component of it
 * @param read the reading as written, metres or radians
 * @param blunder estimate of how much too large it was read, metres or radians:
 *     −residual/redundancy; the reading minus this is what the others say
 * @param statistic the standardised residual
 * @param inseparable other entries that explain the misfit about as well: their statistics
 *     correlate above 0.9 with this one
 * @param setAside whether the result was computed without this component of the entry (its other
 *     component stays in); only a suspect that stands alone is set aside
 */
public record Suspect(
    String entry,
    Quantity quantity,
    double read,
    double blunder,
    double statistic,
    List<String> inseparable,
    boolean setAside) {
  public Suspect {
    inseparable = List.copyOf(inseparable);
  }
}
