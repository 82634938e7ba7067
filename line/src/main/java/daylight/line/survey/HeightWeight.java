package daylight.line.survey;

/**
 * One term of a linear function of heights.
 *
 * @param weight of the height, without unit
 */
public record HeightWeight(String point, double weight) {
  public HeightWeight {
    Require.finite("weight", weight, "");
  }
}
