package daylight.line.proving;

import daylight.line.measure.Measured;

/**
 * What a hold test lost.
 *
 * @param lost cubic metres over the whole test
 * @param rate cubic metres per second, on the average over the test
 * @param reading standard uncertainty of the lost water by the reading alone, cubic metres; it does
 *     not grow with time, so a longer test tells more
 * @param atLeast true where the level left the riser: more was lost than could be read
 */
public record Leak(Measured lost, Measured rate, double reading, boolean atLeast) {}
