package daylight.line.fall;

import daylight.line.measure.Mark;

/**
 * The smallest slope a rule asks for.
 *
 * @param rules id of the rule set
 * @param clause where in the rule it stands
 * @param slope as a ratio, rise over run
 * @param source id in the list of sources
 * @param mark how the figure was come by
 */
public record FallLimit(String rules, String clause, double slope, String source, Mark mark) {}
