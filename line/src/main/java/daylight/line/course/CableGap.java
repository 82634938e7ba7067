package daylight.line.course;

import daylight.line.book.Id;
import daylight.line.measure.Measured;

/**
 * Cable against ground between two neighbouring locates.
 *
 * @param from the one nearer the entry
 * @param to the next one
 * @param cable length of cable between them by the counter, metres
 * @param ground distance between the two spots over the ground, metres
 * @param excess cable that neither the ground nor the bends seen account for, metres; negative when
 *     there is too little
 */
public record CableGap(Id from, Id to, Measured cable, Measured ground, Measured excess) {}
