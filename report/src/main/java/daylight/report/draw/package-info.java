/**
 * Drawings: the line from above and from the side, once for screen and paper.
 *
 * <p>In: a {@link daylight.report.draw.Subject}. Out: SVG on a Letter sheet lying on its side, one
 * unit being a point (1/72 in), with the scale stated. Elements of the line carry {@code
 * data-place} and {@code data-distance} (metres from the upstream node of the reach), so that a
 * page can move a cursor along them. Colour never carries meaning alone. Text is measured with the
 * font that is shipped, and no text overlaps another: what finds no room goes into a numbered key.
 *
 * <p>What is not known is not drawn; the drawing says what is missing. Start with {@link
 * daylight.report.draw.PlanDrawing} and {@link daylight.report.draw.ProfileDrawing}.
 */
@NullMarked
package daylight.report.draw;

import org.jspecify.annotations.NullMarked;
