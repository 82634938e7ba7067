package daylight.line.dig;

import daylight.line.book.Papers;
import org.jspecify.annotations.Nullable;

/**
 * A mark of another service.
 *
 * @param label of the entry
 * @param service whose
 * @param away from the box to its nearest place, metres, 0 where it crosses; null where a point of
 *     it has no place in plan, so that it may be anywhere
 * @param byHand whether it is so near that the box is dug by hand alone, or of unknown place
 */
public record MarkNear(
    String label, Papers.Service service, @Nullable Double away, boolean byHand) {}
