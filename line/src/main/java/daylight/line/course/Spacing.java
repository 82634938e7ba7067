package daylight.line.course;

/**
 * How finely a line is told.
 *
 * @param stations apart at most, metres: where the line says where it is
 * @param knots apart at most, metres: where the adjustment has unknowns; a pipe wanders between two
 *     knots as it does at random between known ends, so this changes next to nothing
 */
public record Spacing(double stations, double knots) {
  /** What answers and drawings want. */
  public static final Spacing USUAL = new Spacing(0.3, 1.0);

  public Spacing {
    if (!(stations > 0) || !(knots > 0) || Double.isInfinite(stations + knots)) {
      throw new IllegalArgumentException(
          "stations and knots must be above 0 m apart, were " + stations + " and " + knots);
    }
  }
}
