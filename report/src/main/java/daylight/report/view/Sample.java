package daylight.report.view;

import daylight.line.answer.Sight;
import daylight.line.book.Place;
import java.util.Optional;

/**
 * A place along the line: where it lies on the drawings, and what is known there.
 *
 * @param where how far along, in the reader's units
 * @param depth of the inside bottom below the ground with its 95 % interval; empty where not known
 * @param within how far the place may lie off with 95 %, in any direction; empty where it has no
 *     place in plan
 * @param seen how well the judged visit saw it
 */
record Sample(
    Place place, String where, Optional<String> depth, Optional<String> within, Sight.Seen seen) {}
