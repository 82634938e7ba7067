package daylight.report.captions;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.book.Finding;
import daylight.line.book.Id;
import daylight.line.book.Where;
import daylight.line.counter.Track;
import daylight.line.counter.Track.Sample;
import daylight.line.counter.Track.State;
import daylight.line.measure.Shown;
import daylight.report.words.Language;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class CaptionsTest {
  private static final double FOOT = 0.3048;
  private static final Words FEET = Words.of(Language.EN, Shown.DECIMAL_FEET);

  private final List<Sample> samples = new ArrayList<>();

  /** Ten samples a second that go evenly from a reading to another, in feet. */
  private void run(double seconds, double from, double to, State state) {
    int count = (int) Math.round(seconds * 10);
    for (int i = 0; i < count; i++) {
      double feet = from + (to - from) * i / count;
      // As a counter shows it: to the tenth.
      samples.add(new Sample(samples.size() / 10.0, Math.round(feet * 10) / 10.0 * FOOT, state));
    }
  }

  private Counted counted(Integer... leaps) {
    return new Counted(new Track("", samples), Set.of(leaps), 0.1 * FOOT, samples.size() / 10.0);
  }

  private static List<String> told(List<Cue> cues) {
    return cues.stream().map(cue -> "%.1f %s".formatted(cue.from(), cue.text())).toList();
  }

  @Test
  void chaptersGoByDistanceOutAndBackWithRestsAndTheFurthest() {
    run(10, 0, 12, State.READ);
    run(5, 12, 12, State.READ);
    run(10, 12, 24, State.READ);
    run(10, 24, 8, State.READ);

    assertThat(told(DistanceChapters.of(counted(), 10 * FOOT, FEET)))
        .containsExactly(
            "0.0 0.0 ft",
            "8.3 10.0 ft",
            "10.0 12.0 ft, at rest",
            "21.7 20.0 ft",
            "25.0 24.0 ft, the furthest",
            "27.5 20.0 ft, coming back",
            "33.7 10.0 ft, coming back");
  }

  @Test
  void aRestAtAMarkIsOneChapter() {
    run(5, 0, 10, State.READ);
    run(5, 10, 10, State.READ);
    run(5, 10, 14, State.READ);

    assertThat(told(DistanceChapters.of(counted(), 10 * FOOT, FEET)))
        .containsExactly("0.0 0.0 ft", "5.0 10.0 ft, at rest", "14.9 13.9 ft, the furthest");
  }

  @Test
  void aCounterSetAnewAndWhatIsNotKnownAreChapters() {
    run(4, 3, 6, State.READ);
    run(4, 0, 0, State.UNKNOWN);
    run(4, 0, 3, State.READ);

    assertThat(told(DistanceChapters.of(counted(80), 10 * FOOT, FEET)))
        .containsExactly("0.0 3.0 ft", "3.8 distance not known", "8.0 counter set anew to 0.0 ft");
  }

  @Test
  void captionsSayWhatWasBridgedAndWhatIsNotKnown() {
    run(1, 0, 0, State.READ);
    run(1, 0.5, 0.5, State.BRIDGED);
    run(1, 0, 0, State.UNKNOWN);
    run(0.3, 2, 2, State.READ);
    run(0.2, 0, 0, State.UNKNOWN);
    run(0.5, 2, 2, State.BRIDGED);

    assertThat(told(DistanceCaptions.of(counted(), FEET)))
        .containsExactly(
            "0.0 0.0 ft",
            "1.0 about 0.5 ft, not legible here",
            "2.0 distance not known",
            "3.0 2.0 ft",
            "3.5 about 2.0 ft, not legible here");
  }

  private static FindingChapters.Seen seen(
      String label, String kind, double seconds, @Nullable Double feet) {
    return new FindingChapters.Seen(
        new Finding(
            new Id(UUID.nameUUIDFromBytes(new byte[] {1}), label),
            kind,
            new Where.AtMoment("M1", seconds),
            Finding.Moving.PUSHING,
            null,
            new TreeMap<>(),
            new TreeMap<>(),
            null,
            List.of(),
            List.of(),
            null),
        seconds,
        feet == null ? null : feet * FOOT);
  }

  @Test
  void aChapterForEachFindingAndOneForThoseOfOneMoment() {
    List<FindingChapters.Seen> seen =
        List.of(
            seen("F2", "roots", 9, 23.6),
            seen("F1", "crack", 4, 12.2),
            seen("F3", "crack", 9, null));

    assertThat(told(FindingChapters.chapters(seen, "C1", 20, FEET)))
        .containsExactly(
            "0.0 Entry at C1", "4.0 F1 Crack, 12.2 ft", "9.0 F2 Roots, 23.6 ft; F3 Crack");
    assertThat(FindingChapters.captions(seen, 10, FEET).getLast().to()).isEqualTo(10);
  }

  /** W3C WebVTT, sections 4.1 and 4.2.2: no arrow and no tag in a text, hours in two digits. */
  @Test
  void aFileHoldsNothingThatWouldBeTakenForSomethingElse() {
    String file =
        WebVtt.write(
            List.of(new Cue(0, 1.5, "a --> b <c> & d\n\ne"), new Cue(3_723.4567, 3_723.4568, " ")),
            "x --> y\nz");

    assertThat(file)
        .isEqualTo(
            """
            WEBVTT

            NOTE x --&gt; y z

            1
            00:00:00.000 --> 00:00:01.500
            a --&gt; b &lt;c&gt; &amp; d e

            2
            01:02:03.457 --> 01:02:03.458
            –
            """);
  }
}
