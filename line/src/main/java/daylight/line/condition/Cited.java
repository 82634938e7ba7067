package daylight.line.condition;

import daylight.line.measure.Mark;
import org.jspecify.annotations.Nullable;

/**
 * Where a row of a scheme comes from.
 *
 * @param clause where in the source it stands
 * @param source id in the list of sources
 * @param mark how the figures were come by
 * @param note what a reader of the row should know; null for nothing
 */
public record Cited(String clause, String source, Mark mark, @Nullable String note) {}
