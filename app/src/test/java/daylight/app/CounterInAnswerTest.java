package daylight.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.app.demo.DemoFilms;
import daylight.archive.FieldBookReader;
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
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Books that lean on the counter in their recordings instead of typed readings. */
class CounterInAnswerTest {
  /** What was filmed: a rest at 4 ft, the end at 9.5 ft. */
  private static final String FILMED =
      """
              anchors:
                - {media: M1, at: 0.5 s, counter: 0}
                - {media: M1, at: 4 s, counter: 4}
                - {media: M1, at: 6.5 s, counter: 4}
                - {media: M1, at: 12 s, counter: 9.5}
                - {media: M1, at: 13 s, counter: 9.5}
      """;

  @TempDir private static Path folder = Path.of("");

  private static String before = "";

  private final List<String> steps = new ArrayList<>();

  @BeforeAll
  static void films() throws IOException {
    before = System.getProperty("daylight.cache", "");
    System.setProperty("daylight.cache", folder.resolve("cache").toString());
    Path book = write(FILMED, "ft");
    DemoFilms.make(Objects.requireNonNull(FieldBookReader.read(book).book()), folder, Watch.NOBODY);
  }

  @AfterAll
  static void putsBack() {
    System.setProperty("daylight.cache", before);
  }

  private static Path write(String anchors, String unit) throws IOException {
    return Files.writeString(
        folder.resolve("book.yaml"),
        """
        # An invented scenario.
        daylight-book: 1
        units: {distance: %s, depth: ft, bore: in, level: ft}
        site:
          name: A drain
          zone: UTC
          invented: yes
          nodes:
            - {label: C1, kind: access}
            - {label: O1, kind: outlet}
          reaches:
            - {label: R1, line: drain, from: C1, to: O1, water: forward, material: clay, bore: 4 in}
        visit:
          date: 2026-04-18
          passes:
            - label: P1
              entry: C1
              walk: [R1]
              zero: {reads: 0}
              end: {cable: 9.5, why: outlet-reached, node: O1}
              findings:
                - {label: F1, kind: crack, moment: {media: M1, at: 5 s}, clock: 12}
                - {label: F2, kind: roots, cable: 4, share: 10 %%}
        %s
          media:
            - {label: M1, kind: footage, file: in.mpg, pass: P1}
        """
            .formatted(unit, anchors.indent(-2).stripTrailing()));
  }

  private Handout answered(String anchors, String unit) throws IOException {
    steps.clear();
    Progress progress =
        (step, what) -> {
          steps.add(step.name());
          return Watch.NOBODY;
        };
    return handout(Job.answer(write(anchors, unit), Job.Settings.USUAL, progress));
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
    Handout handout = answered("", "ft");

    assertThat(codes(handout)).isEmpty();
    assertThat(placed(handout, "F1").from().distance())
        .isCloseTo(placed(handout, "F2").from().distance(), within(0.032));
    assertThat(handout.shots().stills()).hasSize(2);
    assertThat(handout.shots().of("F2").orElseThrow().seconds()).isBetween(4.0, 6.5);
  }

  @Test
  void theRecordingIsReadOnce() throws IOException {
    empty(folder.resolve("cache"));
    answered("", "ft");
    assertThat(steps).containsOnlyOnce("COUNTING");
    Handout first = answered("", "ft");
    assertThat(steps).doesNotContain("COUNTING");

    damage(folder.resolve("cache"));
    Handout again = answered("", "ft");
    assertThat(steps).containsOnlyOnce("COUNTING");
    assertThat(placed(again, "F1").from()).isEqualTo(placed(first, "F1").from());
  }

  @Test
  void beforeTheVanDoorsCloseOnlyWhatWasReadIsUsed() throws IOException {
    empty(folder.resolve("cache"));
    Path book = write("", "ft");
    Handout unread = handout(Job.answerWithoutFootage(book, Job.Settings.USUAL));
    assertThat(codes(unread)).containsExactly("app.counter_not_read_yet");
    assertThat(unread.line().doubts()).anyMatch(doubt -> doubt.key() == CourseKey.MOMENT_UNPLACED);

    answered("", "ft");
    Handout read = handout(Job.answerWithoutFootage(book, Job.Settings.USUAL));
    assertThat(codes(read)).isEmpty();
    assertThat(placed(read, "F1").from().distance()).isCloseTo(4 * 0.3048, within(0.1));
  }

  @Test
  void aTypedReadingThatTheRecordingContradictsIsToldInItsPlace() throws IOException {
    Handout handout =
        answered(
            """
                    anchors:
                      - {media: M1, at: 5 s, counter: 6.1}
                      - {media: M1, at: 12.5 s, counter: 9.5}
            """,
            "ft");

    assertThat(codes(handout)).containsExactly("app.anchor_unlike");
    Complaint unlike = handout.complaints().getFirst();
    assertThat(unlike.place().line()).isEqualTo(25);
    assertThat(placed(handout, "F1").from().distance())
        .isCloseTo(placed(handout, "F2").from().distance(), within(0.032));
  }

  @Test
  void anotherUnitOnTheScreenThanInTheBookIsTold() throws IOException {
    assertThat(codes(answered("", "m"))).contains("app.counter_unit_unlike");
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
