package daylight.app;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.archive.Bundled;
import daylight.archive.FieldBookReader;
import daylight.line.answer.AnswerKey;
import daylight.line.answer.Answers;
import daylight.line.answer.Judge;
import daylight.line.answer.Opening;
import daylight.line.answer.OpeningKey;
import daylight.line.answer.Question;
import daylight.line.answer.Rules;
import daylight.line.answer.SoonKey;
import daylight.line.book.FieldBook;
import daylight.line.cause.Strength;
import daylight.line.counter.Tracks;
import daylight.line.course.Estimator;
import daylight.line.course.Line;
import daylight.line.measure.Key;
import daylight.line.measure.Statement;
import daylight.line.urgency.Consequence;
import daylight.line.urgency.HowSoon;
import daylight.line.urgency.Urgency;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/**
 * What may be behind a complaint and how soon, on an invented house: two branches, from the kitchen
 * and from the laundry, meet and go on to the road.
 */
class ComplaintTest {
  private static final Rules RULES =
      new Rules(
          Bundled.catalogue(),
          Bundled.fallRules("ipc-704.1"),
          Bundled.limits(),
          Bundled.priors(),
          Bundled.grades(),
          Bundled.urgency(),
          Bundled.causes(),
          Bundled.holdLimits(),
          Bundled.flow(),
          Bundled.frost());

  /** A kind that blocks, with the cause it stands for. */
  private record Blocks(String finding, String cause) {}

  private static final List<Blocks> BLOCKS =
      List.of(
          new Blocks("roots", "roots"),
          new Blocks("grease", "grease"),
          new Blocks("deposit-loose", "deposits"),
          new Blocks("obstruction", "obstruction"));

  private static String seen(String kind, double cable, int share) {
    return "{kind: %s, cable: %s, share: %d %%}".formatted(kind, cable, share);
  }

  private static Judged judged(
      String complaint, List<String> kitchen, List<String> laundry, String more) {
    String text =
        """
        daylight-book: 1
        units: {distance: m, depth: m, bore: mm, level: m}
        site:
          invented: yes
          nodes:
            - {label: C1, kind: access, what: kitchen}
            - {label: C2, kind: access, what: laundry}
            - {label: J1, kind: junction}
            - {label: O1, kind: outlet}
          reaches:
            - {label: R1, from: C1, to: J1, water: forward, use: sanitary, bore: 100, length: 8}
            - {label: R2, from: J1, to: O1, water: forward, use: sanitary, bore: 100, length: 8}
            - {label: R3, from: C2, to: J1, water: forward, use: sanitary, bore: 100, length: 8}
          surroundings: {fixtures: [{label: sink, node: C1, kind: kitchen sink}]}
        visit:
          complaint: %s
          passes:
            - label: P1
              entry: C1
              walk: [R1, R2]
              zero: {reads: 0}
              end: {cable: 16, why: outlet-reached, node: O1}
              sight: [{from: 0, to: 16, clarity: clear}]
              findings: [%s]
            - label: P2
              entry: C2
              walk: [R3]
              zero: {reads: 0}
              end: {cable: 8, why: main-reached, node: J1}
              sight: [{from: 0, to: 8, clarity: clear}]
              findings: [%s]
        %s
        """
            .formatted(complaint, String.join(", ", kitchen), String.join(", ", laundry), more);
    var read = FieldBookReader.read("typed.yaml", text.getBytes(StandardCharsets.UTF_8), null);
    assertThat(read.sound()).as("%s", read.complaints()).isTrue();
    FieldBook book = Objects.requireNonNull(read.book());
    Line line = Estimator.estimate(book, Tracks.NONE, Bundled.priors());
    return new Judged(book, line, Judge.judge(book, line, RULES));
  }

  private record Judged(FieldBook book, Line line, Answers answers) {
    Opening opening() {
      return answers.opening();
    }

