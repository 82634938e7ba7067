/**
 * The field book's values and everything that is computed from them.
 *
 * <p>In: a field book, tracks read from footage, priors and rules, all as immutable values. Out: a
 * line with its covariance, and answers. Units: SI and radians throughout; heights up, falls and
 * depths positive downward as each type says. Refuses: whatever a value's own constructor refuses;
 * data that cannot answer is an ordinary result that says why. Touches no file, clock, chance,
 * locale, log or thread, so that the same book gives the same line. The packages in reading order,
 * which is also the only import order: measure, book, then counter, sonde and survey, which never
 * see each other, then course, dig, fall, flow, frost, condition, change, answer, trial.
 */
@NullMarked
package daylight.line;

import org.jspecify.annotations.NullMarked;
