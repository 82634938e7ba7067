package daylight.line.sonde;

import daylight.line.measure.Measured;

/**
 * A depth shown with the receiver raised.
 *
 * @param by how much, in metres, more than nothing
 * @param shown what it then showed, in metres
 */
public record Lifted(Measured by, Measured shown) {
  public Lifted {
    if (!(by.value() > 0)) {
      throw new IllegalArgumentException("by must be positive, was " + by.value() + " m");
    }
  }
}
