package daylight.line.answer;

import daylight.line.book.Boundary;
import daylight.line.book.FieldBook;
import daylight.line.book.Id;
import daylight.line.book.Locate;
import daylight.line.book.Place;
import daylight.line.course.Line;
import daylight.line.course.Run;
import daylight.line.dig.Crossing;
import daylight.line.dig.Digger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * Where a line lies under the floor of a building: the receiver stood on a floor there, and no wall
 * is between. What a floor is called is the word of the book; common practice.
 */
public final class Indoors {
  private static final List<String> FLOORS = List.of("floor", "basement", "cellar", "crawl");

  /** A locate on a reach, and whether the receiver stood indoors. */
  private record Stood(Place place, boolean inside) {}

  private final List<Stood> stood = new ArrayList<>();
  private final List<Place> walls = new ArrayList<>();

  private Indoors(FieldBook book, Line line) {
    line.locates().forEach(fit -> stood.add(new Stood(fit.place(), floor(book, fit.entry()))));
    for (Run run : line.runs()) {
      for (Boundary boundary : book.site().boundaries()) {
        if (boundary.kind() == Boundary.Kind.FOUNDATION) {
          Digger.crossings(line, run, boundary).stream().map(Crossing::place).forEach(walls::add);
        }
      }
    }
  }

  /** Of the places of a book and its line. */
  public static Indoors of(FieldBook book, Line line) {
    return new Indoors(book, line);
  }

  private static boolean floor(FieldBook book, Id entry) {
    return book.visits().stream()
        .flatMap(visit -> visit.locates().stream())
        .filter(locate -> locate.id().equals(entry))
        .map(Locate::surface)
        .anyMatch(
            surface -> {
              String plain = surface.toLowerCase(Locale.ROOT);
              return FLOORS.stream().anyMatch(plain::contains);
            });
  }

  /** Whether a place lies under a floor, as far as is known. */
  public boolean holds(Place place) {
    return stood.stream()
        .filter(one -> one.place().reach().equals(place.reach()) && !apart(one.place(), place))
        .min(Comparator.comparingDouble(o -> Math.abs(o.place().distance() - place.distance())))
        .filter(Stood::inside)
        .isPresent();
  }

  private boolean apart(Place one, Place other) {
    double from = Math.min(one.distance(), other.distance());
    double to = Math.max(one.distance(), other.distance());
    return walls.stream()
        .anyMatch(
            wall ->
                wall.reach().equals(one.reach()) && from < wall.distance() && wall.distance() < to);
  }
}
