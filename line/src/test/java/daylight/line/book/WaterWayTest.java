package daylight.line.book;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.course.Draft;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Through which reaches water goes. */
class WaterWayTest {
  private static Reach reach(String label, String from, String to, Reach.Water water) {
    return new Reach(
        Draft.id("reach", label),
        "line",
        from,
        to,
        water,
        Reach.Use.UNKNOWN,
        Material.UNKNOWN,
        null,
        null);
  }

  private static Site site(Reach... reaches) {
    Site base = new Draft().book().site();
    return new Site(
        base.id(),
        base.name(),
        null,
        base.zone(),
        true,
        List.of(),
        List.of(),
        List.of(),
        List.of(reaches),
        Surroundings.UNRECORDED);
  }

  /** Two branches join and go on; the second is written against its water. */
  private static Site branched() {
    return site(
        reach("R1", "A", "J", new Reach.Water.Forward()),
        reach("R2", "J", "B", new Reach.Water.Backward()),
        reach("R3", "J", "O", new Reach.Water.Forward()));
  }

  @Test
  void waterGoesDownAndNotIntoTheOtherBranch() {
    assertThat(WaterWay.below(branched(), "A")).containsExactly("R1", "R3");
    assertThat(WaterWay.below(branched(), "B")).containsExactly("R2", "R3");
    assertThat(WaterWay.below(branched(), "O")).isEmpty();
  }

  @Test
  void whatDrainsThroughAReachComesFromEveryBranchAboveIt() {
    Site site = branched();
    assertThat(WaterWay.above(site, site.reaches().getLast()))
        .containsExactlyInAnyOrder("J", "A", "B");
    assertThat(WaterWay.above(site, site.reaches().getFirst())).containsExactly("A");
  }

  @Test
  void whatRunsToANodeByItselfComesThroughNoPump() {
    Site site = branched();
    assertThat(WaterWay.runsTo(site, "J")).containsExactlyInAnyOrder("J", "A", "B");
    Site pumped =
        site(
            reach("R1", "A", "J", new Reach.Water.Forward()),
            pumped(reach("R2", "B", "J", new Reach.Water.Forward())));
    assertThat(WaterWay.runsTo(pumped, "J")).containsExactlyInAnyOrder("J", "A");
  }

  private static Reach pumped(Reach reach) {
    return new Reach(
        reach.id(),
        reach.line(),
        reach.from(),
        reach.to(),
        reach.water(),
        Reach.Use.PUMPED,
        reach.material(),
        reach.bore(),
        reach.length());
  }

  @Test
  void whereNobodyKnowsTheWayOfTheWaterItMayGoEitherWay() {
    Site site = site(reach("R1", "A", "B", new Reach.Water.Unknown("not seen")));
    assertThat(WaterWay.below(site, "A")).containsExactly("R1");
    assertThat(WaterWay.below(site, "B")).containsExactly("R1");
  }
}
