package daylight.line.survey;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Laws: what data snooping promises (Baarda 1968), counted over invented yards. One reading of each
 * is falsified by (z + 1.645)·σ/√r, which a test of level z rejects 95 times of 100. Bounds leave
 * three standard deviations of the count for chance.
 */
class NamingRatesTest {
  private static final double APART = 0.9;

  /** What became of many networks. */
  private static final class Count {
    private int clean;
    private int alarms;
    private int tried;
    private int rejected;
    private int apart;
    private int named;
    private int alike;
    private int listed;

    private void clean(long seed) {
      clean++;
      alarms += new SimulatedYard(seed).adjusted().fit().suspects().isEmpty() ? 0 : 1;
    }

    /** The yard's own errors stay, so that the size is at the edge of what is found. */
    private void falsified(long seed) {
      var yard = new SimulatedYard(seed);
      var random = new SplitMix64(seed);
      Adjusted sound = adjusted(yard.sightings(), Snooping.USUAL);
      List<Residual> all = sound.fit().residuals();
      List<Residual> checked =
          all.stream()
              .filter(r -> r.quantity() == Quantity.DISTANCE && r.redundancy() > 0.05)
              .toList();
      Residual chosen = checked.get(random.below(checked.size()));
      double z = Snooper.threshold(0.01, (int) all.stream().filter(Residual::checked).count());
      double size = (z + 1.645) * chosen.readSd() / Math.sqrt(chosen.redundancy());
      boolean shorter = random.uniform() < 0.5 && chosen.read() > size;
      List<Sighting> misread = new ArrayList<>();
      for (Sighting sighting : yard.sightings()) {
        misread.add(
            sighting instanceof Sighting.Tape t && t.entry().equals(chosen.entry())
                ? new Sighting.Tape(
                    t.entry(), t.from(), t.to(), t.metres() + (shorter ? -size : size), t.sd())
                : sighting);
      }
      Adjusted after = adjusted(misread, Snooping.USUAL);
      tried++;
      List<Suspect> suspects = after.fit().suspects();
      rejected += suspects.isEmpty() ? 0 : 1;
      if (suspects.isEmpty()) {
        return;
      }
      boolean alone = suspects.stream().anyMatch(s -> s.entry().equals(chosen.entry()));
      boolean among =
          alone || suspects.stream().anyMatch(s -> s.inseparable().contains(chosen.entry()));
      if (likeness(yard.sightings(), chosen) <= APART) {
        apart++;
        named += alone ? 1 : 0;
      } else {
        alike++;
        listed += among ? 1 : 0;
      }
    }

    /** How alike the statistic of a reading is to the likest other, by the geometry alone. */
    private static double likeness(List<Sighting> sightings, Residual chosen) {
      var network = new PlaneNetwork(sightings, List.of(), new Snooping(1e-9, 4.132));
      return new Likeness(network).ofLikest(chosen.entry(), chosen.quantity());
    }

    private static Adjusted adjusted(List<Sighting> sightings, Snooping snooping) {
      return Networks.adjusted(new PlaneNetwork(sightings, List.of(), snooping));
    }

    @Override
    public String toString() {
      return "%d of %d clean alarm; %d of %d rejected; %d of %d named; %d of %d listed"
          .formatted(alarms, clean, rejected, tried, named, apart, listed, alike);
    }
  }

  private static Count count(int clean, int falsified) {
    var count = new Count();
    for (int i = 0; i < clean; i++) {
      count.clean(100_000 + i);
    }
    for (int i = 0; i < falsified; i++) {
      count.falsified(40_000 + i);
    }
    return count;
  }

  /** A share of so many, less three standard deviations of the count for chance. */
  private static int atLeast(double share, int of) {
    return (int) (share * of - 3 * Math.sqrt(of * share * (1 - share)));
  }

  @Test
  void aSampleOfTwoHundredKeepsThePromise() {
    Count count = count(200, 200);
    assertThat(count.alarms).as("%s", count).isLessThanOrEqualTo(6);
    assertThat(count.rejected).as("%s", count).isGreaterThanOrEqualTo(atLeast(0.95, count.tried));
    assertThat(count.named).as("%s", count).isGreaterThanOrEqualTo((int) (0.9 * count.apart));
    assertThat(count.listed).as("%s", count).isGreaterThanOrEqualTo((int) (0.9 * count.alike));
  }

  /** On a thousand clean yards ten alarms may be chance; six thousand measure the rate. */
  @Test
  @Tag("long")
  void thousandsKeepThePromise() {
    Count count = count(6000, 3000);
    assertThat(count.alarms).as("%s", count).isLessThanOrEqualTo(60);
    assertThat(count.rejected).as("%s", count).isGreaterThanOrEqualTo(atLeast(0.95, count.tried));
    assertThat(count.named).as("%s", count).isGreaterThanOrEqualTo((int) (0.9 * count.apart));
    assertThat(count.listed).as("%s", count).isGreaterThanOrEqualTo((int) (0.9 * count.alike));
  }
}
