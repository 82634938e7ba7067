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
 * shape ({@code Kinds}) and named by a small network ({@code Letters}); names that make the counter
 * go roughly are mended by its own arithmetic ({@code Mended}). Then every frame is read once, cut
 * again or, where that fails, compared at the places where glyphs are known to stand ({@code
 * Cells}). Figures are judged by how they go ({@code Judge}), and the most likely path through what
 * was read leaves smudged digits aside ({@code Path}).
 *
 * <p>Refuses nothing: what cannot be told is unknown. A figure without a unit is taken for metres
 * where it has two decimals and for feet otherwise, and its unit is empty then.
 *
 * <p>Sources: none; speeds and sizes are common practice.
 */
@NullMarked
package daylight.footage.counter;

import org.jspecify.annotations.NullMarked;
