package daylight.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.app.CountedFilm.Burned;
import daylight.footage.Make;
import daylight.footage.scene.CounterFormat;
import daylight.footage.scene.Lettering;
import daylight.footage.scene.Motion;
import daylight.line.counter.Track;
import daylight.line.course.PlacedFinding;
import daylight.report.Handout;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a book's kit says of the camera: where on the screen its counter stands, and what it counts.
 * The picture has two figures that run: at the lower left the counter, in metres that it does not
 * name; at the upper right another one in feet, which says 20 ft and twice the way.
 */
class CameraOfTheKitTest {
  private static final double FOOT = 0.3048;

  @RegisterExtension static final OwnCache CACHE = new OwnCache();

  @TempDir private static Path folder = Path.of("");

  @BeforeAll
  static void films() throws IOException {
    CountedFilm.write(
        folder.resolve("two.avi"),
        Make.MPEG4_AVI,
        new Motion(
            List.of(
                CountedFilm.anchor(0, 0),
                CountedFilm.anchor(2, 0),
                CountedFilm.anchor(9, 12),
                CountedFilm.anchor(13, 12),
                CountedFilm.anchor(20, 24))),
        201,
        new Burned(new Lettering.Place(0, 1), CounterFormat.metres(1, 2, ""), 0, 1),
        new Burned(new Lettering.Place(1, 0), CounterFormat.feet(1, 1, " ft"), 20 * FOOT, 2));
  }

  private static Handout answered(String kit) throws IOException {
    return outcome(kit).handout();
  }

  /** The furthest that the counter of the recording showed, metres. */
  private static double furthest(Job.Outcome.Answered answered) {
    assertThat(answered.counters()).hasSize(1);
    return answered.counters().values().iterator().next().track().samples().stream()
        .mapToDouble(Track.Sample::counter)
        .max()
        .orElseThrow();
  }

  private static Job.Outcome.Answered outcome(String kit) throws IOException {
    OneDrain drain =
        OneDrain.empty()
            .to("24")
            .found("{label: F1, kind: crack, moment: {media: M1, at: 11 s}, clock: 12}")
            .filmed("two.avi");
    Path book =
        (kit.isEmpty() ? drain : drain.on("kit: " + kit)).write(folder.resolve("book.yaml"));
    Job.Outcome outcome = Job.answer(book, Job.Settings.USUAL);
    assertThat(outcome).as(String.valueOf(outcome)).isInstanceOf(Job.Outcome.Answered.class);
    return (Job.Outcome.Answered) outcome;
  }

  private static List<PlacedFinding> crack(Handout handout) {
    return handout.line().findings().stream()
        .filter(one -> one.finding().label().equals("F1"))
        .toList();
  }

  private static List<String> codes(Handout handout) {
    return handout.complaints().stream().map(one -> one.code().key()).toList();
  }

  @Test
  void regionAndUnitOfTheKitAreUsed() throws IOException {
    Handout told = answered("{counter: {region: [0, 195, 150, 45], unit: m}}");

    assertThat(codes(told)).isEmpty();
    assertThat(crack(told)).hasSize(1);
    assertThat(crack(told).getFirst().from().distance()).isCloseTo(12 * FOOT, within(0.1));
  }

  @Test
  void withoutThemAnotherFigureIsTaken() throws IOException {
    assertThat(furthest(outcome(""))).isCloseTo((20 + 2 * 24) * FOOT, within(0.05));
    assertThat(furthest(outcome("{counter: {region: [0, 195, 150, 45], unit: m}}")))
        .isCloseTo(24 * FOOT, within(0.05));
  }

  @Test
  void withoutTheUnitTheBookCountsForIt() throws IOException {
    Handout feet = answered("{counter: {region: [0, 195, 150, 45]}}");

    // Its 3.66 are taken for feet, as every bare figure of this book is.
    assertThat(crack(feet).getFirst().from().distance()).isCloseTo(3.66 * FOOT, within(0.1));
  }

  @Test
  void aRegionOutsideThePictureIsToldEachTime() throws IOException {
    for (int i = 0; i < 2; i++) {
      assertThat(codes(answered("{counter: {region: [300, 195, 150, 45], unit: m}}")))
          .contains("app.region_outside");
    }
  }
}
