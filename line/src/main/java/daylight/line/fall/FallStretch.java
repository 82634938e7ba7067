package daylight.line.fall;

import daylight.line.book.Place;
import daylight.line.measure.Measured;
import org.jspecify.annotations.Nullable;

/**
 * The fall of one stretch of a reach.
 *
 * @param from its upstream end
 * @param to its downstream end, on the same reach
 * @param whole true for the reach from end to end, false for a part of it
 * @param drop how much lower the downstream end lies, metres
 * @param slope drop over length along the pipe, positive when it falls with the water
 * @param limit the smallest slope the rule asks of it; null where the rule has none, or the bore is
 *     not known
 * @param belowLimit probability that the slope is below that limit; null without a limit
 * @param adverse probability that it falls against the water; 0 where nobody knows which way the
 *     water goes
 */
public record FallStretch(
    Place from,
    Place to,
    boolean whole,
    Measured drop,
    Measured slope,
    @Nullable FallLimit limit,
    @Nullable Double belowLimit,
    double adverse) {}
