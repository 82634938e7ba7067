package daylight.line.survey;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Readings of one network that do not err by themselves, with their joint covariance. It takes the
 * place of the standard deviations that the sightings carry.
 *
 * @param components the readings, each once
 * @param covariance by rows in the order of the components, in the products of their units;
 *     symmetric and positive definite
 */
public record Correlated(List<Component> components, List<List<Double>> covariance) {
  /** A covariance is symmetric to this share of its size. */
  private static final double SYMMETRIC = 1e-9;

  /** One reading: a component of the sighting of an entry. */
  public record Component(String entry, Quantity quantity) {
    public Component {
      Require.label("entry", entry);
    }
  }

  public Correlated {
    components = List.copyOf(components);
    covariance = covariance.stream().map(List::copyOf).toList();
    int size = components.size();
    Set<Component> once = new HashSet<>(components);
    if (size == 0 || once.size() != size) {
      throw new IllegalArgumentException("components must be some, each once, were " + components);
    }
    if (covariance.size() != size || covariance.stream().anyMatch(row -> row.size() != size)) {
      throw new IllegalArgumentException(
          "covariance must have " + size + " rows of as many, had rows of " + sizes(covariance));
    }
    Flaw flaw = flaw(covariance);
    if (flaw != Flaw.NONE) {
      throw new IllegalArgumentException(
          "covariance must be symmetric and positive definite, of "
              + components
              + " it was "
              + flaw);
    }
  }

  /** What keeps a square matrix from being a covariance. */
  public enum Flaw {
    NONE,
    NOT_SYMMETRIC,
    /** A variance that is not above zero, or readings that say the same. */
    NOT_POSITIVE
  }

  /** Whether a square matrix, by rows, is a covariance. */
  public static Flaw flaw(List<List<Double>> covariance) {
    for (int i = 0; i < covariance.size(); i++) {
      for (int j = 0; j < i; j++) {
        double one = covariance.get(i).get(j);
        double other = covariance.get(j).get(i);
        double scale =
            StrictMath.sqrt(Math.abs(covariance.get(i).get(i) * covariance.get(j).get(j)));
        if (!(Math.abs(one - other) <= SYMMETRIC * scale)) {
          return Flaw.NOT_SYMMETRIC;
        }
      }
    }
    return Block.of(array(covariance)) == null ? Flaw.NOT_POSITIVE : Flaw.NONE;
  }

  private static List<Integer> sizes(List<List<Double>> covariance) {
    return covariance.stream().map(List::size).toList();
  }

  private static double[][] array(List<List<Double>> covariance) {
    return covariance.stream()
        .map(row -> row.stream().mapToDouble(Double::doubleValue).toArray())
        .toArray(double[][]::new);
  }

  /** The covariance of some of the components, by their places in the list. */
  Block block(List<Integer> places) {
    double[][] part = new double[places.size()][places.size()];
    for (int i = 0; i < part.length; i++) {
      for (int j = 0; j < part.length; j++) {
        part[i][j] = covariance.get(places.get(i)).get(places.get(j));
      }
    }
    Block block = Block.of(part);
    if (block == null) {
      throw new IllegalArgumentException("a part of a sound covariance must be sound");
    }
    return block;
  }

  /**
   * Satellite fixes of one set-up: each errs by itself as stated, and all of them together by one
   * unknown shift east and one north.
   *
   * @param fixes in any order
   * @param shared standard deviation of either shift, metres, as each of the fixes states it; zero
   *     or more
   */
  public static Correlated sharing(List<Sighting.Gnss> fixes, List<Double> shared) {
    shared.forEach(sd -> Require.notNegative("shared", sd, "m"));
    List<Component> components =
        fixes.stream()
            .flatMap(
                fix ->
                    Stream.of(
                        new Component(fix.entry(), Quantity.EAST),
                        new Component(fix.entry(), Quantity.NORTH)))
            .toList();
    double[][] covariance = new double[components.size()][components.size()];
    for (int i = 0; i < covariance.length; i++) {
      for (int j = i % 2; j < covariance.length; j += 2) {
        covariance[i][j] = shared.get(i / 2) * shared.get(j / 2);
      }
    }
    for (int k = 0; k < fixes.size(); k++) {
      Sighting.Gnss fix = fixes.get(k);
      double cross = fix.corr() * fix.sdEast() * fix.sdNorth();
      covariance[2 * k][2 * k] += fix.sdEast() * fix.sdEast();
      covariance[2 * k + 1][2 * k + 1] += fix.sdNorth() * fix.sdNorth();
      covariance[2 * k][2 * k + 1] += cross;
      covariance[2 * k + 1][2 * k] += cross;
    }
    return new Correlated(
        components, Stream.of(covariance).map(row -> Stream.of(box(row)).toList()).toList());
  }

  private static Double[] box(double[] row) {
    Double[] boxed = new Double[row.length];
    for (int i = 0; i < row.length; i++) {
      boxed[i] = row[i];
    }
    return boxed;
  }
}
