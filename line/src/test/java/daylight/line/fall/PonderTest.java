package daylight.line.fall;

import static daylight.line.course.Known.known;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.book.Level;
import daylight.line.book.Material;
import daylight.line.book.Node;
import daylight.line.book.Pass;
import daylight.line.counter.Tracks;
import daylight.line.course.Draft;
import daylight.line.course.Estimator;
import daylight.line.course.Line;
import daylight.line.course.Push;
import daylight.line.course.TestPriors;
import daylight.line.measure.Filled;
import daylight.line.measure.Reading;
import org.junit.jupiter.api.Test;

/** Water behind a lip whose height is known, worked by hand. */
class PonderTest {
  private static final double BORE = 0.1;

  /** Falls 30 cm to N2 over 10 m and rises by so much to the outlet over another 10 m. */
  private static Line bowl(double rise, double sd) {
    Draft draft =
        new Draft()
            .landmark("A", true)
            .landmark("B", true)
            .tape("A", "B", 20)
            .node("N1", Node.Kind.ACCESS)
            .node("N2", Node.Kind.ACCESS)
            .node("N3", Node.Kind.OUTLET)
            .along("N1", 3, 2)
            .along("N2", 3, 12)
            .along("N3", 3, 22)
            .reach(Draft.pipe("R1", "N1", "N2", "main", Material.PVC, BORE))
            .reach(Draft.pipe("R2", "N2", "N3", "main", Material.PVC, BORE))
            .pass(
                new Push("P1", "N1", "R1", "R2")
                    .node(10.02, "N2", daylight.line.book.Finding.Moving.PUSHING)
                    .end(20.04, Pass.Why.OUTLET_REACHED, "N3"));
    draft.level(height("N1", 99, sd)).level(height("N2", 98.7, sd));
    draft.level(height("N3", 98.7 + rise, sd));
    return Estimator.estimate(draft.book(), Tracks.NONE, TestPriors.shipped());
  }

  private static Level height(String node, double metres, double sd) {
    return new Level.Height(
        Draft.id("level", node),
        new Level.Mark(node, Level.Part.INVERT),
        new Reading(metres, sd, metres + " m"));
  }

  /**
   * The bottom rises 0.06 m over 10 m: water stands 6 cm deep at N2 and ends at the outlet. A pipe
   * that wanders between its ends holds more than a straight one: a sag counts, a hump does not
   * take away as much.
   */
  @Test
  void waterStandsUpToTheLipDownstream() {
    Line line = bowl(0.06, 0.001);
    Ponding ponding = Ponder.of(line, Draws.USUAL);
    Ponding.Spot low = ponding.at(known(line.findRun("R2").orElse(null)).at(0)).orElseThrow();

    assertThat(low.deeper()).isGreaterThan(0.99);
    assertThat(low.depth().middle()).isCloseTo(0.06, within(0.01));
    assertThat(ponding.at(known(line.findRun("R1").orElse(null)).at(1)).orElseThrow().deeper())
        .isLessThan(0.01);

    Ponding.Pool lower =
        ponding.pools().stream()
            .filter(p -> p.from().reach().equals("R2"))
            .findFirst()
            .orElseThrow();
    assertThat(lower.probability()).isGreaterThan(0.99);
    assertThat(lower.from().distance()).isCloseTo(0, within(0.01));
    assertThat(lower.lip().reach()).isEqualTo("R2");
    // The depth runs evenly from 6 cm to nothing: the mean of the segments of half a millimetre
    // each.
    double volume = 0;
    for (int i = 0; i < 120; i++) {
      volume += 10 / 120.0 * new Filled(BORE, (i + 0.5) * 0.06 / 120).area();
    }
    assertThat(known(lower.volume()).middle()).isBetween(0.9 * volume, 1.5 * volume);
  }

  @Test
  void aPipeThatFallsAllTheWayHoldsNone() {
    Ponding ponding = Ponder.of(bowl(-0.3, 0.001), Draws.USUAL);

    // Between levels ten metres apart a pipe may sag by chance; a pond stays unlikely.
    assertThat(ponding.pools()).isEmpty();
    assertThat(ponding.spots()).allSatisfy(spot -> assertThat(spot.deeper()).isLessThan(0.3));
  }

  @Test
  void heightsGoodToFiveCentimetresCannotTellAPondOfTwo() {
    Ponding ponding = Ponder.of(bowl(0.02, 0.05), Draws.USUAL);

    assertThat(ponding.spots().stream().mapToDouble(Ponding.Spot::deeper).max().orElseThrow())
        .isBetween(0.1, 0.9);
    assertThat(ponding.open().size() + ponding.pools().size()).isPositive();
  }

  /** Sections of a circle: half full is half of π r², full is all of it (any handbook). */
  @Test
  void theSameBookGivesTheSameFigures() {
    Line line = bowl(0.02, 0.02);

    assertThat(Ponder.of(line, Draws.USUAL)).isEqualTo(Ponder.of(line, Draws.USUAL));
    assertThat(Ponder.of(line, new Draws(1, 1000)).spots())
        .isNotEqualTo(Ponder.of(line, Draws.USUAL).spots());
  }

  @Test
  void drawsAreNormal() {
    Draws.Stream stream = new Draws.Stream(Draws.USUAL);
    double sum = 0;
    double squares = 0;
    int beyond = 0;
    int n = 100_000;
    for (int i = 0; i < n; i++) {
      double x = stream.normal();
      sum += x;
      squares += x * x;
      beyond += Math.abs(x) > 1.959964 ? 1 : 0;
    }

    assertThat(sum / n).isCloseTo(0, within(0.012));
    assertThat(squares / n).isCloseTo(1, within(0.015));
    assertThat((double) beyond / n).isCloseTo(0.05, within(0.0025));
  }
}
