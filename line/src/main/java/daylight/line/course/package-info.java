/**
 * Where the pipes of a site run, how deep, and how sure that is.
 *
 * <p>In: a {@link daylight.line.book.FieldBook}, tracks of its footage, priors. Out: {@link
 * daylight.line.course.Line}: for every reach its stations in plan and profile with covariance,
 * every finding and stretch of sight at its place, how each locate fits, cable against ground, and
 * for any figure the entries it rests on. Where that is not known the line says which measurement
 * is missing.
 *
 * <p>Metres on the site grid: x east, y north, heights up from the site datum, depths down from the
 * ground; bearings in radians clockwise from grid north; distances along a reach from its upstream
 * node; falls positive with the water. Refuses nothing: a book that cannot be estimated gives a
 * line that says so. Every visit counts for the geometry.
 *
 * <p>Start with {@link daylight.line.course.Estimator}. The mathematics: a chain of straight steps
 * whose unknowns are the turns between them (so a pipe keeps its length), adjusted by least squares
 * with everything observed; small turns are a random walk in bearing and pitch, whose size is a
 * prior by material. Sources: Ghilani, <em>Adjustment Computations</em> (adjustment, propagation);
 * priors as marked in their file.
 */
@NullMarked
package daylight.line.course;

import org.jspecify.annotations.NullMarked;
