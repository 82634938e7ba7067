package daylight.line.course;

import daylight.line.book.Bend;
import daylight.line.book.Place;
import java.util.List;

/**
 * Where the camera went on one pass, as far as it is known to have come, and the turns it saw.
 *
 * @param visit the label of the visit
 * @param pass the label of the pass
 * @param legs one for each reach it was in, in its order; none when nothing tells how far it came
 * @param bends in the order in which they were noted
 * @param camera where its lens was when the counter showed so much
 */
public record PlacedPass(
    String visit, String pass, List<Leg> legs, List<PlacedBend> bends, Camera camera) {
  public PlacedPass {
    legs = List.copyOf(legs);
    bends = List.copyOf(bends);
  }

  /** A stretch of one reach in the direction of the push. */
  public record Leg(Place from, Place to) {
    /** Whether the push went with the water, or with the distances where that is not known. */
    public boolean down() {
      return to.distance() >= from.distance();
    }
  }

  /**
   * A turn of the pipe at its place.
   *
   * @param sd standard uncertainty of its distance along the pipe, metres
   */
  public record PlacedBend(Bend bend, Place place, double sd) {}
}
