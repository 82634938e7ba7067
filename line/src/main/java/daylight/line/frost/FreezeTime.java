package daylight.line.frost;

import daylight.line.measure.Measured;

/** How long standing water takes to freeze in a steady cold. */
public sealed interface FreezeTime {

  /**
   * It freezes.
   *
   * @param cooling until it is at its freezing point, seconds
   * @param solid from then until it is all ice, seconds, at the least: the ice that grows holds
   *     heat back itself
   * @param whole both, seconds
   */
  record Freezes(Measured cooling, Measured solid, Measured whole) implements FreezeTime {}

  /** It is not cold enough around it. */
  record Never() implements FreezeTime {}
}
