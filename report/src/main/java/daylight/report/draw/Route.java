package daylight.report.draw;

import daylight.line.book.Place;
import daylight.line.book.Reach;
import daylight.line.course.Run;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/**
 * The way from one upstream end down to where the water comes out, so that a place has one distance
 * along it. Of several ways the longest is taken; those where the camera went in come first.
 *
 * @param start the label of the node it starts at; blank where nothing is known
 */
public record Route(String start, List<Run> runs) {
  public Route {
    runs = List.copyOf(runs);
  }

  /** The main route of what is shown. */
  public static Route main(Subject subject) {
    List<Run> all = subject.line().runs();
    Set<String> fed = new TreeSet<>();
    all.forEach(run -> fed.add(run.reach().downstream()));
    Set<String> entries = new TreeSet<>();
    subject.visit().ifPresent(visit -> visit.passes().forEach(pass -> entries.add(pass.entry())));
    return all.stream()
        .map(run -> run.reach().upstream())
        .filter(node -> !fed.contains(node))
        .distinct()
        .map(node -> down(node, all))
        .max(
            Comparator.comparing((Route route) -> entries.contains(route.start))
                .thenComparingDouble(Route::length)
                .thenComparing(Route::start, Comparator.reverseOrder()))
        .orElse(new Route("", List.of()));
  }

  private static Route down(String start, List<Run> all) {
    List<Run> runs = new ArrayList<>();
    String node = start;
    while (runs.size() < all.size()) {
      String here = node;
      Run next =
          all.stream()
              .filter(run -> run.reach().upstream().equals(here) && !runs.contains(run))
              .max(Comparator.comparingDouble(Route::length))
              .orElse(null);
      if (next == null || length(next) == 0) {
        break;
      }
      runs.add(next);
      node = next.reach().downstream();
    }
    return new Route(start, runs);
  }

  private static double length(Run run) {
    return run.stations().isEmpty()
        ? run.length() == null ? 0 : run.length().value()
        : run.stations().getLast().place().distance();
  }

  /** Along the pipe, in metres. */
  public double length() {
    return runs.stream().mapToDouble(Route::length).sum();
  }

  /** How far a place is from the start, in metres; empty for a place off the route. */
  public OptionalDouble distance(Place place) {
    double before = 0;
    for (Run run : runs) {
      if (run.reach().label().equals(place.reach())) {
        return OptionalDouble.of(before + place.distance());
      }
      before += length(run);
    }
    return OptionalDouble.empty();
  }

  /** The place at a distance from the start. */
  Place place(double distance) {
    double rest = distance;
    for (Run run : runs) {
      if (rest <= length(run) || run.equals(runs.getLast())) {
        return new Place(run.reach().label(), rest);
      }
      rest -= length(run);
    }
    throw new IllegalArgumentException("route without a reach has no place at " + distance + " m");
  }

  /** The reaches off the route, by label. */
  List<String> others(Subject subject) {
    return subject.line().runs().stream()
        .map(Run::reach)
        .map(Reach::label)
        .filter(label -> runs.stream().noneMatch(run -> run.reach().label().equals(label)))
        .toList();
  }
}
