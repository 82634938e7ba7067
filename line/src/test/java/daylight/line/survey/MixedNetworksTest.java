package daylight.line.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/**
 * Reference: invented networks of mixed readings against a general-purpose solver (Hipparchus
 * 4.0.3, Levenberg–Marquardt with derivatives by differences). Coordinates to 0.1 mm, standard
 * deviations to 1 %.
 */
class MixedNetworksTest {
  private static final Snooping NEVER = new Snooping(1e-9, 4.132);

  private final SplitMix64 random = new SplitMix64(77);
  private final List<Sighting> sightings = new ArrayList<>();
  private final OutsideSolver outside = new OutsideSolver();

  /** By point: the indices of x and y among the outside solver's unknowns; −1 for a zero. */
  private final Map<String, int[]> at = new TreeMap<>();

  private final Map<String, PlanPoint> truth = new TreeMap<>();
  private final List<Double> start = new ArrayList<>();

  private void point(String label, double x, double y, boolean freeX, boolean freeY) {
    truth.put(label, new PlanPoint(x, y));
    int atX = freeX ? start(x) : -1;
    int atY = freeY ? start(y) : -1;
    at.put(label, new int[] {atX, atY});
  }

  private void point(String label, double x, double y) {
    point(label, x, y, true, true);
  }

  private int start(double value) {
    start.add(value + 0.05);
    return start.size() - 1;
  }

  private PlanPoint truth(String point) {
    return Objects.requireNonNull(truth.get(point));
  }

  private double x(double[] state, String point) {
    int k = Objects.requireNonNull(at.get(point))[0];
    return k < 0 ? truth(point).x() : state[k];
  }

  private double y(double[] state, String point) {
    int k = Objects.requireNonNull(at.get(point))[1];
    return k < 0 ? truth(point).y() : state[k];
  }

  private double distance(double[] s, String a, String b) {
    return Math.hypot(x(s, b) - x(s, a), y(s, b) - y(s, a));
  }

  private double azimuth(double[] s, String a, String b) {
    return Math.atan2(x(s, b) - x(s, a), y(s, b) - y(s, a));
  }

  private double[] truth() {
    return start.stream().mapToDouble(value -> value - 0.05).toArray();
  }

  private double erring(double sd, ToDoubleFunction<double[]> model) {
    return model.applyAsDouble(truth()) + sd * random.normal();
  }

  private static double round(double difference) {
    return Math.IEEEremainder(difference, 2 * Math.PI);
  }

  private void tape(String a, String b, double sd) {
    double read = erring(sd, s -> distance(s, a, b));
    sightings.add(new Sighting.Tape(a + "–" + b, a, b, read, sd));
    outside.with(sd, s -> distance(s, a, b) - read);
  }

  private void bearing(String a, String b, double sd) {
    double read = erring(sd, s -> azimuth(s, a, b));
    sightings.add(new Sighting.Bearing(a + ">" + b, a, b, read, sd));
    outside.with(sd, s -> round(azimuth(s, a, b) - read));
  }

  private void angle(String p, String a, String b, double sd) {
    double read = erring(sd, s -> azimuth(s, p, b) - azimuth(s, p, a));
    sightings.add(new Sighting.Angle(p + ":" + a + b, p, a, b, read, sd));
    outside.with(sd, s -> round(azimuth(s, p, b) - azimuth(s, p, a) - read));
  }

  private void directions(String p, double sd, String... to) {
    int zero = start(0.3);
    for (String b : to) {
      double read = erring(sd, s -> azimuth(s, p, b) - s[zero]);
      sightings.add(new Sighting.Direction(p + "/" + b, "set " + p, p, b, read, sd));
      outside.with(sd, s -> round(azimuth(s, p, b) - s[zero] - read));
    }
  }

  private void wall(String a, String b, String p, double sd) {
    ToDoubleFunction<double[]> along =
        s -> distance(s, a, p) * Math.cos(azimuth(s, a, p) - azimuth(s, a, b));
    ToDoubleFunction<double[]> out =
        s -> -distance(s, a, p) * Math.sin(azimuth(s, a, p) - azimuth(s, a, b));
    double readAlong = erring(sd, along);
    double readOut = erring(sd, out);
    sightings.add(new Sighting.AlongOut("wall " + p, a, b, p, readAlong, readOut, sd, sd));
    outside.with(sd, s -> along.applyAsDouble(s) - readAlong);
    outside.with(sd, s -> out.applyAsDouble(s) - readOut);
  }

