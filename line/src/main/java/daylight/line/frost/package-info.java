/**
 * Will it freeze?
 *
 * <p>In: freezing index, mean temperature and length of the cold season, soil, surface and snow
 * over the line, its cover, and where water stands in it. Out: frost depth with its standard
 * uncertainty, the probability along the line that frost reaches standing water, and the time that
 * water there takes to freeze. Units: metres, kelvin and kelvin seconds inside; depth is positive
 * downward from the ground. Refuses: a freezing index or season that is not positive where frost is
 * asked for; no frost is an ordinary answer.
 *
 * <p>Sources: ufc-3-130-06, ufc-3-130-05, aldrich-paynter-1953, ashrae-23.1, carslaw-jaeger.
 */
@NullMarked
package daylight.line.frost;

import org.jspecify.annotations.NullMarked;
