package daylight.line.dig;

import daylight.line.book.Place;
import daylight.line.measure.Measured;
import daylight.line.measure.Statement;
import daylight.line.survey.Covariance2;
import daylight.line.survey.PlanPoint;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A place of the pipe, ready to be dug for.
 *
 * @param ticket of the notify-before-you-dig service; told before anything else
 * @param place which place
 * @param spot above it, on the site grid
 * @param spread the covariance of that position on the site grid
 * @param ties the two tapes that find it again best; null when fewer than two landmarks have a
 *     place or none meet well
 * @param turned a landmark, an angle and a distance that find it too; null with fewer than two
 *     landmarks
 * @param invert depth of the inside bottom below the ground; null when no depth was ever read
 * @param crown depth of the inside top, which the wall of the pipe lies above; null without a depth
 *     or a bore
 * @param trench what the deepest that it may well be calls for
 * @param box to open
 * @param marks of other services, nearest first
 * @param quality of the locate as the trade grades it
 * @param told what else is to be said
 */
public record DigTarget(
    DigTicket ticket,
    Place place,
    PlanPoint spot,
    Covariance2 spread,
    @Nullable TapeTies ties,
    @Nullable TurnedTie turned,
    @Nullable Measured invert,
    @Nullable Measured crown,
    Trench trench,
    DigBox box,
    List<MarkNear> marks,
    LocatedQuality quality,
    List<Statement> told)
    implements Dig {
  public DigTarget {
    marks = List.copyOf(marks);
    told = List.copyOf(told);
  }

  /** What the walls of a dig call for by their height. */
  public enum Trench {
    /** Not so deep, as far as the depth is known. */
    SHALLOW,
    /** A way out within reach. */
    WAY_OUT,
    /** A protective system. */
    PROTECT,
    /** Nobody read a depth: to be taken for deep until it is known. */
    UNKNOWN
  }
}
