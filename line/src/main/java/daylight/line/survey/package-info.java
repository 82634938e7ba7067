/**
 * The survey room: where do the landmarks and located spots lie, how sure is that, and which
 * reading does not fit the others?
 *
 * <p>In: a {@link PlaneNetwork} of {@link Sighting}s (tapes, so-far-along-so-far-out, bearings,
 * angles, directions, drops on a sketch, satellite fixes) or a {@link LevelNetwork} of {@link
 * LevelSighting}s, or a whole field book; readings that err together as {@link Correlated}. Out: an
 * {@link Adjustment} or {@link LevelAdjustment}: positions with their full joint covariance,
 * residuals, suspects, what nothing checks, and where each variance comes from. Start at {@link
 * Surveyor}.
 *
 * <p>Units: metres and radians. The site grid is x east, y north, z up; bearings and angles run
 * clockwise, bearings from grid north. A residual is computed minus observed, so that observed plus
 * residual is the adjusted value.
 *
 * <p>Datum in plan: two or more {@link Sighting.Fixed} points are the datum. With one, grid north
 * comes from bearings if there are any, else it points from the fixed point to the first base
 * landmark that is not fixed. With none, the origin is the first base landmark and grid north
 * points to the second; with one base landmark only, bearings must give north. Without base
 * landmarks, positions read in the grid carry it themselves. Sketched drops are read in that same
 * grid. Satellite fixes never define the grid: an unknown shift and turn (no scale) ties them to
 * it.
 *
 * <p>Refused as an ordinary answer: a network without a datum, or in which nothing can be reached.
 * A point that cannot be determined, or that has two mirror positions, is listed with its reason
 * and does not sink the rest. Refused by exception: impossible values such as a standard deviation
 * that is not positive.
 *
 * <p>Sources: C. D. Ghilani, Adjustment Computations (least squares, ellipses, ch. 11–19); W.
 * Baarda, A testing procedure for use in geodetic networks, 1968 (data snooping, detectable sizes);
 * G. Strang and K. Borre, Linear Algebra, Geodesy, and GPS, 1997; C. F. F. Karney, Algorithms for
 * geodesics, 2013 (through GeographicLib).
 */
@NullMarked
package daylight.line.survey;

import org.jspecify.annotations.NullMarked;
