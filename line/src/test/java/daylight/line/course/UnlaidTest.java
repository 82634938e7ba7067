package daylight.line.course;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.book.FieldBook;
import org.junit.jupiter.api.Test;

/** Books of which no course comes still say what in them contradicts what. */
class UnlaidTest {
  private static FieldBook two(double cable, double otherCable, double out, double otherOut) {
    Draft draft = Flat.ground().reach("R1", "N1", "N2").pass(Flat.push());
    draft.locate("L1", "P1", cable, 1.0).along("L1", Flat.ALONG, out);
    draft.locate("L2", "P1", otherCable, 1.0).along("L2", Flat.ALONG, otherOut);
    return draft.book();
  }

  @Test
  void oneReadingOfTheCounterCannotBeInTwoPlaces() {
    Line line = Flat.line(two(6, 6, 4, 10));

    assertThat(line.findRun("R1").orElseThrow().path()).isInstanceOf(Run.Path.NotFound.class);
    assertThat(line.doubts()).anyMatch(doubt -> doubt.key() == CourseKey.CABLE_TOO_SHORT);
  }

  @Test
  void cableThatWentNowhereIsUnaccountedFor() {
    Line line = Flat.line(two(6, 13, 8, 8.1));

    assertThat(line.findRun("R1").orElseThrow().path()).isInstanceOf(Run.Path.NotFound.class);
    assertThat(line.doubts()).anyMatch(doubt -> doubt.key() == CourseKey.CABLE_UNACCOUNTED);
  }

  @Test
  void oneSpotSeenTwiceContradictsNothing() {
    Line line = Flat.line(two(6, 6.1, 8, 8.05));

    assertThat(line.doubts())
        .noneMatch(doubt -> doubt.key() == CourseKey.CABLE_UNACCOUNTED)
        .noneMatch(doubt -> doubt.key() == CourseKey.CABLE_TOO_SHORT);
  }
}
