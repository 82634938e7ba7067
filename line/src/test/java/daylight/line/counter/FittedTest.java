package daylight.line.counter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.book.Finding;
import daylight.line.book.Pass;
import daylight.line.book.Visit;
import daylight.line.book.Where;
import daylight.line.counter.Track.Sample;
import daylight.line.counter.Track.State;
import daylight.line.course.Draft;
import daylight.line.course.Push;
import daylight.line.measure.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What was read in a recording, beside what its book says. */
class FittedTest {
  private static final double STEP = 0.01;

  /** Ten samples a second along corners of time and reading. */
  private static Track read(double... corners) {
    List<Sample> samples = new ArrayList<>();
    for (int i = 0; i <= corners[corners.length - 2] * 10; i++) {
      double seconds = i / 10.0;
      samples.add(new Sample(seconds, at(seconds, corners), State.READ));
    }
    return new Track("M1", samples);
  }

  /** Of two corners at one moment the second holds from there on. */
  private static double at(double seconds, double... corners) {
    int i = 0;
    while (i + 4 < corners.length && corners[i + 2] <= seconds) {
      i += 2;
    }
    double share = (seconds - corners[i]) / (corners[i + 2] - corners[i]);
    double metres = corners[i + 1] + share * (corners[i + 3] - corners[i + 1]);
    return Math.round(metres / STEP) * STEP;
  }

  private static Track without(Track track, double from, double to) {
    return new Track(
        track.media(),
        track.samples().stream()
            .map(
                one ->
                    one.seconds() > from && one.seconds() < to
                        ? new Sample(one.seconds(), 0, State.UNKNOWN)
                        : one)
            .toList());
  }

  private static Push push() {
    return new Push("P1", "N1", "R1");
  }

  private static Fitted fitted(Track read, Push... pushes) {
    Draft draft = new Draft();
    for (Push push : pushes) {
      draft.pass(push);
    }
    Visit visit = draft.book().visits().getFirst();
    return Fitted.of(visit, "M1", "P1", read, STEP);
  }

  private static double at(Fitted fitted, String pass, double seconds) {
    return fitted.tracks().stream()
        .filter(one -> one.pass().equals(pass))
        .flatMap(one -> one.track().counterAt(seconds).stream())
        .findFirst()
        .map(Track.Between::value)
        .orElse(Double.NaN);
  }

  @Test
  void aTypedReadingThatAgreesSaysNothing() {
    Fitted fitted = fitted(read(0, 0, 20, 6), push().anchor("M1", 10, 3.01));

    assertThat(fitted.misfits()).isEmpty();
    assertThat(at(fitted, "P1", 10)).isCloseTo(3, within(1e-9));
  }

  @Test
  void oneTypedHalfASecondLateSaysNothing() {
    assertThat(fitted(read(0, 0, 20, 6), push().anchor("M1", 10.5, 3)).misfits()).isEmpty();
  }

  @Test
  void oneThatDoesNotIsToldAndTheRecordingCounts() {
    Fitted fitted = fitted(read(0, 0, 20, 6), push().anchor("M1", 10, 3.6).anchor("M1", 15, 4.5));

    assertThat(fitted.misfits()).hasSize(1);
    Misfit.Anchor unlike = (Misfit.Anchor) fitted.misfits().getFirst();
    assertThat(unlike.anchor().seconds()).isEqualTo(10);
    assertThat(unlike.shown()).isCloseTo(3, within(1e-9));
    assertThat(at(fitted, "P1", 10)).isCloseTo(3, within(1e-9));
  }

  @Test
  void aPersonsCorrectionIsPutInThePlaceOfWhatWasRead() {
    Fitted fitted =
        fitted(
            read(0, 0, 20, 6), push().correction("M1", 9, 11, 3.6).correction("M1", 14, 16, null));

    assertThat(at(fitted, "P1", 10)).isEqualTo(3.6);
    assertThat(at(fitted, "P1", 15)).isNaN();
    assertThat(at(fitted, "P1", 12)).isCloseTo(3.6, within(1e-9));
  }

  @Test
  void whereNothingWasReadTypedReadingsStandIn() {
    Track smudged = without(read(0, 0, 20, 6), 5, 15);
    assertThat(at(fitted(smudged, push()), "P1", 10)).isNaN();

    Fitted fitted = fitted(smudged, push().anchor("M1", 10, 2));

    assertThat(fitted.misfits()).isEmpty();
    assertThat(at(fitted, "P1", 10)).isEqualTo(2);
    assertThat(at(fitted, "P1", 7.5)).isCloseTo(1.75, within(1e-9));
    Track track = fitted.tracks().getFirst().track();
    assertThat(track.counterAt(7.5).orElseThrow().sd())
        .isCloseTo(0.5 / Math.sqrt(12), within(1e-9));
  }

  @Test
  void aJumpThatTheBookNotesIsNoMisfit() {
    Track jumped = read(0, 0, 10, 3, 10, 3.8, 20, 6);

    assertThat(fitted(jumped, push().reset(3, 3.8)).misfits()).isEmpty();
    assertThat(fitted(jumped, push()).misfits()).hasSize(1);
  }

  @Test
  void afterASettingThatTheBookDoesNotNoteNothingIsKnown() {
    Fitted fitted = fitted(read(0, 0, 10, 3, 12, 3, 12, 0, 20, 2), push());

    assertThat(fitted.misfits()).singleElement().isInstanceOf(Misfit.Set.class);
    assertThat(at(fitted, "P1", 11)).isEqualTo(3);
    assertThat(at(fitted, "P1", 16)).isNaN();
  }

  @Test
  void theNextPassGoesOnWhereTheCounterWasZeroed() {
    Push on =
        new Push("P2", "N1", "R1")
            .zero(new Pass.Zero.Reads(new Reading(-3, null, "-3 m")))
            .finding(
                "crack",
                new Where.AtMoment("M1", 16),
                Finding.Moving.PUSHING,
                Map.of(),
                Map.of(),
                null);
    Fitted fitted = fitted(read(0, 0, 10, 3, 12, 3, 12, 0, 20, 2), push(), on);

    assertThat(fitted.misfits()).isEmpty();
    assertThat(at(fitted, "P1", 11)).isEqualTo(3);
    assertThat(at(fitted, "P1", 16)).isNaN();
    assertThat(at(fitted, "P2", 16)).isCloseTo(1, within(0.011));
    assertThat(at(fitted, "P2", 11)).isNaN();
  }

  @Test
  void whatWentBeforeTheZeroingAtTheEntryIsNotOfThePush() {
    Fitted fitted = fitted(read(0, 7.2, 4, 7.5, 4, 0, 14, 3), push());

    assertThat(fitted.misfits()).singleElement().isInstanceOf(Misfit.Before.class);
    assertThat(at(fitted, "P1", 2)).isNaN();
    assertThat(at(fitted, "P1", 9)).isCloseTo(1.5, within(0.011));
  }

  @Test
  void aLongPushThatWasZeroedAfterwardsIsNoMakingReady() {
    assertThat(fitted(read(0, 0, 10, 3, 10, 0, 20, 3), push()).misfits())
        .singleElement()
        .isInstanceOf(Misfit.Set.class);
  }
}
