/**
 * Drawings: the line from above, from the side and straightened out, once for screen and paper.
 *
 * <p>In: a {@link daylight.report.draw.Subject}. Out: SVG as wide as a Letter sheet lying on its
 * side, one unit being a point (1/72 in), with the scale stated; the strip is as high as its rows
 * take. Elements of the line carry {@code data-place} and {@code data-distance} (metres from the
 * upstream node of the reach), so that a page can move a cursor along them; rows of the strip carry
 * {@code data-band-from}, {@code -to} (metres along the route) and {@code -left}, {@code -right}
 * (their edges on the sheet). Colour never carries meaning alone. Text is measured with the font
 * that is shipped, and no text overlaps another: what finds no room goes into a numbered key.
 *
 * <p>What is not known is not drawn; the drawing says what is missing. Start with {@link
 * daylight.report.draw.PlanDrawing}, {@link daylight.report.draw.ProfileDrawing} and {@link
 * daylight.report.draw.StripDrawing}.
 */
@NullMarked
package daylight.report.draw;

import org.jspecify.annotations.NullMarked;
