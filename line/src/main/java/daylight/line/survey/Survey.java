package daylight.line.survey;

import daylight.line.measure.Statement;
import java.util.List;

/**
 * What the ties and levels of a field book give.
 *
 * @param network in plan, as it was adjusted
 * @param plan the adjusted positions
 * @param levels the adjusted heights, by mark ({@link BookLevels#name})
 * @param doubts what cannot be placed, what may lie on either side, what does not fit
 */
public record Survey(
    PlaneNetwork network, Adjustment plan, LevelAdjustment levels, List<Statement> doubts) {
  public Survey {
    doubts = List.copyOf(doubts);
  }
}
