package daylight.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.footage.Make;
import daylight.footage.Watch;
import daylight.line.course.CourseKey;
import daylight.line.course.PlacedFinding;
import daylight.line.measure.Complaint;
import daylight.report.Handout;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** Books that lean on the counter in their recordings instead of typed readings. */
class CounterInAnswerTest {
  @RegisterExtension static final OwnCache CACHE = new OwnCache();

  @TempDir private static Path folder = Path.of("");

  private final List<String> steps = new ArrayList<>();

  @BeforeAll
  static void films() throws IOException {
    CountedFilm.write(folder.resolve("in.mpg"), Make.MPEG2_MPG);
  }

  /** A crack at a moment of the rest at 6 ft, and roots at 6 ft by the counter. */
  private static OneDrain drain() {
    return OneDrain.empty()
        .found(
            "{label: F1, kind: crack, moment: {media: M1, at: 9 s}, clock: 12}",
            "{label: F2, kind: roots, cable: 6, share: 10 %}")
        .filmed("in.mpg");
  }

  private static Path write(OneDrain drain) throws IOException {
    return drain.write(folder.resolve("book.yaml"));
  }

  private Handout answered(OneDrain drain) throws IOException {
    steps.clear();
    Progress progress =
        (step, what) -> {
          steps.add(step.name());
          return Watch.NOBODY;
        };
    return handout(Job.answer(write(drain), Job.Settings.USUAL, progress));
  }

  private static Handout handout(Job.Outcome outcome) {
    assertThat(outcome).isInstanceOf(Job.Outcome.Answered.class);
    return ((Job.Outcome.Answered) outcome).handout();
  }

  private static PlacedFinding placed(Handout handout, String label) {
    return handout.line().findings().stream()
        .filter(one -> one.finding().label().equals(label))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> codes(Handout handout) {
    return handout.complaints().stream().map(one -> one.code().key()).toList();
  }

  @Test
  void aBookWithoutTypedReadingsIsAnsweredFromTheCounterOnTheScreen() throws IOException {
    Handout handout = answered(drain());

    assertThat(codes(handout)).isEmpty();
    assertThat(placed(handout, "F1").from().distance())
        .isCloseTo(placed(handout, "F2").from().distance(), within(0.032));
    assertThat(handout.shots().stills()).hasSize(2);
    assertThat(handout.shots().of("F2").orElseThrow().seconds()).isBetween(8.0, 11.0);
  }

  @Test
  void theRecordingIsReadOnce() throws IOException {
    empty(CACHE.folder());
    answered(drain());
    assertThat(steps).containsOnlyOnce("COUNTING");
    Handout first = answered(drain());
    assertThat(steps).doesNotContain("COUNTING");

    damage(CACHE.folder());
    Handout again = answered(drain());
    assertThat(steps).containsOnlyOnce("COUNTING");
    assertThat(placed(again, "F1").from()).isEqualTo(placed(first, "F1").from());
  }

  @Test
  void beforeTheVanDoorsCloseOnlyWhatWasReadIsUsed() throws IOException {
    empty(CACHE.folder());
    Path book = write(drain());
    Handout unread = handout(Job.answerWithoutFootage(book, Job.Settings.USUAL));
    assertThat(codes(unread)).containsExactly("app.counter_not_read_yet");
    assertThat(unread.line().doubts()).anyMatch(doubt -> doubt.key() == CourseKey.MOMENT_UNPLACED);

    answered(drain());
    Handout read = handout(Job.answerWithoutFootage(book, Job.Settings.USUAL));
    assertThat(codes(read)).isEmpty();
    assertThat(placed(read, "F1").from().distance()).isCloseTo(6 * 0.3048, within(0.1));
  }

  @Test
  void aTypedReadingThatTheRecordingContradictsIsToldInItsPlace() throws IOException {
    Handout handout =
        answered(
            drain()
                .typed("{media: M1, at: 9 s, counter: 8.1}", "{media: M1, at: 16 s, counter: 9}"));

    assertThat(codes(handout)).containsExactly("app.anchor_unlike");
    Complaint unlike = handout.complaints().getFirst();
    assertThat(unlike.place().line())
        .isEqualTo(OneDrain.line(folder.resolve("book.yaml"), "counter: 8.1"));
    assertThat(placed(handout, "F1").from().distance())
        .isCloseTo(placed(handout, "F2").from().distance(), within(0.032));
  }

  @Test
  void anotherUnitOnTheScreenThanInTheBookIsTold() throws IOException {
    assertThat(codes(answered(drain().in("m")))).contains("app.counter_unit_unlike");
  }

  private static void empty(Path cache) throws IOException {
    for (Path file : files(cache)) {
      Files.delete(file);
    }
  }

  private static void damage(Path cache) throws IOException {
    for (Path file : files(cache)) {
      List<String> lines = Files.readAllLines(file);
      Files.write(file, lines.subList(0, lines.size() - 3));
    }
  }

  private static List<Path> files(Path cache) throws IOException {
    if (!Files.isDirectory(cache)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(cache)) {
      return files.toList();
    }
  }
}
