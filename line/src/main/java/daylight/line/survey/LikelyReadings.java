package daylight.line.survey;

import daylight.line.measure.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * How a suspect reading came about: slips of the pen from its text, and mistakes of the tape from
 * the network. Offered as a question, never put right.
 */
final class LikelyReadings {
  /** At most so many are offered. */
  private static final int AT_MOST = 3;

  /**
   * A slip that leaves more than this, in standard deviations, explains nothing (two-sided 1 %).
   */
  private static final double EXPLAINED = 2.576;

  private final Map<Correlated.Component, Written> written;
  private final Function<Suspect.Misread, List<Likely>> others;

  /**
   * @param others mistakes that the text cannot tell
   */
  LikelyReadings(
      Map<Correlated.Component, Written> written, Function<Suspect.Misread, List<Likely>> others) {
    this.written = written;
    this.others = others;
  }

  /** The text of a reading; empty where it is not known. */
  String written(Suspect.Misread misread) {
    Written as = written.get(component(misread));
    return as == null || as.reading().written().isBlank() ? "" : as.shown();
  }

  private static Correlated.Component component(Suspect.Misread misread) {
    return new Correlated.Component(misread.entry(), misread.quantity());
  }

  /** The likeliest first. */
  List<Statement> of(Suspect.Misread misread) {
    List<Likely> found = new ArrayList<>(others.apply(misread));
    Written as = written.get(component(misread));
    if (as != null) {
      found.addAll(new Slips(as, misread).likely());
    }
    return found.stream()
        .filter(likely -> likely.misfit() <= EXPLAINED)
        .sorted(Comparator.comparingDouble(Likely::misfit))
        .map(Likely::said)
        .distinct()
        .limit(AT_MOST)
        .toList();
  }
}