  private void compare(PlaneNetwork network) {
    Adjusted adjusted = Networks.adjusted(network);
    assertThat(adjusted.undetermined()).isEmpty();
    OutsideSolver.Solved solved =
        outside.from(start.stream().mapToDouble(Double::doubleValue).toArray());
    double[] state = solved.at().toArray();
    at.forEach(
        (point, k) -> {
          Networks.assertAt(adjusted, point, x(state, point), y(state, point), 1e-4);
          Covariance2 own = adjusted.covariance(point, point);
          if (k[0] >= 0) {
            close(Math.sqrt(own.xx()), solved.sd(k[0]));
          }
          if (k[1] >= 0) {
            close(Math.sqrt(own.yy()), solved.sd(k[1]));
          }
          if (k[0] >= 0 && k[1] >= 0) {
            double scale = solved.sd(k[0]) * solved.sd(k[1]);
            double off = own.xy() - solved.covariance().getEntry(k[0], k[1]);
            assertThat(Math.abs(off)).isLessThan(0.01 * scale);
          }
        });
  }

  private static void close(double actual, double expected) {
    assertThat(actual).isCloseTo(expected, withPercentage(1));
  }

  @Test
  void aTapeYardWithWallsHungOnTwoLandmarks() {
    point("A", 0, 0, false, false);
    point("B", 0, 12.2, false, true);
    point("C", 14.1, 11.3);
    point("D", 13.2, -2.4);
    point("L1", 6.1, 4.9);
    point("L2", -5.3, 7.7);
    point("L3", 9.9, 19.4);
    tape("A", "B", 0.01);
    for (String corner : List.of("A", "B", "C")) {
      tape(corner, "D", 0.015);
    }
    tape("A", "C", 0.012);
    tape("B", "C", 0.012);
    for (String corner : List.of("A", "B", "C", "D")) {
      tape(corner, "L1", 0.02);
      tape(corner, "L3", 0.025);
    }
    wall("A", "B", "L2", 0.03);
    tape("D", "L2", 0.03);
    sightings.add(new Sighting.Side("side", "C", "A", "B", Hand.RIGHT));
    compare(new PlaneNetwork(sightings, List.of("A", "B"), NEVER));
  }

