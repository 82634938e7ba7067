package daylight.line.answer;

import daylight.line.book.Catalogue;
import daylight.line.fall.FallRules;

/**
 * What the answers are judged by: data with their sources.
 *
 * @param catalogue the kinds of finding
 * @param fall the table of smallest slopes
 * @param limits our own thresholds
 */
public record Rules(Catalogue catalogue, FallRules fall, Limits limits) {
  /**
   * Thresholds of the judgement that no published rule sets; common practice.
   *
   * @param seenShare share of the length that must have been seen for "clear" and "sound" to hold
   *     without "for the part seen"
   * @param obstruction share of the bore from which a finding counts as an obstruction
   * @param trenchNotice depth from which a trench caution is given, metres
   * @param trenchProtect depth from which a protective system is called for, metres
   */
  public record Limits(
      double seenShare, double obstruction, double trenchNotice, double trenchProtect) {}
}
