package daylight.line.flow;

import daylight.line.measure.Measured;

/** How a pump comes and goes over a pit. Times in seconds. */
public sealed interface Cycle {
  /** Nothing comes in. */
  record Rests() implements Cycle {}

  /**
   * It runs and rests.
   *
   * @param run how long it runs
   * @param rest how long it rests
   * @param starts how often it starts in an hour
   * @param load share of the time that it runs
   * @param keepsUp the probability that it takes out more than comes in
   */
  record Turns(Propagated run, Propagated rest, Measured starts, double load, double keepsUp)
      implements Cycle {}

  /**
   * As much comes in as it takes out, or more: it never stops, and the pit fills.
   *
   * @param more by how much more comes in than goes out, cubic metres per second
   * @param keepsUp the probability that it keeps up all the same, as far as both are known
   */
  record CannotKeepUp(double more, double keepsUp) implements Cycle {}

  /**
   * More runs back out of the pipe than lies between its levels: it starts again at once, on water
   * it has pumped before.
   *
   * @param runsBack cubic metres
   * @param volume cubic metres between its levels
   */
  record PumpsItsOwnWater(double runsBack, double volume) implements Cycle {}
}
