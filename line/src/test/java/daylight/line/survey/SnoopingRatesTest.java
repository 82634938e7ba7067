package daylight.line.survey;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/**
 * Laws: the rates that data snooping promises (Baarda 1968). Bounds leave three standard deviations
 * of the count for chance.
 */
class SnoopingRatesTest {
  private static final int NETWORKS = 200;

  @Test
  void cleanNetworksAlarmAtMostOncePerHundred() {
    int alarms = 0;
    for (int seed = 0; seed < NETWORKS; seed++) {
      Adjusted adjusted = new SimulatedYard(1000 + seed).adjusted();
      assertThat(adjusted.undetermined()).isEmpty();
      alarms += adjusted.fit().suspects().isEmpty() ? 0 : 1;
    }
    // 2 expected; 2 + 3·√(200·0.01·0.99) = 6.2.
    assertThat(alarms).isLessThanOrEqualTo(6);
  }

  @Test
  void cleanNetworksDoAlarmAtAHighRate() {
    int alarms = 0;
    for (int seed = 0; seed < NETWORKS; seed++) {
      var network =
          new PlaneNetwork(
              new SimulatedYard(1000 + seed).sightings(), List.of(), new Snooping(0.2, 4.132));
      alarms += Networks.adjusted(network).fit().suspects().isEmpty() ? 0 : 1;
    }
    // 40 expected at most; far below would mean that the test is not the one it says it is.
    assertThat(alarms).isBetween(15, 57);
  }

  @Test
  void blundersOfTheStatedSizeAreNamedOrListed() {
    int found = 0;
    int tried = 0;
    for (int seed = 0; seed < NETWORKS; seed++) {
      var yard = new SimulatedYard(5000 + seed);
      var random = new SplitMix64(seed);
      List<Residual> residuals = yard.adjusted().fit().residuals();
      List<Residual> checked =
          residuals.stream()
              .filter(r -> r.quantity() == Quantity.DISTANCE && r.redundancy() > 0.1)
              .toList();
      double z = Snooper.threshold(0.01, residuals.size());
      Residual chosen = checked.get(random.below(checked.size()));
      Sighting.Tape tape = tape(yard, chosen.entry());
      double size = (z + 1.645) * tape.sd() / Math.sqrt(chosen.redundancy());
      double signed = random.uniform() < 0.5 && tape.metres() > size ? -size : size;
      List<Sighting> misread = new ArrayList<>(yard.sightings());
      misread.remove(tape);
      misread.add(
          new Sighting.Tape(
              tape.entry(), tape.from(), tape.to(), tape.metres() + signed, tape.sd()));
      tried++;
      found +=
          Networks.adjusted(misread).fit().suspects().stream()
                  .anyMatch(
                      s ->
                          s.entry().equals(chosen.entry())
                              || s.inseparable().contains(chosen.entry()))
              ? 1
              : 0;
    }
    // 190 expected; 190 − 3·√(200·0.95·0.05) = 180.8.
    assertThat(found).isGreaterThanOrEqualTo(tried - 19);
  }

  private static Sighting.Tape tape(SimulatedYard yard, String entry) {
    return Objects.requireNonNull(
        yard.sightings().stream()
            .filter(s -> s.entry().equals(entry) && s instanceof Sighting.Tape)
            .map(Sighting.Tape.class::cast)
            .findFirst()
            .orElse(null));
  }
}
