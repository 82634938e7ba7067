/**
 * The counter that a camera burns into its picture, found and read on every frame.
 *
 * <p>In: a recording, and where its counter stands if somebody said so. Out: what the counter
 * showed on each frame and a track of it, or that there is none, with the reason; never a clock or
 * another figure in its place. Start at {@link daylight.footage.counter.CounterReader}. Units:
 * seconds from the first frame; metres; pixels of the picture as coded.
 *
 * <p>How: over frames far apart the picture's edges cancel out and those of letters stay ({@code
 * Survey}). Their lines are cut into glyphs ({@code Ink}, {@code Cut}), glyphs put together by
 * shape ({@code Kinds}) and named by a small network ({@code Letters}) and by the counter's own
 * arithmetic ({@code Mended}). Where brightness leaves a doubt, colour is looked at too ({@code
 * View}). Every frame is read once; what cannot be cut is kept and compared with what is known of
 * each shape once its neighbours say which figures are possible ({@code SecondLook}, {@code
 * Likeness}). Figures are judged by how they go ({@code Judge}), and the most likely path through
 * what was read leaves smudged digits aside ({@code Path}). The whole, with figures: {@code
 * docs/counter.md}.
 *
 * <p>Refuses nothing: what cannot be told is unknown. A figure without a unit is taken for metres
 * where it has two decimals and for feet otherwise, and its unit is empty then.
 *
 * <p>Sources: none. Speeds and sizes are common practice; all other limits and prices were set on
 * clips of our own and are rules of thumb.
 */
@NullMarked
package daylight.footage.counter;

import org.jspecify.annotations.NullMarked;
