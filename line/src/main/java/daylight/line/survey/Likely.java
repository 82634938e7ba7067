package daylight.line.survey;

import daylight.line.measure.Statement;

/**
 * One way in which a reading may have gone wrong.
 *
 * @param said in words
 * @param misfit how badly the reading fits once it is put right, in standard deviations
 */
record Likely(Statement said, double misfit) {}
