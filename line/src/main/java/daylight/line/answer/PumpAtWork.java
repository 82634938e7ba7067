package daylight.line.answer;

import daylight.line.flow.Cycle;
import daylight.line.flow.Discharge;
import daylight.line.flow.Operation;
import daylight.line.flow.Pit;
import daylight.line.flow.Propagated;
import daylight.line.flow.PumpCurve;
import org.jspecify.annotations.Nullable;

/**
 * A pump of the book on its pipe, as "Does it cope" rests on it.
 *
 * @param reach the label of the pumped reach
 * @param node the label of the pit
 * @param curve as it was written
 * @param discharge the pipe
 * @param operation what the pump does on it
 * @param inflow what comes into the pit at most; null where that is not known
 * @param filling how it comes and goes; null where the pit, its levels or the inflow are not known
 */
public record PumpAtWork(
    String reach,
    String node,
    PumpCurve curve,
    Discharge discharge,
    Operation operation,
    @Nullable Propagated inflow,
    @Nullable Filling filling) {

  /**
   * How the water in the pit rises and falls.
   *
   * @param stop height of the water above the floor at which the pump stops, metres
   */
  public record Filling(Pit pit, double stop, Cycle cycle) {}
}
