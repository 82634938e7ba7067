package daylight.app;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.archive.FieldBookReader;
import daylight.archive.ReadBook;
import daylight.line.answer.Answer;
import daylight.line.answer.AnswerKey;
import daylight.line.answer.Caution;
import daylight.line.answer.Question;
import daylight.line.answer.State;
import daylight.line.proving.Connection;
import daylight.line.proving.Passage;
import daylight.line.proving.Proving;
import daylight.report.Handout;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tests on an invented line with a branch: what is answered, and every wrong word of them. */
class TestsOnTheLineTest {
  private static final String SITE =
      """
      daylight-book: 1
      units: {distance: m, depth: m, bore: mm, level: m}
      site:
        invented: yes
        landmarks: [{label: A, base: yes}, {label: B, base: yes}, {label: oak, kind: tree, what: the oak}]
        nodes:
          - {label: C1, kind: access}
          - {label: I1, kind: inlet, what: roof leader at the porch}
          - {label: J1, kind: junction}
          - {label: O1, kind: outlet}
          - {label: P1, kind: access}
          - {label: P2, kind: outlet}
        reaches:
          - {label: R1, line: drain, from: C1, to: J1, water: forward, use: sanitary, material: pvc, bore: 100, length: 10}
          - {label: R2, line: drain, from: J1, to: O1, water: forward, use: sanitary, material: pvc, bore: 100, length: 10}
          - {label: R3, line: drain, from: I1, to: J1, water: forward, use: storm, material: pvc, bore: 100, length: 5}
          - {label: R4, line: other, from: P1, to: P2, water: forward, use: sanitary, material: pvc, bore: 100, length: 8}
        surroundings:
          roofs: [{label: porch, node: I1, area: 20 m2}]
          fixtures:
            - {label: FD, node: C1, kind: floor drain}
            - {label: SK, node: J1, kind: sink}
      visit:
        date: 2026-04-18
        passes:
          - label: push
            entry: C1
            walk: [R1, R2]
            zero: {reads: 0}
            end: {cable: 20, why: outlet-reached, node: O1}
            sight: [{from: 0, to: 20, clarity: clear}]
            findings: [{label: F1, kind: junction, cable: 10, node: J1, clock: 3}]
        tests:
      """;

  @TempDir private Path folder = Path.of("");

  private Handout answered(String tests) throws IOException {
    Path book = Files.writeString(folder.resolve("field-book.yaml"), SITE + tests.indent(4));
    if (Job.answer(book, Job.Settings.USUAL)
        instanceof Job.Outcome.Answered(var handout, var _, var _, var _, var _)) {
      return handout;
    }
    throw new AssertionError("refused: " + wrong(tests));
  }

  private static List<String> wrong(String tests) {
    ReadBook read =
        FieldBookReader.read(
            "book", (SITE + tests.indent(4)).getBytes(StandardCharsets.UTF_8), null);
    return read.complaints().stream()
        .map(complaint -> complaint.code().key() + " " + complaint.place().path())
        .filter(said -> said.contains("tests"))
        .toList();
  }

  private static Answer answer(Handout handout, Question question) {
    return handout.answers().lines().getFirst().to(question);
  }

  private static List<String> keys(Answer answer) {
    return answer.reasons().stream().map(reason -> reason.key().key()).toList();
  }

  private static Map<String, Connection.Known> known(Proving proving) {
    return proving.connections().stream()
        .collect(Collectors.toMap(Connection::source, Connection::known));
  }

  /** 10 m of 100 mm may lose 0.47 L in 30 min by EN 1610: 60 mm in a riser of 100 mm. */
  @Test
  void aStretchThatHeldProvesThatStretchAndNoOther() throws IOException {
    Answer sound =
        answer(
            answered(
                "- {label: Q1, kind: hold, at: C1, reaches: [R1], riser: 100, head: 1.2, drop: 5 mm, duration: 60 min}"),
            Question.SOUND);
    assertThat(sound.state()).isEqualTo(State.WITHIN_LIMITS);
    assertThat(keys(sound)).contains("answer.hold_lost", "answer.hold_within");
    assertThat(keys(sound)).contains(AnswerKey.SOUND_NOT_TIGHT.key());
    assertThat(sound.cautions()).contains(Caution.CAMERA_PROVES_NO_TIGHTNESS);
  }

  @Test
  void aStretchThatDidNotHoldLeaks() throws IOException {
    Handout handout =
        answered(
            "- {label: Q1, kind: hold, at: C1, reaches: [R1], riser: 100, head: 1.2, drop: 150 mm, duration: 30 min}");
    Answer sound = answer(handout, Question.SOUND);
    assertThat(sound.state()).isEqualTo(State.NO);
    assertThat(sound.headline().key()).isEqualTo(AnswerKey.SOUND_LEAKS);
    assertThat(sound.cautions()).contains(Caution.SEWAGE);
    assertThat(answer(handout, Question.WHAT_NOW).headline().key()).isEqualTo(AnswerKey.NOW_LEAK);
  }

  @Test
  void whatIsMissingOfAHoldTestIsAskedFor() throws IOException {
    Answer sound =
        answer(answered("- {label: Q1, kind: hold, at: C1, drop: 5 mm}"), Question.SOUND);
    assertThat(sound.missing())
        .extracting(statement -> statement.key())
        .contains(
            AnswerKey.MISSING_HOLD_RISER,
            AnswerKey.MISSING_HOLD_DURATION,
            AnswerKey.MISSING_HOLD_REACHES);
    Answer close =
        answer(
            answered(
                "- {label: Q1, kind: hold, at: C1, reaches: [R1], riser: 100, head: 1.2, drop: 59 mm, duration: 30 min}"),
            Question.SOUND);
    assertThat(keys(close)).contains("answer.hold_close");
    assertThat(close.missing())
        .extracting(statement -> statement.key())
        .containsAnyOf(AnswerKey.MISSING_HOLD_LONGER, AnswerKey.MISSING_HOLD_FINER);
  }

