package daylight.line.frost;

/**
 * What one input adds to the variance of a figure.
 *
 * @param variance square metres
 */
public record Share(Input input, double variance) {}
