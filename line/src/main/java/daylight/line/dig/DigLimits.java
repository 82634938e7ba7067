package daylight.line.dig;

/**
 * What a dig is laid out by, all in metres.
 *
 * @param margin room to work on every side beyond where the pipe may be
 * @param wayOut depth from which a way out of the trench is asked for: 4 ft, 29 CFR 1926.651(c)(2)
 *     (osha-1926-p)
 * @param protect depth from which a protective system is asked for: 5 ft, 29 CFR 1926.652(a)(1)
 * @param bedding how far below the invert one digs to get under a pipe
 * @param longestTape that a crew lays out
 * @param nearMark how near to another service's mark one digs by hand alone
 * @param clearance how near to a building, well or tree a pipe is worth telling
 */
public record DigLimits(
    double margin,
    double wayOut,
    double protect,
    double bedding,
    double longestTape,
    double nearMark,
    double clearance) {

  /** A bucket and a boot beside the pipe; common practice, no source. */
  private static final double USUAL_MARGIN = 0.30;

  /** Common practice, no source. */
  private static final double USUAL_BEDDING = 0.15;

  /** A tape of 100 ft; common practice. */
  private static final double USUAL_TAPE = 30.48;

  /** 24 in from the edge of the mark (sunshine811-tolerance); the local law decides. */
  private static final double USUAL_NEAR_MARK = 0.61;

  /** 10 ft; common practice, no source. What is asked for differs from place to place. */
  private static final double USUAL_CLEARANCE = 3.05;

  public DigLimits {
    positive("margin", margin);
    positive("wayOut", wayOut);
    positive("protect", protect);
    positive("bedding", bedding);
    positive("longestTape", longestTape);
    positive("nearMark", nearMark);
    positive("clearance", clearance);
  }

  /** What is usual, with the depths at which the rule set speaks. */
  public static DigLimits usual(double wayOut, double protect) {
    return new DigLimits(
        USUAL_MARGIN, wayOut, protect, USUAL_BEDDING, USUAL_TAPE, USUAL_NEAR_MARK, USUAL_CLEARANCE);
  }

  /** The same with another margin, in metres. */
  public DigLimits withMargin(double other) {
    return new DigLimits(other, wayOut, protect, bedding, longestTape, nearMark, clearance);
  }

  /** The same with another distance to marks, in metres. */
  public DigLimits withNearMark(double other) {
    return new DigLimits(margin, wayOut, protect, bedding, longestTape, other, clearance);
  }

  /** The same with another clearance, in metres. */
  public DigLimits withClearance(double other) {
    return new DigLimits(margin, wayOut, protect, bedding, longestTape, nearMark, other);
  }

  private static void positive(String name, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " must be positive and finite, in m, was " + value);
    }
  }
}
