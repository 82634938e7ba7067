package daylight.line.survey;

/**
 * The covariance of one position with another, square metres: xy is the covariance of the x of the
 * first with the y of the second.
 */
public record Covariance2(double xx, double xy, double yx, double yy) {}
