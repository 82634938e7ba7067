package daylight.line.dig;

import daylight.line.measure.Measured;

/**
 * An angle and a distance that find a spot again: stand on one landmark, sight another, turn.
 *
 * @param from where one stands
 * @param toward what one sights
 * @param right how far to turn to the right, in [0, 2π)
 * @param distance level, to the spot
 */
public record TurnedTie(String from, String toward, Measured right, Measured distance) {}
