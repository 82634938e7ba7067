package daylight.line.survey;

import java.util.List;

/**
 * What was observed in plan on one site.
 *
 * @param sightings in any order; the order changes nothing
 * @param baseLandmarks the landmarks that carry the grid when nothing is fixed: origin at the
 *     first, grid north toward the second
 * @param snooping how hard to look for blunders
 */
public record PlaneNetwork(
    List<Sighting> sightings, List<String> baseLandmarks, Snooping snooping) {
  public PlaneNetwork {
    sightings = List.copyOf(sightings);
    baseLandmarks = List.copyOf(baseLandmarks);
  }

  /** With the usual search for blunders. */
  public PlaneNetwork(List<Sighting> sightings, List<String> baseLandmarks) {
    this(sightings, baseLandmarks, Snooping.USUAL);
  }
}
