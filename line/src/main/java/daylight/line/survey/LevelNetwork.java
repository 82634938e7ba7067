package daylight.line.survey;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was levelled on one site.
 *
 * @param sightings in any order; the order changes nothing
 * @param datumPoint the point whose height is zero when no benchmark or height is given; null takes
 *     the first by label
 * @param snooping how hard to look for blunders
 */
public record LevelNetwork(
    List<LevelSighting> sightings, @Nullable String datumPoint, Snooping snooping) {
  public LevelNetwork {
    sightings = List.copyOf(sightings);
  }

  /**
   * Zero at the first point by label unless there is a benchmark; the usual search for blunders.
   */
  public LevelNetwork(List<LevelSighting> sightings) {
    this(sightings, null, Snooping.USUAL);
  }
}
