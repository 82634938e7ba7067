/**
 * What footage lends to the hand-over: pictures of what was found, and what recordings there are.
 *
 * <p>In: values that another room read from video; nothing here knows a codec. Out: the same, to be
 * shown at their places. Units: seconds from the first frame; pixels. Refuses: two stills of one
 * file name.
 *
 * <p>Sources: none.
 */
@NullMarked
package daylight.report.shots;

import org.jspecify.annotations.NullMarked;
