package daylight.report.draw;

import daylight.line.book.Place;
import daylight.report.markup.Tag;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A drawing, and where on it a place of the line lies.
 *
 * @param spots empty for a place that it does not show
 */
public record Drawn(Tag sheet, Function<Place, Optional<Spot>> spots) {
  /** A drawing that goes on, on sheets behind it which show no place. */
  static List<Drawn> first(List<Tag> sheets, Function<Place, Optional<Spot>> spots) {
    List<Drawn> all = new ArrayList<>();
    for (Tag sheet : sheets) {
      all.add(new Drawn(sheet, all.isEmpty() ? spots : _ -> Optional.empty()));
    }
    return all;
  }

  /** Where a place lies on it; empty where it is not shown. */
  public Optional<Spot> at(Place place) {
    return spots.apply(place);
  }
}
