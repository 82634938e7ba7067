/**
 * From counter readings to cable.
 *
 * <p>In: the passes of a visit with their zero, checks and slips, and tracks of the footage. Out:
 * counter metres since the entry, with scale, zero and slack as estimates that the course goes on
 * to refine. Distances are metres, growing away from the entry; time is seconds from the first
 * frame. What the camera did comes from {@link daylight.line.counter.Events}, what book and
 * recording do not agree on from {@link daylight.line.counter.Fitted}, where it was located at a
 * time from {@link daylight.line.counter.ByClock}, which frames show a distance from {@link
 * daylight.line.counter.Passages}. Refuses nothing: a zero nobody knows is an estimate with a large
 * uncertainty. A counter that was zeroed again on the way makes earlier readings ambiguous; what
 * was seen after it is a pass of its own whose zero is negative. Start with {@link
 * daylight.line.counter.Counter}.
 *
 * <p>Sources: common practice for every figure, by way of the priors.
 */
@NullMarked
package daylight.line.counter;

import org.jspecify.annotations.NullMarked;
