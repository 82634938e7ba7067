package daylight.line.sonde;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.special.Gamma;

/**
 * The sonde that fits the walked readings best. Strengths without sign fit several sondes at once
 * somewhere, so the way down is begun from many places that are the same every time: a grid of
 * places, depths and directions, the likeliest first, and the mirror images of what was found.
 */
final class WalkFit {
  private static final int FEWEST = Residuals.UNKNOWNS + 1;
  private static final int MOST_STARTS = 16;
  private static final double[] PLACES = {-0.1, 0.2, 0.5, 0.8, 1.1};
  private static final double[] DEPTHS = {0.08, 0.16, 0.3, 0.55, 1};
  private static final double[] TILTS = {0, 0.8, -0.8};
  private static final int BEARINGS = 4;

  /** A sum of squares larger by more makes a second sonde twenty times less likely. */
  private static final double AS_WELL = 6;

  /** An unknown of which the others leave less than this is not told by the readings. */
  private static final double OPENEST = 1e-10;

  /** Misfits rarer than this widen the covariance. */
  private static final double RARE = 0.05;

  private final List<Walked> readings;
  private final Residuals residuals;

  private WalkFit(List<Walked> readings) {
    this.readings = readings;
    this.residuals = new Residuals(readings);
  }

  static WalkReading of(List<Walked> readings) {
    WalkFit fit = new WalkFit(readings);
    if (fit.residuals.size() < FEWEST) {
      return new WalkRefused(WalkRefused.Reason.TOO_FEW, fit.residuals.size());
    }
    if (readings.stream().allMatch(one -> strength(one) == 0)) {
      return new WalkRefused(WalkRefused.Reason.SILENT, fit.residuals.size());
    }
    return fit.best();
  }

  private static double strength(Walked reading) {
    return switch (reading) {
      case Walked.Strength one -> one.value().value();
      case Walked.Parts parts ->
          StrictMath.sqrt(
              parts.right().value() * parts.right().value()
                  + parts.ahead().value() * parts.ahead().value()
                  + parts.up().value() * parts.up().value());
    };
  }

  private WalkReading best() {
    List<Descent> found = new ArrayList<>();
    for (double[] start : starts()) {
      keep(found, Descent.from(residuals, start));
    }
    for (Descent one : List.copyOf(found)) {
      for (double[] mirrored : mirrored(one.at())) {
        keep(found, Descent.from(residuals, mirrored));
      }
    }
    found.sort(Comparator.comparingDouble(Descent::sum));
    if (found.isEmpty()) {
      return new WalkRefused(WalkRefused.Reason.NOT_SETTLED, residuals.size());
    }
    Descent best = found.getFirst();
    double[][] inner = best.covariance(OPENEST);
    if (inner.length == 0) {
      return new WalkRefused(WalkRefused.Reason.LEAVES_OPEN, residuals.size());
    }
    int freedom = residuals.size() - Residuals.UNKNOWNS;
    boolean rare = Gamma.regularizedGammaQ(freedom / 2.0, best.sum() / 2) < RARE;
    double wider = rare ? StrictMath.max(1, best.sum() / freedom) : 1;
    Dipole sonde = sonde(best.at());
    Descent second = found.size() > 1 ? found.get(1) : null;
    boolean asWell = second != null && second.sum() - best.sum() < AS_WELL * wider;
    return new WalkFix(
        sonde,
        Spread.of(best.at(), inner, wider),
        best.sum(),
        freedom,
        second != null && asWell ? sonde(second.at()) : null,
        second != null && asWell ? second.sum() - best.sum() : 0);
  }

  /** Keeps what came to rest within reason and is not the same as one kept before. */
  private void keep(List<Descent> found, Descent descent) {
    double far = 20 * extent();
    double[] at = descent.at();
    boolean lost =
        !descent.settled()
            || !Double.isFinite(descent.sum())
            || !(StrictMath.exp(at[2]) < far)
            || !(StrictMath.exp(at[2]) > extent() / 2000)
            || !(at[3] * at[3] + at[4] * at[4] + at[5] * at[5] > 0)
            || StrictMath.hypot(at[0] - readings.getFirst().x(), at[1] - readings.getFirst().y())
                > far;
    if (lost) {
      return;
    }
    Dipole sonde = sonde(at);
    for (int i = 0; i < found.size(); i++) {
      if (same(sonde(found.get(i).at()), sonde)) {
        if (descent.sum() < found.get(i).sum()) {
          found.set(i, descent);
        }
        return;
      }
    }
    found.add(descent);
  }

  private static boolean same(Dipole one, Dipole other) {
    double near = 0.02 * (one.depth() + other.depth());
    return StrictMath.hypot(one.x() - other.x(), one.y() - other.y()) < near
        && StrictMath.abs(one.depth() - other.depth()) < near
        && one.angleTo(other) < 0.05;
  }

  private double extent() {
    double width = most(0) - least(0);
    double length = most(1) - least(1);
    return StrictMath.max(1e-6, StrictMath.hypot(width, length));
  }

