package daylight.line.course;

import daylight.line.book.Finding;
import daylight.line.book.Place;
import daylight.line.counter.Counter;
import java.util.List;
import java.util.Optional;

/**
 * By the counter's own zero and slips, and the zero, scale and slack that the line was estimated
 * with.
 *
 * <p>A reading before the entry is taken for the entry, one beyond where the pass is known to have
 * come for its end: what a counter shows while the camera lies in the truck is no place.
 */
final class CountedCamera implements Camera {
  private final Counter counter;
  private final double zero;
  private final double pushed;
  private final double pulled;
  private final List<PlacedPass.Leg> legs;

  /**
   * @param zero by how much the counter was off at the entry, metres
   * @param pushed counter metres for a metre of pipe while the cable is pushed
   * @param pulled the same while it is pulled back
   * @param legs where the pass went
   */
  CountedCamera(
      Counter counter, double zero, double pushed, double pulled, List<PlacedPass.Leg> legs) {
    this.counter = counter;
    this.zero = zero;
    this.pushed = pushed;
    this.pulled = pulled;
    this.legs = List.copyOf(legs);
  }

  @Override
  public Optional<Place> at(double reading, Finding.Moving moving) {
    double rest =
        (counter.sinceEntry(reading) - zero) / (moving == Finding.Moving.PUSHING ? pushed : pulled);
    for (PlacedPass.Leg leg : legs) {
      double length = Math.abs(leg.to().distance() - leg.from().distance());
      if (rest <= length || leg.equals(legs.getLast())) {
        double within = Math.clamp(rest, 0, length);
        double distance = leg.from().distance() + (leg.down() ? within : -within);
        return Optional.of(new Place(leg.from().reach(), distance));
      }
      rest -= length;
    }
    return Optional.empty();
  }
}
