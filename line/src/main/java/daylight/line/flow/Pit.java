package daylight.line.flow;

import daylight.line.measure.Measured;

/**
 * A pit that a pump empties.
 *
 * @param area of its water, seen from above, square metres
 * @param swing how much the water rises from where the pump stops to where it starts, metres
 * @param runsBack what runs back out of the pipe when the pump stops, cubic metres; 0 where a check
 *     valve by the pump holds it
 */
public record Pit(Measured area, Measured swing, double runsBack) {
  public Pit {
    if (!(area.value() > 0) || !(swing.value() > 0) || !(runsBack >= 0)) {
      throw new IllegalArgumentException(
          "area and swing must be positive, was " + area.value() + ", " + swing.value());
    }
  }

  /** Cubic metres between where the pump stops and where it starts. */
  public double volume() {
    return area.value() * swing.value();
  }
}