  private double least(int axis) {
    return readings.stream().mapToDouble(one -> axis == 0 ? one.x() : one.y()).min().orElse(0);
  }

  private double most(int axis) {
    return readings.stream().mapToDouble(one -> axis == 0 ? one.x() : one.y()).max().orElse(0);
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  /** Where to begin, and how badly that fits. */
  private static final class Start {
    private final double[] at;
    private final double sum;

    Start(double[] at, double sum) {
      this.at = at;
      this.sum = sum;
    }
  }

  /** The likeliest of the grid, with the strength that fits each best. */
  private List<double[]> starts() {
    List<Start> starts = new ArrayList<>();
    double[] figures = residuals.figures();
    double[] shown = new double[figures.length];
    for (double[] place : places()) {
      for (double share : DEPTHS) {
        double depth = share * extent();
        for (double[] direction : directions()) {
          double[] at = {
            place[0], place[1], StrictMath.log(depth), direction[0], direction[1], direction[2]
          };
          residuals.shown(at, shown);
          double product = dot(shown, figures);
          double square = dot(shown, shown);
          if (product > 0 && square > 0) {
            for (int k = 3; k < at.length; k++) {
              at[k] *= product / square;
            }
            starts.add(new Start(at, -product * product / square));
          }
        }
      }
    }
    starts.sort(Comparator.comparingDouble(start -> start.sum));
    return starts.stream().limit(MOST_STARTS).map(start -> start.at).toList();
  }

  private List<double[]> places() {
    List<double[]> places = new ArrayList<>();
    double margin = 0.3 * extent();
    for (double across : PLACES) {
      for (double along : PLACES) {
        places.add(
            new double[] {
              between(least(0), most(0), across, margin), between(least(1), most(1), along, margin)
            });
      }
    }
    Walked loudest = readings.getFirst();
    for (Walked one : readings) {
      loudest = strength(one) > strength(loudest) ? one : loudest;
    }
    places.add(new double[] {loudest.x(), loudest.y()});
    return places;
  }

  /** A share of a side; of one that is next to nothing, of a margin about it. */
  private static double between(double low, double high, double share, double margin) {
    double width = StrictMath.max(high - low, margin);
    return (low + high) / 2 + (share - 0.5) * width;
  }

  private static List<double[]> directions() {
    List<double[]> directions = new ArrayList<>();
    directions.add(new double[] {0, 0, 1});
    for (int i = 0; i < BEARINGS; i++) {
      double bearing = StrictMath.PI * i / BEARINGS;
      for (double tilt : TILTS) {
        directions.add(new Dipole(0, 0, 1, bearing, tilt, 1).moment());
      }
    }
    return directions;
  }

  /** Tilted the other way, turned the other way about the walk, and on its other side. */
  private List<double[]> mirrored(double[] at) {
    double[] tilted = at.clone();
    tilted[5] = -at[5];
    double[] axis = axis();
    double[] middle = {(least(0) + most(0)) / 2, (least(1) + most(1)) / 2};
    double[] turned = at.clone();
    double along = at[3] * axis[0] + at[4] * axis[1];
    turned[3] = 2 * along * axis[0] - at[3];
    turned[4] = 2 * along * axis[1] - at[4];
    double[] over = turned.clone();
    double x = at[0] - middle[0];
    double y = at[1] - middle[1];
    double way = x * axis[0] + y * axis[1];
    over[0] = middle[0] + 2 * way * axis[0] - x;
    over[1] = middle[1] + 2 * way * axis[1] - y;
    double[] beside = over.clone();
    beside[3] = at[3];
    beside[4] = at[4];
    return List.of(tilted, turned, over, beside);
  }

  /** The direction in which the walk is longest. */
  private double[] axis() {
    double mx = readings.stream().mapToDouble(Walked::x).average().orElse(0);
    double my = readings.stream().mapToDouble(Walked::y).average().orElse(0);
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (Walked one : readings) {
      xx += (one.x() - mx) * (one.x() - mx);
      xy += (one.x() - mx) * (one.y() - my);
      yy += (one.y() - my) * (one.y() - my);
    }
    double angle = StrictMath.atan2(2 * xy, xx - yy) / 2;
    return new double[] {StrictMath.cos(angle), StrictMath.sin(angle)};
  }

  /** The sonde of those unknowns, turned so that its bearing is from 0 to below π. */
  static Dipole sonde(double[] at) {
    double strength = StrictMath.sqrt(at[3] * at[3] + at[4] * at[4] + at[5] * at[5]);
    boolean turn = at[3] < 0 || (at[3] == 0 && at[4] < 0);
    double sign = turn ? -1 : 1;
    double bearing = StrictMath.atan2(sign * at[3], sign * at[4]);
    double tilt = StrictMath.asin(sign * at[5] / strength);
    return new Dipole(at[0], at[1], StrictMath.exp(at[2]), bearing, tilt, strength);
  }
}