    List<String> order() {
      return opening().ranked().stream().map(Opening.Ranked::cause).toList();
    }

    Opening.Ranked cause(String id) {
      return opening().ranked().stream()
          .filter(c -> c.cause().equals(id))
          .findFirst()
          .orElseThrow();
    }

    List<Key> told() {
      return opening().told().stream().map(Statement::key).toList();
    }

    HowSoon howSoon(String kind) {
      return line.findings().stream()
          .filter(placed -> placed.finding().kind().equals(kind))
          .map(placed -> RULES.howSoon(placed, book, line))
          .findFirst()
          .orElseThrow();
    }
  }

  private static final String SLOW = "{kinds: [slow-drain], at: sink}";

  private static Judged slow(List<String> kitchen, List<String> laundry) {
    return judged(SLOW, kitchen, laundry, "");
  }

  @Test
  void whatLiesBetweenOutranksWhatLiesOnAnotherBranchWhateverTheyAre() {
    for (Blocks between : BLOCKS) {
      for (Blocks elsewhere : BLOCKS) {
        if (!between.equals(elsewhere)) {
          Judged judged =
              slow(
                  List.of(seen(between.finding(), 5, 8)),
                  List.of(seen(elsewhere.finding(), 4, 90)));
          List<String> order = judged.order();
          assertThat(order.indexOf(between.cause()))
              .as("%s before %s", between, elsewhere)
              .isLessThan(order.indexOf(elsewhere.cause()));
          assertThat(judged.cause(elsewhere.cause()).speaksFor()).isEmpty();
          assertThat(judged.cause(elsewhere.cause()).speaksAgainst())
              .extracting(Statement::key)
              .contains(OpeningKey.ELSEWHERE_WAY);
        }
      }
    }
  }

  @Test
  void whatLiesOnAnotherBranchChangesNoOrder() {
    List<String> kitchen = List.of(seen("roots", 5, 12), seen("grease", 6, 20));
    List<String> before = slow(kitchen, List.of()).order();
    for (Blocks elsewhere : BLOCKS) {
      assertThat(slow(kitchen, List.of(seen(elsewhere.finding(), 4, 90))).order())
          .isEqualTo(before);
    }
  }

  @Test
  void moreEvidenceForACauseNeverLowersIt() {
    for (Blocks one : BLOCKS) {
      List<String> findings = new ArrayList<>(List.of(seen("roots", 2, 15), seen("grease", 3, 15)));
      int place = Integer.MAX_VALUE;
      Strength strength = Strength.UNLIKELY;
      for (int share : List.of(0, 5, 12, 20, 35, 60)) {
        if (share > 0) {
          findings.add(seen(one.finding(), 4 + share / 20.0, share));
        }
        Judged judged = slow(findings, List.of());
        int now = judged.order().indexOf(one.cause());
        Strength said = judged.cause(one.cause()).strength();
        assertThat(now).as("%s at %s %%", one, share).isLessThanOrEqualTo(place);
        assertThat(said).as("%s at %s %%", one, share).isLessThanOrEqualTo(strength);
        place = now;
        strength = said;
      }
    }
  }

  @Test
  void theOrderOfTheFindingsDoesNotMatter() {
    List<String> findings =
        new ArrayList<>(
            List.of(
                seen("roots", 2, 15),
                seen("grease", 3, 30),
                seen("roots", 6, 40),
                seen("deposit-loose", 7, 12)));
    List<Opening.Ranked> one = slow(findings, List.of()).opening().ranked();
    Collections.reverse(findings);
    List<Opening.Ranked> other = slow(findings, List.of()).opening().ranked();

    assertThat(other).isEqualTo(one);
  }

