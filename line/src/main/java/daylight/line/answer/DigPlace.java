package daylight.line.answer;

import daylight.line.course.PlacedFinding;
import daylight.line.dig.Dig;
import daylight.line.dig.DigTicket;

/**
 * A place where the ground may have to be opened.
 *
 * @param line the label of the line
 * @param finding what one would dig for
 * @param ticket how the notice stood on the day of the visit; where no day is known, on any
 * @param cleaned whether cleaning takes away what was found, so that nobody need dig for it
 * @param dig the spot, or why it cannot be said
 */
public record DigPlace(
    String line, PlacedFinding finding, DigTicket ticket, boolean cleaned, Dig dig) {}
