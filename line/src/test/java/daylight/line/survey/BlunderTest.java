package daylight.line.survey;

import static daylight.line.survey.Networks.adjusted;
import static daylight.line.survey.Networks.fixed;
import static daylight.line.survey.Networks.tape;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Behaviour: which reading is named when one does not fit. Metres. */
class BlunderTest {
  private static final double FOOT = 0.3048;
  private static final double SD = 0.015;
  private static final PlanPoint SPOT = new PlanPoint(6, 5);
  private static final Map<String, PlanPoint> LANDMARKS =
      new TreeMap<>(
          Map.of(
              "A", new PlanPoint(0, 0),
              "B", new PlanPoint(0, 12),
              "C", new PlanPoint(14, 11),
              "D", new PlanPoint(13, -2),
              "E", new PlanPoint(7, -4)));

  /** Ties from the first so many landmarks to L3, one of them misread. */
  private static List<Sighting> ties(int count, String misread, double blunder) {
    var sightings = new ArrayList<Sighting>();
    LANDMARKS.entrySet().stream()
        .limit(count)
        .forEach(
            e -> {
              double off = e.getKey().equals(misread) ? blunder : 0;
              sightings.add(fixed(e.getKey(), e.getValue().x(), e.getValue().y()));
              sightings.add(tape(e.getKey(), "L3", e.getValue().distanceTo(SPOT) + off, SD));
            });
    return sightings;
  }

  @Test
  void aTieReadOnePointEightFeetTooLongIsNamedAndSetAside() {
    Adjusted adjusted = adjusted(ties(5, "A", 1.8 * FOOT));
    assertThat(adjusted.fit().suspects()).hasSize(1);
    Suspect suspect = adjusted.fit().suspects().getFirst();
    assertThat(suspect.entry()).isEqualTo("A–L3");
    assertThat(suspect.quantity()).isEqualTo(Quantity.DISTANCE);
    assertThat(suspect.blunder()).isCloseTo(1.8 * FOOT, within(0.02));
    assertThat(suspect.inseparable()).isEmpty();
    assertThat(suspect.setAside()).isTrue();
    assertThat(adjusted.fit().setAside()).containsExactly("A–L3");
    Networks.assertAt(adjusted, "L3", SPOT.x(), SPOT.y(), 1e-6);
  }

  @Test
  void twoBlundersAreFoundOneAfterTheOther() {
    List<Sighting> ties = new ArrayList<>(ties(5, "A", 1.8 * FOOT));
    ties.add(new Sighting.AlongOut("wall", "A", "B", "L3", SPOT.y() + 0.4, -SPOT.x(), SD, SD));
    Adjusted adjusted = adjusted(ties);
    assertThat(adjusted.fit().setAside()).containsExactlyInAnyOrder("A–L3", "wall");
    Networks.assertAt(adjusted, "L3", SPOT.x(), SPOT.y(), 1e-6);
  }

  @Test
  void withOneTieOverNoTieCanBeToldFromTheOthers() {
    Adjusted adjusted = adjusted(ties(3, "A", 1.8 * FOOT));
    Suspect suspect = adjusted.fit().suspects().getFirst();
    assertThat(adjusted.fit().suspects()).hasSize(1);
    // A and C look at the spot from opposite ends, so only they check each other.
    var named = new ArrayList<>(suspect.inseparable());
    named.add(suspect.entry());
    assertThat(named).containsExactlyInAnyOrder("A–L3", "C–L3");
    assertThat(adjusted.fit().unchecked()).containsExactly("B–L3");
    assertThat(suspect.setAside()).isFalse();
    assertThat(adjusted.fit().residuals()).hasSize(3);
  }

  @Test
  void whatNothingChecksIsNamed() {
    List<Sighting> ties = new ArrayList<>(ties(5, "", 0));
    ties.add(new Sighting.AlongOut("L4", "A", "B", "L4", 4, 3, SD, SD));
    Adjusted adjusted = adjusted(ties);
    assertThat(adjusted.fit().unchecked()).containsExactly("L4");
    assertThat(adjusted.fit().residuals())
        .filteredOn(r -> r.entry().equals("L4"))
        .allSatisfy(
            r -> {
              assertThat(r.redundancy()).isLessThan(1e-9);
              assertThat(r.standardised()).isNull();
              assertThat(r.detectable()).isNull();
            });
  }

  @Test
  void theSmallestDetectableBlunderIsBaardas() {
    Adjusted adjusted = adjusted(ties(5, "", 0));
    assertThat(adjusted.fit().residuals())
        .allSatisfy(
            r ->
                assertThat(r.detectable())
                    .isCloseTo(4.132 * SD / Math.sqrt(r.redundancy()), within(1e-9)));
    assertThat(adjusted.fit().residuals().stream().mapToDouble(Residual::redundancy).sum())
        .isCloseTo(3, within(1e-9));
  }

  /** Data snooping at α0 = 0.001, 1 % and 5 % for a single reading (Baarda 1968). */
  @Test
  void thresholdsForOneReadingAreThoseOfTheNormalDistribution() {
    assertThat(Snooper.threshold(0.001, 1)).isCloseTo(3.29, within(5e-3));
    assertThat(Snooper.threshold(0.01, 1)).isCloseTo(2.576, within(5e-4));
    assertThat(Snooper.threshold(0.05, 1)).isCloseTo(1.960, within(5e-4));
    assertThat(Snooper.threshold(0.01, 40)).isGreaterThan(Snooper.threshold(0.01, 4));
  }
}
