package daylight.line.survey;

/**
 * One scalar observation equation, in the unit of its reading.
 *
 * @param entry the book entry it came from
 * @param quantity which component of the entry
 * @param observed the reading, metres or radians
 * @param block its covariance with the readings it is correlated with; the equations of a block
 *     follow each other in a list
 * @param row its row in the block
 * @param model what the reading would be without error
 */
record Equation(
    String entry, Quantity quantity, double observed, Block block, int row, Model model) {

  /** A reading that is correlated with no other. */
  Equation(String entry, Quantity quantity, double observed, double sd, Model model) {
    this(entry, quantity, observed, Block.of(sd), 0, model);
  }

  /** The modelled reading as a function of the unknowns. */
  interface Model {
    /**
     * The reading at a state.
     *
     * @param gradient comes in as zeros; gets the derivative of the reading by each unknown
     */
    double at(double[] state, double[] gradient);
  }

  /** The same reading, correlated with others. */
  Equation in(Block other, int at) {
    return new Equation(entry, quantity, observed, other, at, model);
  }

  /** Computed minus observed, wrapped to (−π, π] for readings round the circle. */
  double misfit(double[] state, double[] gradient) {
    double difference = model.at(state, gradient) - observed;
    return quantity.angular() ? StrictMath.IEEEremainder(difference, 2 * Math.PI) : difference;
  }
}
