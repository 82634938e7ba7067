/**
 * How the invert falls and where water stood.
 *
 * <p>In: a {@link daylight.line.course.Line} and a table of smallest slopes. Out: {@link
 * daylight.line.fall.Fall}, the fall of every stretch with its uncertainty, the probability that it
 * is flatter than the rule or runs backward, and the water seen. Metres; slopes are ratios,
 * positive when the pipe falls with the water. Refuses nothing: a reach without heights has no
 * stretch. Start with {@link daylight.line.fall.Faller}. Where water would stand by the grade alone
 * tells {@link daylight.line.fall.Ponder}, from profiles drawn from the joint covariance.
 *
 * <p>Sources: the rule tables carry their own, clause by clause; they are for new work, and an
 * existing drain may be lawful with less. σ of a slope from the covariance of its ends: propagation
 * of variance, Ghilani, <em>Adjustment Computations</em>, ch. 6 (from memory).
 */
@NullMarked
package daylight.line.fall;

import org.jspecify.annotations.NullMarked;
