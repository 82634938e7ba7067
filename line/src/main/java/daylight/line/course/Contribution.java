package daylight.line.course;

/**
 * A share of the variance of a figure.
 *
 * @param source the reading of an entry, or the prior, that it comes from
 * @param share from 0 to 1; those of one figure sum to 1
 */
public record Contribution(Source source, double share) {
  /** Whether no entry stands behind it. */
  public boolean assumed() {
    return source.assumed();
  }
}
