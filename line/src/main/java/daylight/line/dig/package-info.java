/**
 * Where to open the ground to reach a place of the pipe, and whose ground that is.
 *
 * <p>In: a {@link daylight.line.book.FieldBook}, the {@link daylight.line.course.Line} estimated
 * from it, a place, and the day. Out: {@link daylight.line.dig.DigTarget}, the spot with the two
 * tapes that find it again without paint, the interval of its depth, the box to open, the state of
 * the notify-before-you-dig ticket and other services' marks near it; and for any place the
 * probability that it lies on either side of a boundary, its clearance to a building, well or tree,
 * and how the trade would grade the quality of the locate. SI units; angles in radians, bearings
 * clockwise from grid north; depths down from the ground. Positions are normally distributed with
 * the covariance of the vector from the landmark that is measured from. Refuses limits that are not
 * positive; a place without a course is an ordinary result that says so. Start with {@link
 * daylight.line.dig.Digger}.
 *
 * <p>Whoever digs gives notice first, waits for the marks, digs by hand near them and keeps to the
 * local codes. What is computed here replaces none of that.
 *
 * <p>Sources: osha-1926-p, asce-38-22, sunshine811-tolerance, owen-1956, common-practice.
 */
@NullMarked
package daylight.line.dig;

import org.jspecify.annotations.NullMarked;
