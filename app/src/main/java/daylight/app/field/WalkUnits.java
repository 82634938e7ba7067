package daylight.app.field;

import daylight.app.web.Look;
import daylight.line.measure.Shown;
import java.util.Set;

/**
 * In which units lengths are written on the walk: those of the book.
 *
 * @param distance of cable and tapes, as a book names it
 * @param depth of depths and receiver heights
 * @param level of rods and heights
 */
record WalkUnits(String distance, String depth, String level) {
  private static final Set<String> KNOWN = Set.of("ft", "in", "m", "cm", "mm");

  /** Where the book says nothing, as whoever looks reads lengths. */
  static WalkUnits of(BookNow book, Look look) {
    String usual = look.shown() == Shown.METRES ? "m" : "ft";
    return new WalkUnits(
        unit(book, "distance", usual), unit(book, "depth", usual), unit(book, "level", usual));
  }

  private static String unit(BookNow book, String of, String usual) {
    return book.root()
        .flatMap(root -> root.text("units", of))
        .filter(KNOWN::contains)
        .orElse(usual);
  }
}
