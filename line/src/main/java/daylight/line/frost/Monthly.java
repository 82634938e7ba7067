package daylight.line.frost;

import java.util.List;

/**
 * The cold of a mean year from the means of its months: the area between freezing and the curve
 * through the middle of each month, which ufc-3-130-06 allows. It is the cold of a mean winter; a
 * hard one is colder, and what melts and freezes within a month is lost. Where only three months
 * freeze it reads up to a sixth lower than the sum over those months.
 *
 * @param freezingIndex °C·days
 * @param meanTemperature of the year, °C
 * @param season how long the curve is below freezing, seconds; 0 where it never is
 */
public record Monthly(double freezingIndex, double meanTemperature, double season) {
  private static final int MONTHS = 12;
  private static final double MONTH = 365.25 / MONTHS;

  /**
   * From the means of January to December, °C.
   *
   * @throws IllegalArgumentException for other than twelve
   */
  public static Monthly of(List<Double> means) {
    if (means.size() != MONTHS) {
      throw new IllegalArgumentException("a year has twelve months, not " + means.size());
    }
    double index = 0;
    double days = 0;
    double sum = 0;
    for (int i = 0; i < MONTHS; i++) {
      double from = means.get(i);
      double to = means.get((i + 1) % MONTHS);
      sum += from;
      double below = below(from, to);
      days += below * MONTH;
      double least = Math.min(from, to);
      double most = Math.min(0, Math.max(from, to));
      index += below * MONTH * -(least + most) / 2;
    }
    return new Monthly(Math.max(0, index), sum / MONTHS, days * Berggren.DAY);
  }

  /** The share of a straight line that is below zero. */
  private static double below(double from, double to) {
    if (from < 0 && to < 0) {
      return 1;
    }
    return from < 0 || to < 0 ? Math.min(from, to) / -StrictMath.abs(to - from) : 0;
  }
}
