package daylight.app;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.answer.Answer;
import daylight.line.answer.AnswerKey;
import daylight.line.answer.Caution;
import daylight.line.answer.CopeKey;
import daylight.line.answer.Evidence;
import daylight.line.answer.FigureKey;
import daylight.line.answer.Question;
import daylight.line.answer.State;
import daylight.line.measure.Argument;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whether invented lines cope: what is answered, and what is asked for where it cannot be said. */
class CopeTest {
  @TempDir private Path folder = Path.of("");

  private Answer answered(String book) throws IOException {
    Path file = Files.writeString(folder.resolve("field-book.yaml"), book);
    if (Job.answer(file, Job.Settings.USUAL)
        instanceof Job.Outcome.Answered(var handout, var _, var _, var _, var _)) {
      return handout.answers().lines().getFirst().to(Question.COPE);
    }
    throw new AssertionError("refused");
  }

  private static String corpus(String name) throws IOException {
    return Files.readString(SourceTree.ofThisProject().file("corpus/" + name + ".yaml"));
  }

  /** A book of the corpus with some texts replaced. */
  private Answer cope(String name, String... pairs) throws IOException {
    String book = corpus(name);
    for (int i = 0; i < pairs.length; i += 2) {
      assertThat(book).contains(pairs[i]);
      book = book.replace(pairs[i], pairs[i + 1]);
    }
    return answered(book);
  }

  private static List<String> keys(Answer answer) {
    return answer.reasons().stream().map(reason -> reason.key().key()).toList();
  }

  private static List<String> missing(Answer answer) {
    return answer.missing().stream().map(reason -> reason.key().key()).toList();
  }

  private static double figure(Answer answer, FigureKey key) {
    for (Evidence one : answer.evidence()) {
      if (one instanceof Evidence.Figure(var what, Argument.Quantity(var _, double value), var _)
          && what == key) {
        return value;
      }
    }
    throw new AssertionError(key + " is not among " + answer.evidence());
  }

  /**
   * By hand: 0.9 × 2 in/h × 1200 ft² are 22.4 gpm; 4 in at 5 % carry 2 × 87.2 gpm × √(5/2) × 9/10 =
   * 248 gpm at n 0.010 (half-full table of standards 3.3).
   */
  @Test
  void aPipeThatCarriesTheRainCopes() throws IOException {
    Answer answer = cope("S71-copes-with-the-rain");
    assertThat(answer.state()).isEqualTo(State.WITHIN_LIMITS);
    assertThat(figure(answer, FigureKey.INFLOW) * 15850.3).isBetween(22.0, 22.8);
    assertThat(figure(answer, FigureKey.CAPACITY_LEAST) * 15850.3).isBetween(190.0, 247.0);
    assertThat(figure(answer, FigureKey.CAPACITY_MOST) * 15850.3).isBetween(249.0, 360.0);
    assertThat(keys(answer)).contains("cope.decides", "cope.chance", "cope.carried");
    assertThat(answer.cautions()).contains(Caution.LOCAL_CODES);
  }

  @Test
  void whatWasMeasuredToFillItTakesFromIt() throws IOException {
    Answer rooted = cope("S72-too-small-for-the-rain");
    Answer clear = cope("S72-too-small-for-the-rain", "share: 20 %, ", "");
    assertThat(rooted.state()).isEqualTo(State.NO);
    assertThat(keys(rooted)).contains("cope.narrowed", "cope.backs_up");
    assertThat(keys(clear)).doesNotContain("cope.narrowed");
    // Four fifths of the section carry (4/5)^(4/3) of it.
    assertThat(figure(rooted, FigureKey.CAPACITY_LEAST) / figure(clear, FigureKey.CAPACITY_LEAST))
        .isBetween(0.735, 0.75);
  }

  @Test
  void aRightSizedFlowIsTooCloseToSayAndIsAskedFor() throws IOException {
    Answer close = cope("S72-too-small-for-the-rain", "4000 sq ft", "2200 sq ft");
    assertThat(close.state()).isEqualTo(State.CANNOT_SAY_YET);
    assertThat(close.headline().key()).isEqualTo(CopeKey.CLOSE);
    assertThat(missing(close)).isNotEmpty();
  }

  @Test
  void whatIsNotKnownIsAskedFor() throws IOException {
    assertThat(missing(cope("S75-what-comes-in-not-noted")))
        .containsExactly(AnswerKey.MISSING_AREA.key());
    assertThat(missing(cope("S71-copes-with-the-rain", "rain: 2 in/h, ", "")))
        .containsExactly(AnswerKey.MISSING_RAIN.key());
    assertThat(missing(cope("S71-copes-with-the-rain", "bore: 4 in}", "length: 60}")))
        .containsExactly(AnswerKey.MISSING_BORE.key());
    Answer fixture =
        cope(
            "S75-what-comes-in-not-noted",
            "use: storm, material: pvc, bore: 4 in}",
            "use: sanitary, material: pvc, bore: 4 in}\n  surroundings: {fixtures: [{label: tub, node: C1, kind: bath tub}]}");
    assertThat(missing(fixture)).containsExactly(CopeKey.MISSING_FIXTURE_FLOW.key());
    Answer sanitary = cope("S75-what-comes-in-not-noted", "use: storm", "use: sanitary");
    assertThat(missing(sanitary)).containsExactly(CopeKey.MISSING_FIXTURES.key());
    assertThat(sanitary.headline().key()).isEqualTo(CopeKey.CARRIES);
  }

