package daylight.line.cause;

import daylight.line.book.Reported;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The door of this room: what may be behind a complaint, the likeliest first. */
public final class Causes {
  private Causes() {}

  /**
   * The causes in the table that may be behind one of these kinds of complaint.
   *
   * @param kinds of the complaint, written in the book or recognised
   * @param complaint where it shows, and when
   */
  public static List<Cause> of(
      Scene scene, CauseTable table, List<Reported.Kind> kinds, Reported complaint) {
    Where where = Where.of(scene.book(), scene.line(), complaint.at());
    List<Cause> causes = new ArrayList<>();
    for (CauseTable.Row row : table.rows()) {
      boolean then = row.when().isEmpty() || shows(row, complaint);
      if (then && row.of().stream().anyMatch(kinds::contains)) {
        add(causes, cause(scene, where, row, table, complaint));
      }
    }
    causes.sort(
        Comparator.comparing(Cause::strength)
            .thenComparing(Comparator.comparingDouble(Cause::times).reversed()));
    return causes;
  }

  /** Whether anything tells where on the drain or on the ground a complaint shows. */
  public static boolean knowsPlace(Scene scene, Reported complaint) {
    return Where.of(scene.book(), scene.line(), complaint.at()).known();
  }

  /** Of a cause in two rows, for two kinds of complaint, the one that is held more strongly. */
  private static void add(List<Cause> causes, Cause one) {
    for (int i = 0; i < causes.size(); i++) {
      Cause before = causes.get(i);
      if (before.row().cause().equals(one.row().cause())) {
        int more = before.strength().compareTo(one.strength());
        if (more > 0 || (more == 0 && one.times() > before.times())) {
          causes.set(i, one);
        }
        return;
      }
    }
    causes.add(one);
  }

  private static Cause cause(
      Scene scene, Where where, CauseTable.Row row, CauseTable table, Reported complaint) {
    Signs signs = new Signs(scene, where, row, table, complaint);
    List<Clue> clues = signs.clues();
    double times = 1;
    boolean looked = false;
    boolean found = false;
    for (Clue clue : clues) {
      boolean first = !(clue instanceof Clue.Found) || !found;
      found |= clue instanceof Clue.Found;
      looked |= tells(clue);
      times *= first ? clue.times() : 1;
    }
    return new Cause(row, strength(table.words(), looked, times), times, clues, signs.open());
  }

  private static boolean shows(CauseTable.Row row, Reported complaint) {
    Reported.When when = complaint.when();
    return when != null && row.when().contains(when);
  }

  /**
   * Whether somebody looked: when it shows, and water that came out in the end, tell too little.
   */
  private static boolean tells(Clue clue) {
    return switch (clue) {
      case Clue.Shows shows -> false;
      case Clue.Elsewhere elsewhere -> false;
      case Clue.Tried tried -> tried.sign() != Sign.ARRIVED;
      default -> true;
    };
  }

  private static Strength strength(CauseTable.Said words, boolean looked, double times) {
    if (!looked) {
      return Strength.NOT_LOOKED_AT;
    }
    if (times >= words.probableFrom()) {
      return Strength.PROBABLE;
    }
    return times <= words.unlikelyTo() ? Strength.UNLIKELY : Strength.POSSIBLE;
  }
}
