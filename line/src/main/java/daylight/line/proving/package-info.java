/**
 * What the tests on the line proved, and no more.
 *
 * <p>In: a {@link daylight.line.book.FieldBook}, the {@link daylight.line.course.Line} estimated
 * from it, a visit, priors and published limits as data. Out: {@link
 * daylight.line.proving.Proving}: what each hold test lost, with its doubt, against each limit by
 * itself; what went through from where to where, and whether the book says so; how much of the
 * water put in was caught; and of every fixture, roof and inlet how it is known where it comes in.
 * SI units: metres, cubic metres, seconds; a loss is positive when water left. Refuses nothing:
 * what cannot be said names what is missing. A hold test speaks for the stretch that was held, on
 * that day, under that water. Start with {@link daylight.line.proving.Prover}; a hold test by
 * itself is judged by {@link daylight.line.proving.Holds}.
 *
 * <p>Sources: the limits carry their own (en-1610-w, ten-states-33.94, lake-orion-52.18,
 * philadelphia-p-312). Propagation of variance: Ghilani, <em>Adjustment Computations</em>, ch. 6
 * (from memory).
 */
@NullMarked
package daylight.line.proving;

import org.jspecify.annotations.NullMarked;
