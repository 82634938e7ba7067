package daylight.line.course;

import daylight.line.book.Place;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A way with the water from one node to another, along which stations are counted.
 *
 * @param from the label of the node at station zero
 * @param to the label of the node at its end
 * @param runs in order
 */
public record Route(String from, String to, List<Run> runs) {
  public Route {
    runs = List.copyOf(runs);
  }

  /**
   * The routes of one line: its longest way with the water first, then each branch down to where it
   * meets a route already named. A run whose length nobody measured counts as its furthest station.
   */
  public static List<Route> of(Line line, String name) {
    List<Run> rest =
        new ArrayList<>(line.runs().stream().filter(r -> r.reach().line().equals(name)).toList());
    List<Route> routes = new ArrayList<>();
    Set<String> named = new HashSet<>();
    while (!rest.isEmpty()) {
      List<Run> longest =
          rest.stream()
              .map(start -> downFrom(start, rest, named))
              .max(
                  Comparator.comparingDouble(Route::total)
                      .thenComparing(way -> way.getFirst().reach().label()))
              .orElseThrow();
      Route route =
          new Route(
              longest.getFirst().reach().upstream(),
              longest.getLast().reach().downstream(),
              longest);
      routes.add(route);
      for (Run run : longest) {
        named.add(run.reach().upstream());
        named.add(run.reach().downstream());
      }
      rest.removeAll(longest);
    }
    return routes;
  }

  /** The main routes of every line, the longest first; empty for a site without a reach. */
  public static List<Route> mains(Line line) {
    return line.runs().stream()
        .map(run -> run.reach().line())
        .distinct()
        .map(name -> of(line, name).getFirst())
        .sorted(Comparator.comparingDouble(Route::length).reversed().thenComparing(Route::from))
        .toList();
  }

  private static List<Run> downFrom(Run start, List<Run> runs, Set<String> named) {
    List<Run> way = new ArrayList<>(List.of(start));
    boolean on = true;
    while (on) {
      String at = way.getLast().reach().downstream();
      Optional<Run> next =
          named.contains(at)
              ? Optional.empty()
              : runs.stream()
                  .filter(r -> r.reach().upstream().equals(at) && !way.contains(r))
                  .findFirst();
      next.ifPresent(way::add);
      on = next.isPresent();
    }
    return way;
  }

  private static double total(List<Run> way) {
    return way.stream().mapToDouble(Route::extent).sum();
  }

  /** The length of a run as far as is known, metres. */
  public static double extent(Run run) {
    if (run.length() != null) {
      return run.length().value();
    }
    return run.stations().isEmpty() ? 0 : run.stations().getLast().place().distance();
  }

  /** The length of the whole route, metres. */
  public double length() {
    return total(runs);
  }

  /** The station of a place in metres from the start; empty when the place is not on this route. */
  public OptionalDouble station(Place place) {
    double before = 0;
    for (Run run : runs) {
      if (run.reach().label().equals(place.reach())) {
        return OptionalDouble.of(before + place.distance());
      }
      before += extent(run);
    }
    return OptionalDouble.empty();
  }

  /** The place at a station in metres; on the last run beyond its end. */
  public Place place(double station) {
    double rest = station;
    for (Run run : runs) {
      if (rest <= extent(run) || run.equals(runs.getLast())) {
        return run.at(rest);
      }
      rest -= extent(run);
    }
    throw new IllegalArgumentException("a route has at least one run");
  }

  /** Every station of the route with its distance from the start. */
  public List<Sample> samples() {
    List<Sample> samples = new ArrayList<>();
    double before = 0;
    for (Run run : runs) {
      for (Station station : run.stations()) {
        samples.add(new Sample(before + station.place().distance(), station));
      }
      before += extent(run);
    }
    return samples;
  }

  /** A station and its distance from the start of the route, metres. */
  public record Sample(double distance, Station station) {}
}
