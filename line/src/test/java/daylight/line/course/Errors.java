package daylight.line.course;

/** Draws the errors of readings, of one size but of different shape. */
final class Errors {
  private final SplitMix64 random;
  private final Nature nature;
  private final double times;

  Errors(SplitMix64 random, Nature nature, double times) {
    this.random = random;
    this.nature = nature;
    this.times = times;
  }

  /**
   * The error of one reading of that standard uncertainty: normal, or Student's t with four degrees
   * of freedom scaled to the same standard deviation (its variance is 2).
   */
  double of(double sd) {
    return times * sd * (nature == Nature.SUPPOSED ? random.normal() : student());
  }

  /** Whether readings are without any error. */
  boolean none() {
    return times == 0;
  }

  /** An error that one instrument keeps for the whole visit; normal in either nature. */
  double kept(double sd) {
    return times * sd * random.normal();
  }

  /** Not negative, half-normal about nothing. */
  double oneSided(double sigma) {
    // Without errors it is at its mean, which is what the estimator expects.
    return times > 0 ? times * sigma * Math.abs(random.normal()) : sigma * Math.sqrt(2 / Math.PI);
  }

  /** By how much a bend truly turns otherwise than was noted, radians. */
  double bend(double sd) {
    return nature == Nature.SUPPOSED ? of(sd) : times * Math.toRadians(8) * random.between(-1, 1);
  }

  private double student() {
    double squares =
        -2 * StrictMath.log1p(-random.uniform()) - 2 * StrictMath.log1p(-random.uniform());
    return random.normal() / Math.sqrt(squares / 4) / Math.sqrt(2);
  }
}
