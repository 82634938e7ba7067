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
 * @param correlated readings that do not err by themselves; no reading in two of them
 * @param approximate about where points lie, where it is known: decides between mirror positions
 *     and gives a start where nothing else does, and is no observation
 * @param snooping how hard to look for blunders
 */
public record PlaneNetwork(
    List<Sighting> sightings,
    List<String> baseLandmarks,
    List<Correlated> correlated,
    Map<String, PlanPoint> approximate,
    Snooping snooping) {
  public PlaneNetwork {
    sightings = List.copyOf(sightings);
    baseLandmarks = List.copyOf(baseLandmarks);
    correlated = List.copyOf(correlated);
    approximate = Map.copyOf(approximate);
    refuseContradictions(sightings);
    refuseStrangers(sightings, correlated);
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

  private static void refuseStrangers(List<Sighting> sightings, List<Correlated> correlated) {
    Map<Correlated.Component, Integer> read = new HashMap<>();
    for (Sighting sighting : correlated.isEmpty() ? List.<Sighting>of() : sightings) {
      for (Quantity quantity : sighting.quantities()) {
        read.merge(new Correlated.Component(sighting.entry(), quantity), 1, Integer::sum);
      }
    }
    Set<Correlated.Component> seen = new HashSet<>();
    for (Correlated group : correlated) {
      for (Correlated.Component component : group.components()) {
        if (read.getOrDefault(component, 0) != 1 || !seen.add(component)) {
          throw new IllegalArgumentException(
              "a correlated reading must be read once and correlated once, was not: " + component);
        }
      }
    }
    for (Sighting sighting : correlated.isEmpty() ? List.<Sighting>of() : sightings) {
      long in =
          sighting.quantities().stream()
              .filter(q -> seen.contains(new Correlated.Component(sighting.entry(), q)))
              .count();
      if (sighting instanceof Sighting.Gnss fix && fix.corr() != 0 && in == 1) {
        throw new IllegalArgumentException(
            "both components of a correlated fix must be correlated with others or neither, were"
                + " not: "
                + fix.entry());
      }
    }
  }

  /** Readings that each err by themselves, between points of which nothing is known beforehand. */
  public PlaneNetwork(List<Sighting> sightings, List<String> baseLandmarks, Snooping snooping) {
    this(sightings, baseLandmarks, List.of(), Map.of(), snooping);
  }

  /** With the usual search for blunders. */
  public PlaneNetwork(List<Sighting> sightings, List<String> baseLandmarks) {
    this(sightings, baseLandmarks, Snooping.USUAL);
  }
}
