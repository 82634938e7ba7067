package daylight.line.fall;

import daylight.line.book.Place;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where water would stand if it could run off by the grade alone: nothing dams it, nothing stands
 * against it, and it had the time to run off.
 *
 * @param spots along the pipes, half a metre apart or a little more
 * @param pools where water is likelier to stand than not
 * @param open stretches of which that cannot be said either way: it is neither likelier than not
 *     nor very unlikely
 * @param draws the profiles that were drawn
 */
public record Ponding(List<Spot> spots, List<Pool> pools, List<Open> open, Draws draws) {
  /** Water of no more than this counts for none, metres. */
  public static final double FILM = 0.010;

  public Ponding {
    spots = List.copyOf(spots);
    pools = List.copyOf(pools);
    open = List.copyOf(open);
  }

  /**
   * Water at one place.
   *
   * @param deeper the probability that water stands deeper there than {@link #FILM}
   * @param depth of that water, none included
   */
  public record Spot(Place place, double deeper, Range depth) {}

  /**
   * What a quantity is: in one of 40 cases it is less than {@code low}, in one of 40 more than
   * {@code high}.
   */
  public record Range(double low, double middle, double high) {}

  /**
   * Water that stands together.
   *
   * @param from its upstream end, as far as it is likelier than not
   * @param to its downstream end, on the same reach
   * @param probability that there is any water in it deeper than {@link #FILM}
   * @param depth greatest depth, metres
   * @param volume cubic metres; null where the bore is not known
   * @param lip the place that holds it back, the likeliest one
   */
  public record Pool(
      Place from, Place to, double probability, Range depth, @Nullable Range volume, Place lip) {}

  /**
   * A stretch of which nothing can be said.
   *
   * @param most the greatest probability in it that water stands deeper than {@link #FILM}
   */
  public record Open(Place from, Place to, double most) {}

  /** What is said of the place nearest to one; empty on a reach of which nothing is said. */
  public Optional<Spot> at(Place place) {
    Spot best = null;
    for (Spot spot : spots) {
      if (spot.place().reach().equals(place.reach())
          && (best == null || away(spot, place) < away(best, place))) {
        best = spot;
      }
    }
    return Optional.ofNullable(best);
  }

  private static double away(Spot spot, Place place) {
    return Math.abs(spot.place().distance() - place.distance());
  }

  /** The pool that a place lies in; empty for none. */
  public Optional<Pool> pool(Place place) {
    return pools.stream()
        .filter(pool -> pool.from().reach().equals(place.reach()))
        .filter(pool -> pool.from().distance() <= place.distance())
        .filter(pool -> place.distance() <= pool.to().distance())
        .findFirst();
  }
}