  /** Bayes' rule in the form of odds: 4 for roots of any size, 0.7 for water that came: 2.8. */
  @Test
  void waterThatCameOutSpeaksAgainstButDoesNotSettleIt() {
    String water = "  tests: [{kind: water-run, at: C1, seen: [{where: O1, after: 3 min}]}]";
    Judged dry = judged(SLOW, List.of(seen("roots", 5, 5)), List.of(), "");
    Judged wet = judged(SLOW, List.of(seen("roots", 5, 5)), List.of(), water);
    Judged large = judged(SLOW, List.of(seen("roots", 5, 12)), List.of(), water);

    assertThat(dry.cause("roots").strength()).isEqualTo(Strength.POSSIBLE);
    assertThat(wet.cause("roots").strength()).isEqualTo(Strength.POSSIBLE);
    assertThat(wet.cause("roots").speaksAgainst()).hasSize(1);
    assertThat(large.cause("roots").strength()).isEqualTo(Strength.PROBABLE);
  }

  @Test
  void whatNobodyLookedAtNamesWhatWouldTell() {
    Judged judged = slow(List.of(seen("roots", 5, 40)), List.of());

    assertThat(judged.cause("vent").strength()).isEqualTo(Strength.NOT_LOOKED_AT);
    assertThat(judged.cause("vent").missing()).isNotEmpty();
    assertThat(judged.cause("grease").strength()).isEqualTo(Strength.UNLIKELY);
  }

  @Test
  void kindsThatTheBookDoesNotSayAreTakenFromTheWordsAndThatIsTold() {
    Judged words = judged("It backs up and stinks.", List.of(), List.of(), "");
    Judged none = judged("Where does it run?", List.of(seen("roots", 5, 40)), List.of(), "");

    assertThat(words.told()).contains(OpeningKey.TAKEN_FROM_WORDS, OpeningKey.AT_NOT_KNOWN);
    assertThat(words.order()).contains("roots", "dry-trap");
    assertThat(none.told()).containsExactly(OpeningKey.KIND_NOT_KNOWN);
    assertThat(none.opening().ranked()).isEmpty();
    assertThat(none.opening().causes()).isNotEmpty();
  }

  private static String held(String drop) {
    return "  tests: [{kind: hold, at: C1, reaches: [R1], riser: 100, head: 1.5, drop: %s, duration: 30 min}]"
        .formatted(drop);
  }

  /** A line that is filled and loses water leaks; one that holds does not, whatever was seen. */
  @Test
  void aHoldTestSettlesAWetSpot() {
    String complaint = "{kinds: [wet-spot], at: C1}";
    List<String> joint = List.of("{kind: open-joint, cable: 1}");
    Judged fell = judged(complaint, joint, List.of(), held("300 mm"));
    Judged held = judged(complaint, joint, List.of(), held("0 mm"));

    assertThat(fell.cause("leak").strength()).isEqualTo(Strength.PROBABLE);
    assertThat(held.cause("leak").strength()).isNotEqualTo(Strength.PROBABLE);
    assertThat(held.cause("leak").speaksAgainst())
        .extracting(Statement::key)
        .contains(OpeningKey.HELD);
  }

  /** Smoke at a sink by its own label is at the sink, and not at some end of a pipe. */
  @Test
  void smokeOutOfAFixtureIsItsTrapAndNotThePipe() {
    Judged smoked =
        judged(
            "{kinds: [smell], at: sink}",
            List.of(),
            List.of(),
            "  tests: [{kind: smoke, at: O1, seen: [{where: sink}]}]");

    assertThat(smoked.cause("dry-trap").strength()).isEqualTo(Strength.PROBABLE);
    assertThat(smoked.cause("open-pipe").speaksFor()).isEmpty();
  }

