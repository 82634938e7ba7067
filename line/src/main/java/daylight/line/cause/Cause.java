package daylight.line.cause;

import java.util.List;

/**
 * One cause as it stands after the visit.
 *
 * @param row of the table
 * @param strength how strongly it is held
 * @param times the product of its clues: for ordering, never for telling
 * @param clues what speaks for it and against it, in the table's order
 * @param open what would tell more, as far as it was not done
 */
public record Cause(
    CauseTable.Row row, Strength strength, double times, List<Clue> clues, List<Ask> open) {
  public Cause {
    clues = List.copyOf(clues);
    open = List.copyOf(open);
  }

  /** What speaks for it. */
  public List<Clue> speaksFor() {
    return clues.stream().filter(clue -> clue.times() > 1).toList();
  }

  /** What speaks against it, what was found where it does not matter among it. */
  public List<Clue> speaksAgainst() {
    return clues.stream().filter(clue -> clue.times() <= 1).toList();
  }
}
