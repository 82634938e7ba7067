package daylight.line.survey;

/**
 * Where the coordinates of a point are to be read: among the unknowns, or held.
 *
 * @param atX index of x among the unknowns, −1 when held
 * @param atY index of y among the unknowns, −1 when held
 * @param held the held coordinates; a start value for the others
 */
record Spot(int atX, int atY, PlanPoint held) {
  double x(double[] state) {
    return atX < 0 ? held.x() : state[atX];
  }

  double y(double[] state) {
    return atY < 0 ? held.y() : state[atY];
  }

  /** Adds to a gradient what a change of this point does. */
  void add(double[] gradient, double byX, double byY) {
    if (atX >= 0) {
      gradient[atX] += byX;
    }
    if (atY >= 0) {
      gradient[atY] += byY;
    }
  }
}