  /** Dye let in at a fixture comes by its node; dye that came elsewhere clears nothing. */
  @Test
  void dyeThatCameElsewhereDoesNotSpeakAgainstABlockage() {
    List<String> roots = List.of(seen("roots", 5, 10));
    Judged out =
        judged(SLOW, roots, List.of(), "  tests: [{kind: dye, at: sink, seen: [{where: O1}]}]");
    Judged elsewhere =
        judged(SLOW, roots, List.of(), "  tests: [{kind: dye, at: sink, seen: [{where: C2}]}]");

    assertThat(out.cause("roots").speaksAgainst())
        .extracting(Statement::key)
        .contains(AnswerKey.TEST_ARRIVED);
    assertThat(elsewhere.cause("roots").speaksAgainst())
        .extracting(Statement::key)
        .doesNotContain(AnswerKey.TEST_ARRIVED);
  }

  /** Water that stands because of what lies in the pipe is no belly, nor does it deny one. */
  @Test
  void waterBehindADamIsNoBelly() {
    String water = "{kind: standing-water, from: 3, to: 5, depth: 30 mm, still: \"yes\", %s}";
    Judged open = slow(List.of(water.formatted("after-waiting: stays")), List.of());
    Judged dammed =
        slow(
            List.of(
                water.formatted("after-waiting: stays, held-by: roots, after-cleaning: gone"),
                seen("roots", 5, 20)),
            List.of());

    assertThat(open.cause("belly").speaksFor()).isNotEmpty();
    assertThat(dammed.cause("belly").speaksFor()).isEmpty();
    assertThat(dammed.cause("belly").speaksAgainst())
        .extracting(Statement::key)
        .doesNotContain(OpeningKey.NOT_FOUND);
  }

  @Test
  void sewageThatCanComeUpInTheKitchenIsMoreUrgentThanInABranchWithoutFixture() {
    Judged judged =
        slow(
            List.of("{kind: crack, cable: 3, width: 3 mm}"),
            List.of("{kind: surface-wear, cable: 3, depth-of-wear: 12 mm}"));

    assertThat(judged.howSoon("crack"))
        .isInstanceOfSatisfying(
            HowSoon.Ruled.class,
            ruled -> {
              assertThat(ruled.urgency()).isEqualTo(Urgency.AT_ONCE);
              assertThat(ruled.consequence()).isEqualTo(Consequence.SEWAGE_INSIDE);
            });
    assertThat(judged.howSoon("surface-wear"))
        .isInstanceOfSatisfying(
            HowSoon.Ruled.class,
            ruled -> {
              assertThat(ruled.urgency()).isEqualTo(Urgency.WITHIN_A_YEAR);
              assertThat(ruled.consequence()).isEqualTo(Consequence.GROUND);
              assertThat(ruled.unknown()).containsExactly(Consequence.BUILDING_OR_ROAD);
              assertThat(ruled.atWorst()).isEqualTo(Urgency.WITHIN_WEEKS);
            });
  }

  @Test
  void theListOfActionAtOnceOutranksTheTableAndTheStopOrderBoth() {
    Judged judged =
        slow(
            List.of("{kind: soil-entering, cable: 3}", "{kind: open-joint, cable: 4}"),
            List.of("{kind: foreign-pipe, cable: 3}"));

    assertThat(judged.howSoon("soil-entering")).isEqualTo(new HowSoon.Listed());
    assertThat(judged.howSoon("open-joint")).isEqualTo(new HowSoon.CannotSay());
    assertThat(judged.howSoon("foreign-pipe")).isEqualTo(new HowSoon.Stop());
    assertThat(judged.howSoon("soil-entering").rank())
        .isGreaterThan(judged.howSoon("foreign-pipe").rank());
  }

  @Test
  void whatNowDoesTheMostUrgentFirstAndSaysHowSoon() {
    Judged judged =
        slow(
            List.of("{kind: crack, cable: 3, width: 0.1 mm}", "{kind: collapse, cable: 6}"),
            List.of());
    var now = judged.answers().lines().getFirst().to(Question.WHAT_NOW);

    assertThat(now.headline().arguments().toString()).contains("kind.collapse");
    assertThat(now.reasons()).extracting(Statement::key).contains(SoonKey.SOON);
  }
}
