package daylight.line.survey;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;

/** Short words for networks in tests. */
final class Networks {
  private Networks() {}

  static Sighting tape(String from, String to, double metres, double sd) {
    return new Sighting.Tape(from + "–" + to, from, to, metres, sd);
  }

  static Sighting fixed(String point, double x, double y) {
    return new Sighting.Fixed(point, x, y);
  }

  static Sighting side(String point, String from, String to, Hand hand) {
    return new Sighting.Side("side of " + point, point, from, to, hand);
  }

  static PlaneNetwork network(List<Sighting> sightings, String... base) {
    return new PlaneNetwork(sightings, List.of(base));
  }

  static List<Sighting> and(List<? extends Sighting> some, Sighting... more) {
    return Stream.concat(some.stream(), Stream.of(more)).map(Sighting.class::cast).toList();
  }

  static Adjusted adjusted(List<Sighting> sightings, String... base) {
    return adjusted(network(sightings, base));
  }

  static Adjusted adjusted(PlaneNetwork network) {
    Adjustment adjustment = Surveyor.adjust(network);
    assertThat(adjustment).isInstanceOf(Adjusted.class);
    return (Adjusted) adjustment;
  }

  static LevelAdjusted levelled(List<LevelSighting> sightings) {
    LevelAdjustment adjustment = Surveyor.adjust(new LevelNetwork(sightings));
    assertThat(adjustment).isInstanceOf(LevelAdjusted.class);
    return (LevelAdjusted) adjustment;
  }

  static void assertAt(Adjusted adjusted, String point, double x, double y, double tolerance) {
    assertThat(adjusted.point(point).distanceTo(new PlanPoint(x, y)))
        .as("%s at %s, expected %s, %s", point, adjusted.point(point), x, y)
        .isLessThan(tolerance);
  }
}
