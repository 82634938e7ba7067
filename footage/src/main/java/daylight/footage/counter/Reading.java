package daylight.footage.counter;

import daylight.line.counter.Track.State;

/**
 * What a counter said on one frame.
 *
 * @param seconds from the first frame
 * @param metres the counter reading; carries no meaning where the state is unknown
 * @param shown the text as displayed; empty where it was not read
 * @param state how it came about
 */
public record Reading(double seconds, double metres, String shown, State state) {}
