package daylight.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.app.CountedFilm.Burned;
import daylight.footage.Make;
import daylight.footage.scene.CounterFormat;
import daylight.footage.scene.Lettering;
import daylight.footage.scene.Motion;
import daylight.line.measure.Argument;
import daylight.line.measure.Complaint;
import daylight.report.Handout;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/**
 * A recording that began at 10:00:00 by the watch of whoever walked, and by the recorder's clock
 * five and a half minutes earlier (written into the file by FFmpeg's own program). The camera rests
 * eight seconds each at 3 ft from 0:12, at 6 ft from 0:26.
 */
class RecorderClockInAnswerTest {
  private static final double SLOW = 330;
  private static final String BY_COUNTER =
      "{label: L1, cable: 3 ft, time: '10:00:16', along: 8 ft, out: 3 ft, depth: 2.5 ft}";
  private static final String BY_TIME =
      "{label: L2, time: '10:00:30', along: 8 ft, out: 6 ft, depth: 2.6 ft}";
  private static final String BY_TIME_RUNNING =
      "{label: L2, time: '10:03:00', along: 8 ft, out: 6 ft, depth: 2.6 ft}";

  @RegisterExtension static final OwnCache CACHE = new OwnCache();

  @TempDir private static Path folder = Path.of("");

  @BeforeAll
  static void films() throws IOException {
    Path plain =
        CountedFilm.write(
            folder.resolve("plain.mp4"),
            Make.H264_MP4,
            new Motion(
                List.of(
                    CountedFilm.anchor(0, 0),
                    CountedFilm.anchor(6, 0),
                    CountedFilm.anchor(12, 3),
                    CountedFilm.anchor(20, 3),
                    CountedFilm.anchor(26, 6),
                    CountedFilm.anchor(34, 6),
                    CountedFilm.anchor(40, 9))),
            401,
            new Burned(new Lettering.Place(0, 1), CounterFormat.feet(1, 1, " ft"), 0, 1));
    Ffprobe.ffmpeg(
        "-i",
        plain.toString(),
        "-c",
        "copy",
        "-metadata",
        "creation_time=2026-04-18T09:54:30Z",
        folder.resolve("push.mp4").toString());
  }

  private static Handout answered(String kit, String... locates) throws IOException {
    List<String> lines = new ArrayList<>();
    if (!kit.isEmpty()) {
      lines.add("kit: " + kit);
    }
    lines.add("locates:");
    for (String locate : locates) {
      lines.add("  - " + locate);
    }
    Path book =
        OneDrain.empty()
            .on(lines.toArray(String[]::new))
            .filmed("push.mp4")
            .write(folder.resolve("book.yaml"));
    Job.Outcome outcome = Job.answer(book, Job.Settings.USUAL);
    assertThat(outcome).as(String.valueOf(outcome)).isInstanceOf(Job.Outcome.Answered.class);
    return ((Job.Outcome.Answered) outcome).handout();
  }

  private static Complaint said(Handout handout, String code) {
    return handout.complaints().stream()
        .filter(one -> one.code().key().equals("app." + code))
        .findFirst()
        .orElseThrow(() -> new AssertionError(code + " is not among " + handout.complaints()));
  }

  private static double seconds(Complaint complaint, int argument) {
    return ((Argument.Quantity) complaint.arguments().get(argument)).value();
  }

  @Test
  void theOffsetOfTheRecordersClockIsToldAndTheLocatePlaced() throws IOException {
    Handout handout = answered("", BY_COUNTER, BY_TIME);

    Complaint slow = said(handout, "recorder_slow");
    double giveOrTake = seconds(slow, 2);
    assertThat(giveOrTake).isBetween(1.0, 10.0);
    assertThat(seconds(slow, 1)).isCloseTo(SLOW, within(giveOrTake));
    Complaint placed = said(handout, "locate_by_clock");
    Argument.UncertainLength at = (Argument.UncertainLength) placed.arguments().get(1);
    assertThat(at.metres().value()).isCloseTo(6 * 0.3048, within(0.04));
    assertThat(handout.line().locates()).hasSize(2);
  }

  @Test
  void withoutATieToTheClockItIsAskedForWhateverTheRecorderSays() throws IOException {
    Handout handout = answered("", BY_TIME);

    assertThat(said(handout, "locate_no_clock").place().line())
        .isEqualTo(OneDrain.line(folder.resolve("book.yaml"), "label: L2"));
    assertThat(handout.complaints()).noneMatch(one -> one.code().key().contains("recorder"));
  }

  @Test
  void whatTheBookSaysOfTheRecordersClockBoundsTheBeginning() throws IOException {
    Handout handout = answered("{clock-offset: 330 s}", BY_TIME);

    // Two minutes to either side hold every rest, so the places are listed and asked about.
    Argument.Either places = (Argument.Either) said(handout, "locate_several").arguments().get(1);
    assertThat(places.items()).hasSize(3);
  }

  @Test
  void atATimeAtWhichNothingWasFilmedNothingIsPlaced() throws IOException {
    Handout handout = answered("", BY_COUNTER, BY_TIME_RUNNING);

    said(handout, "locate_no_rest");
  }
}
