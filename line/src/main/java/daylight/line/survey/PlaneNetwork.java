package daylight.line.survey;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

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
    refuseContradictions(sightings);
  }

  private static void refuseContradictions(List<Sighting> sightings) {
    Map<String, String> stations = new HashMap<>();
    Set<String> fixed = new HashSet<>();
    for (Sighting sighting : sightings) {
      if (sighting instanceof Sighting.Fixed f && !fixed.add(f.point())) {
        throw new IllegalArgumentException("a point must be fixed once, was twice: " + f.point());
      }
      if (sighting instanceof Sighting.Direction d
          && !d.from().equals(stations.getOrDefault(d.set(), d.from()))) {
        throw new IllegalArgumentException(
            "a set must be read at one point, " + d.set() + " was also read at " + d.from());
      }
      if (sighting instanceof Sighting.Direction d) {
        stations.put(d.set(), d.from());
      }
    }
  }

  /** With the usual search for blunders. */
  public PlaneNetwork(List<Sighting> sightings, List<String> baseLandmarks) {
    this(sightings, baseLandmarks, Snooping.USUAL);
  }
}
