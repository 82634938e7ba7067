package daylight.line.course;

import daylight.line.book.Finding;
import daylight.line.book.Place;
import java.util.Optional;

/** Where the lens was on a pass when its counter showed so much. */
@FunctionalInterface
public interface Camera {
  /**
   * The place of the lens; of a reading before the entry or beyond where the pass is known to have
   * come that end of its way. Empty where nothing tells how far it came.
   *
   * @param reading of the counter, metres
   * @param moving how the cable moved: what is pulled back is taut
   */
  Optional<Place> at(double reading, Finding.Moving moving);
}
