package daylight.line.survey;

/**
 * One scalar observation equation, in the unit of its reading.
 *
 * @param entry the book entry it came from
 * @param quantity which component of the entry
 * @param observed the reading, metres or radians
 * @param sd its standard deviation, metres or radians
 * @param correlation with the equation just before it in the list, 0 for most
 * @param model what the reading would be without error
 */
record Equation(
    String entry, Quantity quantity, double observed, double sd, double correlation, Model model) {

  Equation(String entry, Quantity quantity, double observed, double sd, Model model) {
    this(entry, quantity, observed, sd, 0, model);
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

  /** Computed minus observed, wrapped to (−π, π] for readings round the circle. */
  double misfit(double[] state, double[] gradient) {
    double difference = model.at(state, gradient) - observed;
    return switch (quantity) {
      case BEARING, ANGLE, DIRECTION -> StrictMath.IEEEremainder(difference, 2 * Math.PI);
      default -> difference;
    };
  }
}
