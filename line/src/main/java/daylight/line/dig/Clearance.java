package daylight.line.dig;

/**
 * How far a place lies, level, from something on the ground.
 *
 * @param label of the boundary or landmark
 * @param kind the message key of what it is, such as {@code boundary.foundation}
 * @param estimate the distance from the place where it is estimated, metres
 * @param least the distance is less than this once in forty, metres
 * @param most it is more than this once in forty, metres
 * @param limit that was asked about, metres
 * @param nearer the probability that it is nearer than that
 */
public record Clearance(
    String label,
    String kind,
    double estimate,
    double least,
    double most,
    double limit,
    double nearer) {}
