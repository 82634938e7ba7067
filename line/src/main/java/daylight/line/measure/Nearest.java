package daylight.line.measure;

import java.util.Collection;
import java.util.Optional;

/** Finds the known word that a mistyped one was probably meant to be. */
public final class Nearest {
  private Nearest() {}

  /**
   * The known word with the smallest Damerau–Levenshtein distance (optimal string alignment: an
   * insertion, a deletion, a substitution or a swap of neighbours counts one) from the wrong one.
   *
   * @param wrong the word as typed
   * @param known the words it may have been; of equally near ones the first wins
   * @return empty when none is within a third of the wrong word's length, or 2 for short words
   */
  public static Optional<String> of(String wrong, Collection<String> known) {
    int allowed = Math.max(2, wrong.length() / 3);
    String best = null;
    int least = allowed + 1;
    for (String candidate : known) {
      int distance = distance(wrong, candidate);
      if (distance < least) {
        least = distance;
        best = candidate;
      }
    }
    return Optional.ofNullable(best);
  }

  private static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      d[i][0] = i;
    }
    for (int j = 0; j <= b.length(); j++) {
      d[0][j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      for (int j = 1; j <= b.length(); j++) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        d[i][j] = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + change);
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
        }
      }
    }
    return d[a.length()][b.length()];
  }
}
