package daylight.line.survey;

import static daylight.line.survey.Networks.adjusted;
import static daylight.line.survey.Networks.and;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import org.junit.jupiter.api.Test;

/**
 * Reference: positions tied to WGS 84 against geodesics computed directly between the fixes (Karney
 * 2013, GeographicLib). Distances up to 300 m; 1 mm allowed.
 */
class SatelliteTieTest {
  private static final double LATITUDE = 47.3;
  private static final double LONGITUDE = -101.7;
  private static final double GRID_NORTH = 34;

  private static final Map<String, PlanPoint> GRID =
      new TreeMap<>(
          Map.of(
              "A", new PlanPoint(0, 0),
              "B", new PlanPoint(0, 40),
              "C", new PlanPoint(55, 12),
              "D", new PlanPoint(-120, 270)));

  private static PlanPoint grid(String point) {
    return Objects.requireNonNull(GRID.get(point));
  }

  /** Where a grid point lies, walked from A along one geodesic. */
  private static GeodesicData onEarth(String point) {
    PlanPoint at = grid(point);
    double bearing = Math.toDegrees(new PlanPoint(0, 0).bearingTo(at)) + GRID_NORTH;
    return Geodesic.WGS84.Direct(LATITUDE, LONGITUDE, bearing, new PlanPoint(0, 0).distanceTo(at));
  }

  private static Sighting fix(String point) {
    GeodesicData at = onEarth(point);
    return new Sighting.Gnss(
        "fix " + point, point, Math.toRadians(at.lat2), Math.toRadians(at.lon2), 0.02, 0.03, 0.4);
  }

  private static final List<Sighting> FIXES = List.of(fix("A"), fix("B"), fix("C"), fix("D"));

  @Test
  void distancesBetweenTiedPointsAreTheGeodesics() {
    Adjusted adjusted = adjusted(FIXES, "A", "B");
    for (String a : GRID.keySet()) {
      for (String b : GRID.keySet()) {
        GeodesicData from = onEarth(a);
        GeodesicData to = onEarth(b);
        double metres = Geodesic.WGS84.Inverse(from.lat2, from.lon2, to.lat2, to.lon2).s12;
        assertThat(adjusted.point(a).distanceTo(adjusted.point(b))).isCloseTo(metres, within(1e-3));
      }
      Networks.assertAt(adjusted, a, grid(a).x(), grid(a).y(), 1e-3);
    }
  }

  @Test
  void theTieTakesGridPositionsBackToTheEarth() {
    SiteTie tie = adjusted(FIXES, "A", "B").siteTie().orElseThrow();
    assertThat(Math.toDegrees(tie.gridNorth())).isCloseTo(GRID_NORTH, within(1e-3));
    for (String point : GRID.keySet()) {
      SiteTie.Geographic at = tie.geographic(grid(point));
      GeodesicData truth = onEarth(point);
      double off =
          Geodesic.WGS84.Inverse(
                  truth.lat2,
                  truth.lon2,
                  Math.toDegrees(at.latitudeRad()),
                  Math.toDegrees(at.longitudeRad()))
              .s12;
      assertThat(off).isLessThan(1e-3);
    }
  }

  @Test
  void twoFixesTieATapedNetworkWithoutBendingIt() {
    List<Sighting> taped =
        List.of(
            Networks.tape("A", "B", 40, 0.01),
            new Sighting.AlongOut("L1", "A", "B", "L1", 3, 2, 0.02, 0.02));
    Adjusted adjusted = adjusted(and(taped, fix("A"), fix("B")), "A", "B");
    Networks.assertAt(adjusted, "L1", -2, 3, 1e-3);
    assertThat(adjusted.siteTie()).isPresent();
    assertThat(adjusted(and(taped, fix("A")), "A", "B").siteTie()).isEmpty();
  }

  @Test
  void aFixThatIsHalfAMetreTooFarNorthIsNamed() {
    Sighting.Gnss good = (Sighting.Gnss) fix("C");
    Sighting bad =
        new Sighting.Gnss(
            "fix C", "C", good.latitudeRad() + 0.5 / 6.37e6, good.longitudeRad(), 0.02, 0.03, 0.4);
    List<Sighting> taped =
        List.of(
            Networks.tape("A", "B", 40, 0.005),
            Networks.tape("A", "C", grid("A").distanceTo(grid("C")), 0.005),
            Networks.tape("B", "C", grid("B").distanceTo(grid("C")), 0.005));
    Adjusted adjusted = adjusted(and(taped, fix("A"), fix("B"), bad, fix("D")), "A", "B");
    Suspect worst = adjusted.fit().suspects().getFirst();
    assertThat(worst.entry()).isEqualTo("fix C");
    assertThat(worst.quantity()).isEqualTo(Quantity.NORTH);
    assertThat(worst.blunder()).isCloseTo(0.5, within(0.05));
  }
}
