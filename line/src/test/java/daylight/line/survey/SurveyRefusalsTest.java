package daylight.line.survey;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** Refusals: impossible values never become sightings; the message names argument and value. */
class SurveyRefusalsTest {

  private static void refused(ThrowingCallable making, String... parts) {
    assertThatThrownBy(making)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContainingAll(parts);
  }

  @Test
  void standardDeviationsMustBePositive() {
    refused(() -> new Sighting.Tape("t", "A", "B", 3, 0), "sd", "0.0 m");
    refused(() -> new Sighting.Bearing("t", "A", "B", 3, -1), "sd", "-1.0 rad");
    refused(() -> new Sighting.AlongOut("t", "A", "B", "P", 1, 1, 1, Double.NaN), "sdOut", "NaN");
    refused(
        () -> new LevelSighting.Rod("t", "S", "P", 1, Double.POSITIVE_INFINITY), "sd", "Infinity");
  }

  @Test
  void readingsMustBePossible() {
    refused(() -> new Sighting.Tape("t", "A", "B", -3, 1), "metres", "-3.0 m");
    refused(() -> new Sighting.Gnss("t", "P", 2, 0, 1, 1, 0), "latitudeRad", "2.0");
    refused(() -> new Sighting.Gnss("t", "P", 1, 0, 1, 1, 1), "corr", "1.0");
    refused(() -> new Sighting.Fixed("P", Double.NaN, 0), "x", "NaN");
    refused(() -> new Snooping(0.7, 4), "familyRate", "0.7");
  }

  @Test
  void aSightingJoinsDifferentNamedPoints() {
    refused(() -> new Sighting.Tape("t", "A", "A", 3, 1), "point", "A");
    refused(() -> new Sighting.Angle("t", "A", "B", "B", 1, 1), "to", "B");
    refused(() -> new Sighting.Side("t", "A", "A", "B", Hand.LEFT), "point", "A");
    refused(() -> new Sighting.Tape(" ", "A", "B", 3, 1), "entry");
  }

  @Test
  void aNetworkDoesNotContradictItself() {
    refused(
        () ->
            new PlaneNetwork(
                List.of(Networks.fixed("A", 0, 0), Networks.fixed("A", 1, 0)), List.of()),
        "fixed once",
        "A");
    refused(
        () ->
            new PlaneNetwork(
                List.of(
                    new Sighting.Direction("d1", "s", "A", "B", 0, 1),
                    new Sighting.Direction("d2", "s", "C", "B", 0, 1)),
                List.of()),
        "set",
        "s",
        "C");
  }

  @Test
  void aPointThatIsNotInTheResultIsRefusedByName() {
    Adjusted adjusted = Networks.adjusted(List.of(Networks.tape("A", "B", 8, 0.01)), "A", "B");
    refused(() -> adjusted.covariance("A", "Q"), "Q", "[A, B]");
    refused(() -> adjusted.ellipse("A", 1), "probability", "1.0");
  }
}
