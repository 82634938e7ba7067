/**
 * Where a line that is too long for one sheet is cut into several.
 *
 * <p>In: the ways that the pipes take, what lies beside them, and how much ground a sheet holds.
 * Out: the parts, numbered from one on, each with the ground it shows and the matches: the places
 * of the pipe where one part hands over to another, the same place for both. Every station of every
 * way and everything beside it lies well inside at least one part; what lies within {@link
 * daylight.report.cut.Cutter#OVERLAP} of a match lies inside both. Metres, radians clockwise from
 * grid north. It draws nothing and refuses a sheet that holds no more ground than its overlaps.
 *
 * <p>Start with {@link daylight.report.cut.Cutter}.
 */
@NullMarked
package daylight.report.cut;

import org.jspecify.annotations.NullMarked;
