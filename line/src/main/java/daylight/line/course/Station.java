package daylight.line.course;

import daylight.line.book.Place;
import daylight.line.measure.Measured;
import daylight.line.survey.Covariance2;
import daylight.line.survey.PlanPoint;
import org.jspecify.annotations.Nullable;

/**
 * The pipe at one place.
 *
 * @param place which place
 * @param spot its position in plan, on the site grid
 * @param spread the covariance of that position
 * @param bearing in which the pipe runs downstream there, radians clockwise from grid north
 * @param bearingSd standard uncertainty of that bearing, radians
 * @param invert height of the inside bottom above the site datum, metres; null when nothing tells
 *     heights
 * @param ground height of the ground above it, metres; null when nothing tells heights
 * @param depth of the invert below the ground, metres; null when no depth was ever read
 */
public record Station(
    Place place,
    PlanPoint spot,
    Covariance2 spread,
    double bearing,
    double bearingSd,
    @Nullable Measured invert,
    @Nullable Measured ground,
    @Nullable Measured depth) {

  /** Standard uncertainty of the position square to the pipe, metres. */
  public double across() {
    return along(bearing + Math.PI / 2);
  }

  /** Standard uncertainty of the position in the direction of a bearing, metres. */
  public double along(double bearing) {
    double e = StrictMath.sin(bearing);
    double n = StrictMath.cos(bearing);
    double variance =
        e * e * spread.xx() + e * n * (spread.xy() + spread.yx()) + n * n * spread.yy();
    return Math.sqrt(Math.max(0, variance));
  }
}