  @Test
  void correlatedCoordinatesOfThreePointsWithTapes() {
    point("P", 500100.2, 4720300.7);
    point("Q", 500131.9, 4720296.1);
    point("R", 500118.4, 4720331.3);
    point("S", 500125.5, 4720311.2);
    double[][] covariance = new double[6][6];
    double[][] root = {
      {0.012, 0, 0, 0, 0, 0},
      {0.004, 0.015, 0, 0, 0, 0},
      {0.007, 0.002, 0.009, 0, 0, 0},
      {-0.003, 0.008, 0.001, 0.011, 0, 0},
      {0.006, -0.001, 0.003, 0.002, 0.010, 0},
      {0.001, 0.007, -0.002, 0.004, 0.003, 0.013}
    };
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        for (int k = 0; k < 6; k++) {
          covariance[i][j] += root[i][k] * root[j][k];
        }
      }
    }
    List<ToDoubleFunction<double[]>> misfits = new ArrayList<>();
    List<Correlated.Component> components = new ArrayList<>();
    for (String p : List.of("P", "Q", "R")) {
      double east = truth(p).x() + 0.01 * random.normal();
      double north = truth(p).y() + 0.01 * random.normal();
      sightings.add(new Sighting.Sketched("fix " + p, p, east, north, 0.01));
      misfits.add(s -> x(s, p) - east);
      misfits.add(s -> y(s, p) - north);
      components.add(new Correlated.Component("fix " + p, Quantity.X));
      components.add(new Correlated.Component("fix " + p, Quantity.Y));
      tape(p, "S", 0.008);
    }
    tape("P", "Q", 0.008);
    tape("Q", "R", 0.008);
    outside.with(covariance, misfits);
    compare(
        new PlaneNetwork(
            sightings,
            List.of(),
            List.of(new Correlated(components, rows(covariance))),
            Map.of(),
            NEVER));
  }

  private static List<List<Double>> rows(double[][] matrix) {
    List<List<Double>> rows = new ArrayList<>();
    for (double[] row : matrix) {
      List<Double> boxed = new ArrayList<>();
      for (double value : row) {
        boxed.add(value);
      }
      rows.add(boxed);
    }
    return rows;
  }

  @Test
  void anglesDirectionsAndOneAzimuthFromOneFixedPoint() {
    point("F", 1000, 2000, false, false);
    point("G", 1043.7, 2011.2);
    point("H", 1029.5, 2048.9);
    point("K", 991.3, 2036.6);
    sightings.add(new Sighting.Fixed("F", 1000, 2000));
    bearing("F", "G", 2e-4);
    tape("F", "G", 0.006);
    tape("G", "H", 0.006);
    tape("H", "K", 0.006);
    angle("F", "G", "H", 1.5e-4);
    angle("F", "K", "G", 1.5e-4);
    angle("G", "H", "F", 1.5e-4);
    angle("H", "F", "G", 1.5e-4);
    directions("K", 1e-4, "F", "G", "H");
    compare(new PlaneNetwork(sightings, List.of(), NEVER));
  }

  @Test
  void differencesOfCoordinatesThatErrTogether() {
    point("F", 0, 0, false, false);
    point("G", 31.4, 12.8);
    point("H", 18.2, 41.9);
    sightings.add(new Sighting.Fixed("F", 0, 0));
    double[][] covariance = {
      {1.0e-4, 0.2e-4, 0.5e-4, 0},
      {0.2e-4, 1.4e-4, 0.1e-4, 0.6e-4},
      {0.5e-4, 0.1e-4, 0.9e-4, -0.3e-4},
      {0, 0.6e-4, -0.3e-4, 1.2e-4}
    };
    List<ToDoubleFunction<double[]>> misfits = new ArrayList<>();
    List<Correlated.Component> components = new ArrayList<>();
    for (String p : List.of("G", "H")) {
      double east = truth(p).x() + 0.01 * random.normal();
      double north = truth(p).y() + 0.01 * random.normal();
      sightings.add(new Sighting.Offset("way " + p, "F", p, east, north, 0.01));
      misfits.add(s -> x(s, p) - east);
      misfits.add(s -> y(s, p) - north);
      components.add(new Correlated.Component("way " + p, Quantity.X));
      components.add(new Correlated.Component("way " + p, Quantity.Y));
    }
    tape("G", "H", 0.004);
    angle("F", "H", "G", 2e-4);
    outside.with(covariance, misfits);
    compare(
        new PlaneNetwork(
            sightings,
            List.of(),
            List.of(new Correlated(components, rows(covariance))),
            Map.of(),
            NEVER));
  }

  /** Fixes on the earth, of two set-ups that each err by a shift of their own, tied by tapes. */
  @Test
  void satelliteFixesOfTwoSetUpsWithTapes() {
    point("A", 0, 0, false, false);
    point("B", 0, 40, false, true);
    point("C", 55, 12);
    point("D", 38, 61);
    int tie = start(3.0);
    start(-2.0);
    start(0.4);
    var zero = new SiteTie(Math.toRadians(47.3), Math.toRadians(-101.7), 3.0, -2.0, 0.4, 0, 0, 0);
    List<List<Sighting.Gnss>> sets = List.of(new ArrayList<>(), new ArrayList<>());
    for (String p : truth.keySet()) {
      SiteTie.Geographic on = zero.geographic(truth(p));
      double off = 0.02 / 6.37e6;
      sets.get(p.equals("A") || p.equals("C") ? 0 : 1)
          .add(
              new Sighting.Gnss(
                  "fix " + p,
                  p,
                  on.latitudeRad() + off * random.normal(),
                  on.longitudeRad() + off * random.normal(),
                  0.02,
                  0.03,
                  -0.3));
    }
    var first = sets.getFirst().getFirst();
    var local = new LocalGrid(first.latitudeRad(), first.longitudeRad());
    List<Correlated> correlated = new ArrayList<>();
    for (List<Sighting.Gnss> set : sets) {
      sightings.addAll(set);
      correlated.add(Correlated.sharing(set, set.stream().map(_ -> 0.05).toList()));
      double c = 0.05 * 0.05;
      double e = 0.02 * 0.02 + c;
      double n = 0.03 * 0.03 + c;
      double en = -0.3 * 0.02 * 0.03;
      double[][] joint = {{e, en, c, 0}, {en, n, 0, c}, {c, 0, e, en}, {0, c, en, n}};
      List<ToDoubleFunction<double[]>> misfits = new ArrayList<>();
      for (Sighting.Gnss fix : set) {
        PlanPoint ground = local.local(fix.latitudeRad(), fix.longitudeRad());
        String p = fix.point();
        misfits.add(
            s ->
                s[tie]
                    + Math.cos(s[tie + 2]) * x(s, p)
                    + Math.sin(s[tie + 2]) * y(s, p)
                    - ground.x());
        misfits.add(
            s ->
                s[tie + 1]
                    - Math.sin(s[tie + 2]) * x(s, p)
                    + Math.cos(s[tie + 2]) * y(s, p)
                    - ground.y());
      }
      outside.with(joint, misfits);
    }
    tape("A", "B", 0.01);
    tape("B", "C", 0.01);
    tape("C", "D", 0.01);
    compare(new PlaneNetwork(sightings, List.of("A", "B"), correlated, Map.of(), NEVER));
  }
}
