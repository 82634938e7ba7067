package daylight.line.survey;

import java.util.List;

/**
 * A reading that does not fit the others at the family-wise rate asked for.
 *
 * @param named the reading with the largest standardised residual
 * @param rivals other readings that explain the misfit about as well: their statistics correlate
 *     above 0.9 with that of the one named; in order of entry
 * @param setAside whether the result was computed without this component of the entry (its other
 *     component stays in); only a suspect that stands alone is set aside
 */
public record Suspect(Misread named, List<Misread> rivals, boolean setAside) {
  public Suspect {
    rivals = List.copyOf(rivals);
  }

  /**
   * A reading, and what is wrong with it if it alone is wrong.
   *
   * @param entry the book entry
   * @param quantity which component of it
   * @param read the reading as written, metres or radians
   * @param blunder how much too large it was read, metres or radians: −residual/redundancy; the
   *     reading minus this is what the others say
   * @param sd standard deviation of the blunder, metres or radians
   * @param statistic the standardised residual
   */
  public record Misread(
      String entry, Quantity quantity, double read, double blunder, double sd, double statistic) {}

  /** The entry named. */
  public String entry() {
    return named.entry;
  }

  /** Which component of it. */
  public Quantity quantity() {
    return named.quantity;
  }

  /** By how much too large the reading named is, metres or radians. */
  public double blunder() {
    return named.blunder;
  }

  /** The standardised residual of the reading named. */
  public double statistic() {
    return named.statistic;
  }

  /** The entries that cannot be told from the one named, in order. */
  public List<String> inseparable() {
    return rivals.stream()
        .map(Misread::entry)
        .filter(entry -> !entry.equals(named.entry))
        .distinct()
        .toList();
  }
}
