package daylight.line.survey;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Adjusted heights with their full joint covariance, relative to the datum of the network. The
 * covariance takes the standard deviations of the readings at face value. Immutable.
 */
public final class LevelAdjusted implements LevelAdjustment {
  private final SortedMap<String, Double> heights;
  private final Map<String, Integer> unknowns;
  private final SortedMap<String, Integer> ofSetup;
  private final Solution solution;
  private final List<String> unreached;

  LevelAdjusted(
      SortedMap<String, Double> heights,
      Map<String, Integer> unknowns,
      Map<String, Integer> ofSetup,
      Solution solution,
      List<String> unreached) {
    this.heights = Collections.unmodifiableSortedMap(new TreeMap<>(heights));
    this.unknowns = Map.copyOf(unknowns);
    this.ofSetup = Collections.unmodifiableSortedMap(new TreeMap<>(ofSetup));
    this.solution = solution;
    this.unreached = List.copyOf(unreached);
  }

  /** Every determined height, metres, benchmarks included, in order of label. */
  public SortedMap<String, Double> heights() {
    return heights;
  }

  /**
   * The height of a point, metres.
   *
   * @throws IllegalArgumentException if the point is not among {@link #heights}
   */
  public double height(String label) {
    Double height = heights.get(label);
    if (height == null) {
      throw new IllegalArgumentException(
          "point must be one of " + heights.keySet() + ", was " + label);
    }
    return height;
  }

  /** Covariance of two heights, square metres; zero for benchmarks. */
  public double covariance(String a, String b) {
    return solution.covariance(unknown(a), unknown(b));
  }

  /** The set-ups whose instrument height is known, with that height, metres; in order of name. */
  public SortedMap<String, Double> setups() {
    var heights = new TreeMap<String, Double>();
    ofSetup.forEach((setup, unknown) -> heights.put(setup, solution.at(unknown)));
    return heights;
  }

  /**
   * Covariance of the instrument heights of two set-ups, or of one with itself, square metres.
   * Marks read once from one set-up, and from nowhere else, err independently once its height is
   * given.
   */
  public double covarianceOfSetups(String a, String b) {
    return solution.covariance(setup(a), setup(b));
  }

  /** Covariance of the instrument height of a set-up with the height of a point, square metres. */
  public double covarianceWithSetup(String setup, String point) {
    return solution.covariance(setup(setup), unknown(point));
  }

  private int setup(String name) {
    Integer at = ofSetup.get(name);
    if (at == null) {
      throw new IllegalArgumentException(
          "set-up must be one of " + ofSetup.keySet() + ", was " + name);
    }
    return at;
  }

  /** Standard deviation of a height, metres. */
  public double sd(String label) {
    return StrictMath.sqrt(covariance(label, label));
  }

  /** Standard deviation of the height difference of two points, metres. */
  public double riseSd(String from, String to) {
    double variance = covariance(from, from) + covariance(to, to) - 2 * covariance(from, to);
    return StrictMath.sqrt(Math.max(0, variance));
  }

  /** Residuals, redundancy and suspects. */
  public Fit fit() {
    return solution.fit();
  }

  /** Which entries the variance of a linear function of heights comes from. */
  public Shares sharesOf(List<HeightWeight> weights) {
    double[] byUnknown = new double[solution.unknowns()];
    for (HeightWeight weight : weights) {
      int at = unknown(weight.point());
      if (at >= 0) {
        byUnknown[at] += weight.weight();
      }
    }
    return solution.shares(byUnknown);
  }

  /** The points no levelling connects to the datum, in order of label. */
  public List<String> unreached() {
    return unreached;
  }

  private int unknown(String label) {
    height(label);
    return unknowns.getOrDefault(label, -1);
  }
}
