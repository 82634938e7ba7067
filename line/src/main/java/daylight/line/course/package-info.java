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
 * <p>Start with {@link daylight.line.course.Estimator}. The mathematics is in {@code
 * docs/estimator.md}: a pipe has a position and a direction at knots along it, and wanders between
 * them as a prior by material says; everything observed is adjusted with it by least squares, knot
 * by knot (room {@code normal}). Sources: madsen-2004, rasmussen-2006, garcia-fernandez-2015,
 * baarda-1968, teunissen-2000; priors as marked in their file.
 */
@NullMarked
package daylight.line.course;

import org.jspecify.annotations.NullMarked;
