package daylight.line.fall;

import daylight.line.book.Place;
import daylight.line.measure.Measured;
import org.jspecify.annotations.Nullable;

/**
 * Water that stood in the pipe when the camera went through.
 *
 * @param finding the label of the finding
 * @param from its upstream end
 * @param to its downstream end; null when only one place was noted
 * @param depth greatest depth of the water, metres; null when it was not judged
 * @param share of the bore that it filled at most; null when it was not judged
 * @param still whether it was noted as still; null when not noted
 * @param held what holds it
 */
public record WaterSeen(
    String finding,
    Place from,
    @Nullable Place to,
    @Nullable Measured depth,
    @Nullable Double share,
    @Nullable Boolean still,
    Held held) {}
