package daylight.line.survey;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * How alike the test statistics of the tapes and wall readings of a network are, by the covariance
 * of their residuals, worked out beside the room's own: derivatives by differences about the
 * adjusted positions, inverses by Hipparchus.
 */
final class Likeness {
  private static final double STEP = 1e-5;
  private static final double CHECKED = 0.01;

  private final Adjusted adjusted;
  private final List<String> free = new ArrayList<>();
  private final List<Sighting> sightings;
  private final List<String> names = new ArrayList<>();
  private final RealMatrix residuals;

  Likeness(PlaneNetwork network) {
    adjusted = Networks.adjusted(network);
    sightings = network.sightings();
    adjusted.points().keySet().stream()
        .filter(p -> adjusted.covariance(p, p).xx() > 0)
        .forEach(free::add);
    for (Sighting sighting : sightings) {
      sighting.quantities().forEach(q -> names.add(sighting.entry() + q));
    }
    double[] zero = new double[2 * free.size()];
    RealMatrix design = new Array2DRowRealMatrix(names.size(), zero.length);
    for (int k = 0; k < zero.length; k++) {
      double[] up = zero.clone();
      double[] down = zero.clone();
      up[k] = STEP;
      down[k] = -STEP;
      double[] a = readings(up);
      double[] b = readings(down);
      for (int row = 0; row < a.length; row++) {
        design.setEntry(row, k, (a[row] - b[row]) / (2 * STEP));
      }
    }
    RealMatrix inverse = MatrixUtils.inverse(design.transposeMultiply(design));
    residuals =
        MatrixUtils.createRealIdentityMatrix(names.size())
            .subtract(design.multiply(inverse).multiplyTransposed(design));
  }

  /** Readings over their standard deviations, the free points being moved. */
  private double[] readings(double[] moves) {
    List<Double> readings = new ArrayList<>();
    for (Sighting sighting : sightings) {
      switch (sighting) {
        case Sighting.Tape t ->
            readings.add(at(t.from(), moves).distanceTo(at(t.to(), moves)) / t.sd());
        case Sighting.AlongOut s -> {
          PlanPoint from = at(s.wallFrom(), moves);
          double turn =
              from.bearingTo(at(s.point(), moves)) - from.bearingTo(at(s.wallTo(), moves));
          double reach = from.distanceTo(at(s.point(), moves));
          readings.add(reach * Math.cos(turn) / s.sdAlong());
          readings.add(-reach * Math.sin(turn) / s.sdOut());
        }
        default -> {}
      }
    }
    return readings.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private PlanPoint at(String point, double[] moves) {
    PlanPoint at = adjusted.point(point);
    int k = free.indexOf(point);
    return k < 0 ? at : new PlanPoint(at.x() + moves[2 * k], at.y() + moves[2 * k + 1]);
  }

  /** The largest correlation of the statistic of a reading with that of another that is checked. */
  double ofLikest(String entry, Quantity quantity) {
    int i = names.indexOf(entry + quantity);
    double likest = 0;
    for (int j = 0; j < names.size(); j++) {
      if (j != i && residuals.getEntry(j, j) > CHECKED) {
        double alike =
            Math.abs(residuals.getEntry(i, j))
                / Math.sqrt(residuals.getEntry(i, i) * residuals.getEntry(j, j));
        likest = Math.max(likest, alike);
      }
    }
    return likest;
  }
}
