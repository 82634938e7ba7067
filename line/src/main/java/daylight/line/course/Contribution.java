package daylight.line.course;

/**
 * A share of the variance of a figure.
 *
 * @param source the label of the entry, or the id of the prior, that it comes from
 * @param assumed true for a prior that no entry stands behind
 * @param share from 0 to 1; those of one figure sum to 1
 */
public record Contribution(String source, boolean assumed, double share) {}
