/**
 * Will it freeze?
 *
 * <p>In: freezing index, mean temperature and length of the cold season, soil, surface and snow
 * over the line, its cover, and where water stands in it. Out: {@link
 * daylight.line.frost.FrostDepth}, how deep the frost of a winter goes, with its standard
 * uncertainty and what that comes from; {@link daylight.line.frost.FrostAlong}, the probability
 * along the line that frost gets to the pipe and to standing water, and how long that water takes
 * to freeze. Units: metres, °C and °C·days, seconds, watts per metre and kelvin, kilograms per
 * cubic metre; depth is positive downward from the ground. Refuses: a negative freezing index, a
 * season without length, ground without weight. No frost is an ordinary answer; frozen ground all
 * year and dry ground are told as what the formula does not hold for. Start with {@link
 * daylight.line.frost.Frost}; along a line with {@link daylight.line.frost.Froster}; a pipe in a
 * steady cold by itself with {@link daylight.line.frost.Freezing}.
 *
 * <p>One soil all the way down, one surface, no heat from houses or from water that runs. What can
 * be said of an outlet is only that its end lies in the air's cold whatever its cover.
 *
 * <p>Sources: ufc-3-130-06, kersten-1949, neumann, ashrae-23.1, carslaw-jaeger, incropera-4.1; the
 * tables carry their own.
 */
@NullMarked
package daylight.line.frost;

import org.jspecify.annotations.NullMarked;