  @Test
  void whereThingsComeInIsSeenTestedOrAssumed() throws IOException {
    Proving bare = answered("[]").answers().proving();
    assertThat(known(bare))
        .containsEntry("FD", Connection.Known.ASSUMED)
        .containsEntry("SK", Connection.Known.OPENING_SEEN)
        .containsEntry("porch", Connection.Known.OPENING_SEEN);
    Proving tested =
        answered(
                """
                - {label: D1, kind: dye, at: porch, seen: [{where: O1, after: 2 min}]}
                - {label: D2, kind: dye, at: FD, seen: [{where: O1, arrived: no}, {where: P2, after: 4 min}]}
                """)
            .answers()
            .proving();
    assertThat(known(tested)).containsEntry("porch", Connection.Known.TESTED);
    assertThat(tested.passages())
        .extracting(Passage::meaning)
        .containsExactly(
            Passage.Meaning.AS_THE_BOOK_SAYS,
            Passage.Meaning.DID_NOT_COME,
            Passage.Meaning.ELSEWHERE);
    Connection drain =
        tested.connections().stream()
            .filter(one -> one.source().equals("FD"))
            .findFirst()
            .orElseThrow();
    assertThat(drain.known()).isEqualTo(Connection.Known.ASSUMED);
    assertThat(drain.against()).containsExactly("D2");
  }

  @Test
  void dyeWhereNobodyExpectedItIsTold() throws IOException {
    Answer drain =
        answer(
            answered("- {label: D2, kind: dye, at: FD, seen: [{where: P2, after: 4 min}]}"),
            Question.DRAIN);
    assertThat(keys(drain)).contains("answer.came_elsewhere");
    assertThat(drain.missing())
        .extracting(statement -> statement.key())
        .contains(AnswerKey.MISSING_TRACE);
  }

  @Test
  void smokeIndoorsIsTheWayOfSewerGasAndSmokeFromTheGroundAnOpening() throws IOException {
    Handout handout = answered("- {label: S1, kind: smoke, at: C1, seen: [{where: SK}]}");
    Answer sound = answer(handout, Question.SOUND);
    assertThat(keys(sound)).contains("answer.smoke_indoors");
    assertThat(sound.cautions()).contains(Caution.GAS);
    assertThat(known(handout.answers().proving())).containsEntry("SK", Connection.Known.TESTED);
    assertThat(answer(handout, Question.WHAT_NOW).headline().key()).isEqualTo(AnswerKey.NOW_TRAP);
    Answer open =
        answer(
            answered("- {label: S1, kind: smoke, at: C1, seen: [{where: oak}]}"), Question.SOUND);
    assertThat(open.state()).isEqualTo(State.NO);
    assertThat(open.headline().key()).isEqualTo(AnswerKey.SOUND_OPEN);
    assertThat(open.cautions()).contains(Caution.GAS, Caution.SEWAGE);
  }

  @Test
  void waterThatCameSaysThatSomethingPasses() throws IOException {
    Handout handout =
        answered(
            "- {label: W1, kind: water-run, at: C1, volume: 100 L, seen: [{where: O1, after: 1 min, volume: 60 L}]}");
    assertThat(keys(answer(handout, Question.CLEAR))).contains("answer.clear_passes");
    assertThat(keys(answer(handout, Question.DRAIN))).contains("answer.water_not_caught");
    Handout caught =
        answered(
            "- {label: W1, kind: water-run, at: C1, volume: 100 L, seen: [{where: O1, after: 1 min, volume: 97 L}]}");
    assertThat(keys(answer(caught, Question.DRAIN))).contains("answer.water_caught");
  }

  @Test
  void everythingThatIsWrongWithTestsIsToldAtOnce() {
    assertThat(
            wrong(
                """
                - {label: Q1, kind: hold, at: C1, reaches: [R1, R9, R1], riser: 0, head: -1, drop: -5 mm, duration: 10 min}
                - {label: Q2, kind: hold, at: C1, drop: 5 mm}
                - {label: Q3, kind: water-run, at: C9, volume: 10 L, drop: 5 mm, seen: [{where: O9, volume: 12 L}]}
                - {label: Q4, kind: dye, at: FD, duration: 0 s, riser: 100, seen: [{where: P2, after: -4 min}]}
                """))
        .containsExactlyInAnyOrder(
            "book.held-twice visit.tests[0].reaches[2]",
            "book.unknown-reach visit.tests[0].reaches[1]",
            "book.not-positive visit.tests[0].riser",
            "book.negative visit.tests[0].head",
            "book.hold-gains visit.tests[0].drop",
            "book.hold-without-duration visit.tests[1].drop",
            "book.unknown-test-place visit.tests[2].at",
            "book.of-other-test visit.tests[2].drop",
            "book.unknown-test-place visit.tests[2].seen[0].where",
            "book.more-out-than-in visit.tests[2].seen[0].volume",
            "book.not-positive visit.tests[3].duration",
            "book.of-other-test visit.tests[3].riser",
            "form.not-a-quantity visit.tests[3].seen[0].after");
  }
}
