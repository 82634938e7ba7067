package daylight.line.course;

import daylight.line.book.Pass;
import daylight.line.book.Place;

/**
 * A stretch of one reach that a pass went through, and how well it could be seen.
 *
 * @param visit the label of the visit
 * @param pass the label of the pass
 * @param from its upstream end
 * @param to its downstream end, on the same reach
 */
public record PlacedSight(String visit, String pass, Place from, Place to, Pass.Clarity clarity) {}
