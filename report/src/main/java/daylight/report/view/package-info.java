/**
 * The line seen from four sides at once: from above, from the side, straightened out, and in the
 * footage.
 *
 * <p>In: a {@link daylight.report.draw.Subject}, and tracks of its recordings. Out: the three
 * drawings and a table of places along the line, each with where it lies on every drawing and what
 * is known there in words, by which a page moves one cursor through all of them without computing
 * anything; the same as a table to be read by those who do not see the drawings; and for each
 * recording at which moment it shows which of the places. The panel beside the drawings, its style
 * and the scripts are here too, and serve the pages of the workspace, which load them one by one,
 * as well as the report, which brings them along as one. Positions are in points of the sheets, of
 * which a side may have several, moments in seconds from the first frame. Nothing is estimated
 * here: a place between two stations of the line lies on the straight line between them and is told
 * what its nearest station knows, and where nothing is known the table says nothing.
 *
 * <p>Start with {@link daylight.report.view.Views} and {@link daylight.report.view.CursorPanel}.
 */
@NullMarked
package daylight.report.view;

import org.jspecify.annotations.NullMarked;
