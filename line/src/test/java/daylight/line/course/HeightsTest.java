package daylight.line.course;

import static daylight.line.course.Flat.line;
import static daylight.line.course.Flat.nearest;
import static daylight.line.course.Known.known;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.book.FieldBook;
import daylight.line.book.Finding;
import daylight.line.book.Level;
import daylight.line.book.Place;
import daylight.line.measure.Measured;
import org.junit.jupiter.api.Test;

/** What exposures, levels and surfaces make of depths and falls. */
class HeightsTest {
  @Test
  void anExposureHoldsTheDepth() {
    FieldBook book =
        Flat.book(
            Flat.push(),
            draft -> draft.exposure("X1", 10, null, 1.15, "slab").along("X1", 3, 12),
            3,
            17);

    Station there = nearest(line(book), "R1", 10);

    assertThat(known(there.depth()).value()).isCloseTo(1.15, within(0.02));
    // The nearest station is 0.15 m off the pit, where the slab may already have given way to yard.
    assertThat(known(there.depth()).sd()).isLessThan(0.03);
  }

  @Test
  void levelsOfBothInvertsGiveTheFallAsWellAsTheyAreRead() {
    FieldBook book =
        Flat.book(
            Flat.push(),
            draft ->
                draft.height("N1", Level.Part.INVERT, 99).height("N2", Level.Part.INVERT, 98.6),
            3,
            17);

    Measured fall = line(book).fall(new Place("R1", 0), new Place("R1", 20)).orElseThrow();

    assertThat(fall.value()).isCloseTo(0.4, within(0.003));
    assertThat(fall.sd()).isCloseTo(0.005 * Math.sqrt(2), within(0.003));
  }

  @Test
  void aFallFromSlabToYardIsWideUntilALevelTiesThem() {
    Measured loose = acrossTheWall(false);
    Measured tied = acrossTheWall(true);

    assertThat(loose.sd()).isGreaterThan(0.25);
    assertThat(tied.sd()).isLessThan(0.15);
    assertThat(tied.value()).isCloseTo(0.4, within(0.1));
  }

  /** Half way between a slab and a yard a metre above it the ground is at the one or the other. */
  @Test
  void theGroundMayStepAnywhereBetweenTwoSurfaces() {
    Measured even = depthBetween("slab");
    Measured step = depthBetween("yard");

    assertThat(even.sd()).isLessThan(0.2);
    assertThat(step.value()).isCloseTo(even.value(), within(0.05));
    assertThat(step.sd()).isCloseTo(0.5, within(0.1));
  }

  private static Measured depthBetween(String surfaceOfTheSecond) {
    Draft draft = Flat.ground().reach("R1", "N1", "N2").pass(Flat.push());
    draft.locate("L1", "P1", 5, Flat.depth(5), "slab", Finding.Moving.PUSHING).along("L1", 3, 7);
    draft.height("L1", Level.Part.GROUND, 100);
    draft.locate("L2", "P1", 15, Flat.depth(15) + 1, surfaceOfTheSecond, Finding.Moving.PUSHING);
    draft.along("L2", 3, 17).height("L2", Level.Part.GROUND, 101);
    return known(nearest(line(draft.book()), "R1", 10).depth());
  }

  private static Measured acrossTheWall(boolean levelled) {
    Draft draft = Flat.ground().reach("R1", "N1", "N2").pass(Flat.push());
    for (double at : new double[] {1, 3, 15, 19}) {
      String label = "L" + (int) at;
      draft.locate(
          label, "P1", at, Flat.depth(at), at < 10 ? "slab" : "yard", Finding.Moving.PUSHING);
      draft.along(label, 3, 2 + at);
      if (levelled) {
        draft.height(label, Level.Part.GROUND, 100);
      }
    }
    return line(draft.book()).fall(new Place("R1", 0), new Place("R1", 20)).orElseThrow();
  }
}