  /**
   * From half way on it is 2 in wide: the worst stretch is that one, with the water of the whole.
   */
  @Test
  void aNarrowerPipeOnTheWayIsTheWorstStretch() throws IOException {
    Answer narrow =
        cope(
            "S71-copes-with-the-rain",
            "  spots:\n",
            "  findings: [{label: F1, kind: bore-change, cable: 30, becomes: 2 in}]\n  spots:\n");
    assertThat(figure(narrow, FigureKey.CAPACITY_MOST) * 15850.3).isLessThan(70);
    assertThat(narrow.evidence().toString()).contains("Bore[metres=0.0508]");
  }

  @Test
  void aPipeWithoutFallCarriesNothingByItself() throws IOException {
    Answer level = cope("S72-too-small-for-the-rain", "rod: 6.10", "rod: 5.30");
    assertThat(level.headline().key()).isEqualTo(CopeKey.NO_FALL);
    assertThat(level.state()).isEqualTo(State.NO);
    assertThat(keys(level)).contains("cope.backs_up");
  }

  @Test
  void aPumpThatFeedsADrainIsToldWithWhereItBacksUp() throws IOException {
    Answer drain = cope("S74-pump-backs-up-the-drain");
    assertThat(drain.state()).isEqualTo(State.NO);
    assertThat(keys(drain)).contains("cope.pump_feeds", "cope.backs_up", "cope.slow");
  }

  @Test
  void aPumpKeepsUpOrDoesNot() throws IOException {
    Answer keeps = cope("S76-pit-rise-timed");
    assertThat(keeps.state()).isEqualTo(State.WITHIN_LIMITS);
    // 1.8 ft² × 0.5 ft in 2 min are 3.37 gpm.
    assertThat(figure(keeps, FigureKey.INFLOW) * 15850.3).isBetween(3.36, 3.38);
    assertThat(keys(keeps)).contains("cope.turns", "cope.lifts");
    assertThat(keeps.cautions()).contains(Caution.ELECTRICITY, Caution.CONFINED_SPACE);
    Answer weak =
        cope("S76-pit-rise-timed", "drop: 0.5, duration: 2 min", "drop: 2.5, duration: 20 s");
    assertThat(weak.headline().key()).isEqualTo(CopeKey.PUMP_TOO_WEAK);
    Answer never = cope("S73-will-not-pump");
    assertThat(never.headline().key()).isEqualTo(CopeKey.WILL_NOT_PUMP);
    assertThat(never.state()).isEqualTo(State.NO);
  }

  /** 56 ft of 1½ in pipe hold 5.1 gal; between the levels lie 1.8 ft² × 0.3 ft = 4.0 gal. */
  @Test
  void withoutACheckValveItMayPumpItsOwnWater() throws IOException {
    Answer own =
        cope(
            "S76-pit-rise-timed",
            "fittings: [check-valve, ",
            "fittings: [",
            "start: 1.2",
            "start: 0.7");
    assertThat(own.headline().key()).isEqualTo(CopeKey.OWN_WATER);
    Answer shorter = cope("S76-pit-rise-timed", "fittings: [check-valve, ", "fittings: [");
    assertThat(keys(shorter)).contains("cope.runs_back", "cope.turns");
  }

  @Test
  void whatIsNotKnownOfAPumpIsAskedFor() throws IOException {
    assertThat(missing(cope("S76-pit-rise-timed", "        lift: 8\n", "")))
        .containsExactly(CopeKey.MISSING_LIFT.key());
    Answer rising = cope("S76-pit-rise-timed", "head: 20}", "head: 30}");
    assertThat(missing(rising)).contains(AnswerKey.MISSING_PUMP.key());
    assertThat(rising.headline().key()).isEqualTo(CopeKey.COMES_IN);
    Answer untimed = cope("S76-pit-rise-timed", "kind: pit-rise", "kind: hold");
    assertThat(missing(untimed)).containsExactly(CopeKey.MISSING_PIT_RISE.key());
    assertThat(untimed.headline().key()).isEqualTo(CopeKey.PUMPS);
    Answer round = cope("S76-pit-rise-timed", "        area: 1.8 sq ft\n", "");
    assertThat(missing(round)).contains(CopeKey.MISSING_PIT_AREA.key());
    Answer odd = cope("S76-pit-rise-timed", "[check-valve, ", "[flapper, ");
    assertThat(keys(odd)).contains("cope.fitting_unknown");
    assertThat(missing(cope("S23-pumped"))).containsExactly(AnswerKey.MISSING_PUMP.key());
  }
}
