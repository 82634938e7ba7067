package daylight.app;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.course.CourseKey;
import daylight.line.course.Line;
import daylight.report.Handout;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Locates of which only the time was noted. The camera rests at 12 ft a minute into the recording,
 * at 26 ft two minutes later, and at 41 ft again two minutes later; it began at 10:00.
 */
class LocateByClockTest {
  @TempDir private Path folder = Path.of("");

  private Handout answered(String start, String first, String second, String third)
      throws IOException {
    Path book =
        Files.writeString(
            folder.resolve("book.yaml"),
            """
            # An invented scenario.
            daylight-book: 1
            units: {distance: ft, depth: ft}
            site:
              zone: UTC
              invented: yes
              landmarks: [{label: A, base: yes}, {label: B, base: yes}]
              nodes: [{label: C1, kind: access}, {label: O1, kind: outlet}]
              reaches: [{label: R1, from: C1, to: O1, water: forward, bore: 4 in}]
            visit:
              date: 2026-04-18
              ties: [{from: A, to: B, tape: 40}]
              passes:
                - label: P1
                  zero: {reads: 0}
                  %s
                  anchors:
                    - {media: M1, at: 2 s, counter: 0}
                    - {media: M1, at: 30 s, counter: 12}
                    - {media: M1, at: 100 s, counter: 12}
                    - {media: M1, at: 150 s, counter: 26}
                    - {media: M1, at: 220 s, counter: 26}
                    - {media: M1, at: 270 s, counter: 41}
                    - {media: M1, at: 340 s, counter: 41}
              locates:
                - {label: L1, %s, along: 8, out: 6, depth: 2.5}
                - {label: L2, %s, along: 9.5, out: 20, depth: 2.8}
                - {label: L3, %s, along: 11, out: 35, depth: 3}
              media: [{label: M1, kind: footage, file: gone.mp4, pass: P1}]
            """
                .formatted(start, first, second, third));
    Job.Outcome outcome = Job.answerWithoutFootage(book, Job.Settings.USUAL);
    assertThat(outcome).as(String.valueOf(outcome)).isInstanceOf(Job.Outcome.Answered.class);
    return ((Job.Outcome.Answered) outcome).handout();
  }

  private static List<String> said(Handout handout) {
    return handout.complaints().stream()
        .map(one -> one.code().key())
        .filter(key -> key.startsWith("app."))
        .toList();
  }

  private static boolean saysNoCable(Line line) {
    return line.doubts().stream().anyMatch(doubt -> doubt.key() == CourseKey.NO_CABLE);
  }

  @Test
  void isPlacedWhereTheCameraRestedThen() throws IOException {
    Handout handout =
        answered("", "cable: 12, time: '10:01:05'", "time: '10:03:05'", "time: '10:05:05'");

    assertThat(said(handout))
        .containsExactly("app.recording_began", "app.locate_by_clock", "app.locate_by_clock");
    assertThat(saysNoCable(handout.line())).isFalse();
    Handout typed = answered("", "cable: 12", "cable: 26", "cable: 41");
    assertThat(handout.line().locates()).hasSameSizeAs(typed.line().locates());
    for (int i = 0; i < 3; i++) {
      assertThat(handout.line().locates().get(i).entry())
          .isEqualTo(typed.line().locates().get(i).entry());
    }
    assertThat(handout.book().visits().getFirst().locates().get(1).cable())
        .as("what was written stays as it was written")
        .isNull();
  }

  @Test
  void theTimeAtWhichThePassBeganTiesTheRecordingToTheClockToo() throws IOException {
    Handout handout = answered("start: '10:00:00'", "cable: 12", "time: '10:03:05'", "cable: 41");

    assertThat(said(handout)).contains("app.recording_began");
    assertThat(said(handout)).contains("app.locate_several");
  }

  @Test
  void withoutATieToTheClockItIsAskedFor() throws IOException {
    Handout handout = answered("", "cable: 12", "time: '10:03:05'", "cable: 41");

    assertThat(said(handout)).containsExactly("app.locate_no_clock");
    assertThat(saysNoCable(handout.line())).isTrue();
  }

  @Test
  void aTimeAtWhichTheCameraRanPlacesNothing() throws IOException {
    Handout handout =
        answered("", "cable: 12, time: '10:01:38'", "cable: 26, time: '10:02:32'", "time: '10:20'");

    assertThat(said(handout)).containsExactly("app.recording_began", "app.locate_no_rest");
  }

  @Test
  void aTimeToTheMinuteBetweenTwoRestsListsBoth() throws IOException {
    Handout handout =
        answered("", "cable: 12, time: '10:01:05'", "time: '10:02'", "cable: 41, time: '10:05:05'");

    assertThat(said(handout)).contains("app.locate_several");
    assertThat(saysNoCable(handout.line())).isTrue();
  }
}
