package daylight.line.course;

import daylight.line.measure.Measured;
import java.util.List;
import java.util.Optional;

/**
 * Figures of one line, asked one after another: how sure each is, what that comes from, and what a
 * further measurement would make of it. What many figures have in common is worked out once, so one
 * outlook is for one thread.
 */
public interface Outlook {
  /** A figure as it is known now; empty where it is not known. */
  Optional<Measured> now(Wanted wanted);

  /**
   * The readings and assumptions that a figure rests on, largest share of its variance first; none
   * where it is not known.
   */
  List<Contribution> why(Wanted wanted);

  /**
   * What one more measurement would make of a figure: its value now with the uncertainty it would
   * have. Empty where the figure is not known or the measurement would tell nothing.
   */
  Optional<Measured> after(Wanted wanted, Extra extra);
}
