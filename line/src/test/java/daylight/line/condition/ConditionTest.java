package daylight.line.condition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import daylight.line.book.Catalogue;
import daylight.line.measure.Dimension;
import daylight.line.measure.Mark;
import daylight.line.measure.Reading;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Grades by a table of its own, so that the rules are seen apart from any published figure. */
class ConditionTest {
  private static final Cited CITED = new Cited("row", "invented", Mark.DERIVED, null);
  private static final Sized WIDTH = new Sized("width", Dimension.LENGTH, null, null);
  private static final Sized FILLED =
      new Sized("share", Dimension.SHARE, ShareOf.SECTION, "height");
  private static final Sized DEEP = new Sized("share", Dimension.SHARE, ShareOf.HEIGHT, "depth");

  private static GradeRow.Limit from(Grade grade, double at) {
    return new GradeRow.Limit(grade, reading(at));
  }

  private static Reading reading(double value) {
    return new Reading(value, null, Double.toString(value));
  }

  private static Applies through(String what) {
    return new Applies("through", List.of(what), null, null);
  }

  private static Applies bores(double from, double to, boolean closed) {
    return new Applies(null, List.of(), null, new Applies.Bores(from, to, closed));
  }

  private static final GradeRow.By CRACKS =
      new GradeRow.By.Limits(
          WIDTH,
          List.of(from(Grade.AT_ONCE, 0.004), from(Grade.SHORT_TERM, 0.002)),
          Grade.LONG_TERM);
  private static final GradeRow.By SHARES =
      new GradeRow.By.Limits(FILLED, List.of(from(Grade.SHORT_TERM, 0.25)), Grade.LONG_TERM);

  private static GradeRow row(String kind, Aspect aspect, Applies applies, GradeRow.By by) {
    return new GradeRow(kind, aspect, applies, by, CITED);
  }

  private static GradeScheme scheme(GradeScheme.OnLimit onLimit) {
    return new GradeScheme(
        "ours",
        "Invented",
        null,
        onLimit,
        List.of(
            row("crack", Aspect.STRUCTURE, Applies.ALWAYS, CRACKS),
            row("roots", Aspect.OPERATION, through("joint"), CRACKS),
            row("roots", Aspect.OPERATION, through("crack"), new GradeRow.By.Always(Grade.AT_ONCE)),
            row("roots", Aspect.STRUCTURE, Applies.ALWAYS, new GradeRow.By.Always(Grade.LONG_TERM)),
            row("dirt", Aspect.OPERATION, Applies.ALWAYS, SHARES),
            row(
                "water",
                Aspect.OPERATION,
                new Applies(null, List.of(), "held-by", null),
                new GradeRow.By.Limits(
                    DEEP, List.of(from(Grade.MEDIUM_TERM, 0.25)), Grade.LONG_TERM)),
            row("joint", Aspect.STRUCTURE, bores(0, 0.3, false), CRACKS),
            row(
                "joint",
                Aspect.STRUCTURE,
                bores(0.3, 0.6, true),
                new GradeRow.By.Always(Grade.LONG_TERM)),
            row(
                "joint",
                Aspect.STRUCTURE,
                bores(0.6, 1, true),
                new GradeRow.By.Always(Grade.WITH_OTHER_WORKS))),
        List.of(
            new ImmediateRow(
                "crack", Applies.ALWAYS, new ImmediateRow.Over(WIDTH, reading(0.01)), CITED),
            new ImmediateRow(
                "roots", Applies.ALWAYS, new ImmediateRow.Over(FILLED, reading(0.3)), CITED),
            new ImmediateRow("soil", Applies.ALWAYS, null, CITED)),
        null);
  }

  private static Catalogue.Kind kind(String id, Catalogue.Bears bears, Catalogue.Hazard hazard) {
    return new Catalogue.Kind(id, bears, hazard, false, Map.of(), List.of(), id, null);
  }

  private static final Catalogue CATALOGUE =
      new Catalogue(
          List.of(
              kind("crack", Catalogue.Bears.STRUCTURE, Catalogue.Hazard.NONE),
              kind("roots", Catalogue.Bears.OPERATION, Catalogue.Hazard.NONE),
              kind("dirt", Catalogue.Bears.OPERATION, Catalogue.Hazard.NONE),
              kind("water", Catalogue.Bears.OPERATION, Catalogue.Hazard.NONE),
              kind("joint", Catalogue.Bears.STRUCTURE, Catalogue.Hazard.NONE),
              kind("soil", Catalogue.Bears.STRUCTURE, Catalogue.Hazard.CARE),
              kind("bend", Catalogue.Bears.FEATURE, Catalogue.Hazard.NONE),
              kind("wire", Catalogue.Bears.OPERATION, Catalogue.Hazard.STOP)));
  private static final Condition WORSE =
      new Condition(scheme(GradeScheme.OnLimit.WORSE), CATALOGUE);
  private static final Condition BETTER =
      new Condition(scheme(GradeScheme.OnLimit.BETTER), CATALOGUE);

  private static FindingGrade grade(String kind, Map<String, Reading> sizes) {
    return WORSE.grade(Seen.of(kind, sizes, Map.of(), null));
  }

  private static FindingGrade crack(double width) {
    return grade("crack", Map.of("width", reading(width)));
  }

  private static Verdict.Graded graded(FindingGrade grade, Aspect aspect) {
    if (grade.verdicts().get(aspect) instanceof Verdict.Graded graded) {
      return graded;
    }
    throw new AssertionError("not graded: " + grade);
  }

  private static Verdict.Measure measure(FindingGrade grade, Aspect aspect) {
    Verdict.Measure measure = graded(grade, aspect).measure();
    if (measure == null) {
      throw new AssertionError("no size: " + grade);
    }
    return measure;
  }

  private static @Nullable Verdict joint(@Nullable Double bore) {
    Seen seen = Seen.of("joint", Map.of("width", reading(0.003)), Map.of(), bore);
    return WORSE.grade(seen).verdicts().get(Aspect.STRUCTURE);
  }

  @Test
  void theLimitThatDecidedAndTheNextAreTold() {
    Verdict.Measure measure = measure(crack(0.003), Aspect.STRUCTURE);
    assertThat(graded(crack(0.003), Aspect.STRUCTURE).grade()).isEqualTo(Grade.SHORT_TERM);
    assertThat(measure.reached()).isEqualTo(from(Grade.SHORT_TERM, 0.002));
    assertThat(measure.next()).isEqualTo(from(Grade.AT_ONCE, 0.004));
    assertThat(measure.onLimit()).isFalse();
    assertThat(measure.chances()).isEmpty();
    assertThat(measure(crack(0.001), Aspect.STRUCTURE).reached()).isNull();
    assertThat(measure(crack(0.005), Aspect.STRUCTURE).next()).isNull();
  }

  /** Also where changing units left a last digit over. */
  @Test
  void aValueOnALimitGoesWhereTheTableSays() {
    for (double width : new double[] {0.002, 0.2 * 0.01, 0.0020000000000000005}) {
      Seen seen = Seen.of("crack", Map.of("width", reading(width)), Map.of(), null);
      assertThat(graded(WORSE.grade(seen), Aspect.STRUCTURE).grade()).isEqualTo(Grade.SHORT_TERM);
      assertThat(graded(BETTER.grade(seen), Aspect.STRUCTURE).grade()).isEqualTo(Grade.LONG_TERM);
      assertThat(measure(WORSE.grade(seen), Aspect.STRUCTURE).onLimit()).isTrue();
      assertThat(measure(BETTER.grade(seen), Aspect.STRUCTURE).onLimit()).isTrue();
    }
  }

  /** Standard normal table: Φ(1) = 0.8413, Φ(2) = 0.9772 (from memory). */
  @Test
  void nearALimitEveryClassHasItsChance() {
    Reading width = new Reading(0.0018, 0.0002, "1.8 mm");
    Verdict.Measure measure = measure(grade("crack", Map.of("width", width)), Aspect.STRUCTURE);
    assertThat(measure.chances())
        .extracting(Verdict.Chance::grade)
        .containsExactly(Grade.AT_ONCE, Grade.SHORT_TERM, Grade.LONG_TERM);
    assertThat(measure.chances().get(1).chance()).isCloseTo(1 - 0.8413, within(5e-5));
    assertThat(measure.chances().get(2).chance()).isCloseTo(0.8413, within(5e-5));
    assertThat(measure.between()).containsExactly(Grade.SHORT_TERM, Grade.LONG_TERM);
  }

  @Test
  void theChancesOfAllClassesAreOne() {
    for (double value = 0.0005; value < 0.006; value += 0.0007) {
      Reading width = new Reading(value, 0.001, "?");
      Verdict.Measure measure = measure(grade("crack", Map.of("width", width)), Aspect.STRUCTURE);
      double sum = measure.chances().stream().mapToDouble(Verdict.Chance::chance).sum();
      assertThat(sum).isCloseTo(1, within(1e-12));
      assertThat(measure.between()).isNotEmpty();
    }
  }

  @Test
  void farFromAnyLimitTheClassStands() {
    Reading width = new Reading(0.003, 0.0001, "3 mm");
    Verdict.Measure measure = measure(grade("crack", Map.of("width", width)), Aspect.STRUCTURE);
    assertThat(measure.between()).containsExactly(Grade.SHORT_TERM);
  }

  @Test
  void whatIsMissingIsNamed() {
    assertThat(grade("crack", Map.of()).verdicts().get(Aspect.STRUCTURE))
        .isEqualTo(new Verdict.CannotSay(List.of(new Lack(Lack.Why.SIZE, "width", List.of()))));
    assertThat(grade("roots", Map.of()).verdicts().get(Aspect.OPERATION))
        .isEqualTo(
            new Verdict.CannotSay(
                List.of(
                    new Lack(Lack.Why.WORD, "through", List.of("joint", "crack")),
                    new Lack(Lack.Why.SIZE, "width", List.of()))));
    assertThat(joint(null)).isEqualTo(new Verdict.CannotSay(List.of(Lack.BORE)));
    assertThat(grade("dirt", Map.of()).verdicts().get(Aspect.OPERATION))
        .isEqualTo(
            new Verdict.CannotSay(List.of(new Lack(Lack.Why.SIZE, "share", List.of("height")))));
  }

  @Test
  void aParticularChoosesTheRow() {
    Seen crack = Seen.of("roots", Map.of(), Map.of("through", " Crack "), null);
    assertThat(graded(WORSE.grade(crack), Aspect.OPERATION).grade()).isEqualTo(Grade.AT_ONCE);
    assertThat(graded(WORSE.grade(crack), Aspect.STRUCTURE).grade()).isEqualTo(Grade.LONG_TERM);
    Seen other = Seen.of("roots", Map.of(), Map.of("through", "lid"), null);
    assertThat(WORSE.grade(other).verdicts().get(Aspect.OPERATION))
        .isEqualTo(new Verdict.NoRow("through", List.of("crack", "joint")));
  }

  @Test
  void aParticularMayBarARow() {
    Seen held = Seen.of("water", Map.of("share", reading(0.3)), Map.of("held-by", "roots"), null);
    assertThat(WORSE.grade(held).verdicts().get(Aspect.OPERATION))
        .isEqualTo(new Verdict.NoRow("held-by", List.of()));
  }

  /** A bore that two rows share belongs to the earlier one, which here is the stricter. */
  @ParameterizedTest
  @CsvSource({
    "0.1, SHORT_TERM",
    "0.2999, SHORT_TERM",
    "0.3, LONG_TERM",
    "0.6, LONG_TERM",
    "0.6001, WITH_OTHER_WORKS"
  })
  void theBoreChoosesTheRow(double bore, Grade grade) {
    assertThat(joint(bore))
        .isInstanceOfSatisfying(
            Verdict.Graded.class, graded -> assertThat(graded.grade()).isEqualTo(grade));
  }

  @Test
  void noRowForSuchABore() {
    assertThat(joint(1.2)).isEqualTo(new Verdict.NoRow("bore", List.of()));
  }

  /**
   * Chow, Open-Channel Hydraulics, appendix A, area over the square of the diameter of a part-full
   * circle (from memory): 0.0409 at a tenth, 0.1535 at a quarter, 0.3927 at a half, 0.7445 at nine
   * tenths; the whole is 0.7854.
   */
  @ParameterizedTest
  @CsvSource({"0.1, 0.0409", "0.25, 0.1535", "0.5, 0.3927", "0.9, 0.7445", "1, 0.7854", "0, 0"})
  void aHeightFillsAShareOfTheSection(double full, double area) {
    assertThat(Sizes.segment(full) * Math.PI / 4).isCloseTo(area, within(6e-5));
  }

  @Test
  void aShareFollowsFromAHeightAndTheBore() {
    Reading height = new Reading(0.025, 0.001, "25 mm");
    Seen dirt = Seen.of("dirt", Map.of("height", height), Map.of(), 0.1);
    Size size = measure(WORSE.grade(dirt), Aspect.OPERATION).size();
    assertThat(size.workedOut()).isTrue();
    assertThat(size.value()).isCloseTo(0.1955, within(1e-4));
    // The derivative by differences: the law of propagation has no other part.
    double slope = (Sizes.segment(0.2501) - Sizes.segment(0.2499)) / 0.0002;
    assertThat(Objects.requireNonNull(size.doubt()).sd()).isCloseTo(0.01 * slope, within(1e-7));

    Seen water = Seen.of("water", Map.of("depth", reading(0.03)), Map.of(), 0.1);
    Verdict.Graded graded = graded(WORSE.grade(water), Aspect.OPERATION);
    assertThat(graded.grade()).isEqualTo(Grade.MEDIUM_TERM);
    assertThat(measure(WORSE.grade(water), Aspect.OPERATION).size().value())
        .isCloseTo(0.3, within(1e-12));
  }

  @Test
  void aHeightAboveTheBoreOrWithoutItGivesNoShare() {
    Seen without = Seen.of("water", Map.of("depth", reading(0.03)), Map.of(), null);
    assertThat(WORSE.grade(without).verdicts().get(Aspect.OPERATION))
        .isEqualTo(new Verdict.CannotSay(List.of(Lack.BORE)));
    Seen above = Seen.of("water", Map.of("depth", reading(0.2)), Map.of(), 0.1);
    assertThat(WORSE.grade(above).verdicts().get(Aspect.OPERATION))
        .isEqualTo(
            new Verdict.CannotSay(
                List.of(new Lack(Lack.Why.HIGHER_THAN_BORE, "depth", List.of()))));
  }

  @Test
  void actionAtOnceIsApartFromTheGrade() {
    assertThat(crack(0.01).immediate()).isInstanceOf(Immediate.Yes.class);
    assertThat(crack(0.009).immediate()).isInstanceOf(Immediate.No.class);
    assertThat(grade("crack", Map.of()).immediate()).isInstanceOf(Immediate.Open.class);
    assertThat(grade("dirt", Map.of()).immediate()).isEqualTo(new Immediate.NotListed());
    FindingGrade roots = grade("roots", Map.of("share", reading(0.35)));
    assertThat(roots.immediate()).isInstanceOf(Immediate.Yes.class);
    assertThat(roots.verdicts().get(Aspect.OPERATION)).isInstanceOf(Verdict.CannotSay.class);
    FindingGrade soil = grade("soil", Map.of());
    assertThat(soil.immediate()).isInstanceOf(Immediate.Yes.class);
    assertThat(soil.ungraded()).isEqualTo(FindingGrade.Ungraded.NO_ROW);
  }

  @Test
  void theChanceOfBeingPastTheLimitOfActionIsTold() {
    Reading width = new Reading(0.01, 0.001, "10 mm");
    Immediate immediate = grade("crack", Map.of("width", width)).immediate();
    assertThat(immediate)
        .isInstanceOfSatisfying(
            Immediate.Yes.class,
            yes ->
                assertThat(yes.past())
                    .isNotNull()
                    .satisfies(past -> assertThat(past.chance()).isCloseTo(0.5, within(1e-9))));
  }

  @Test
  void whatHasNoGradeSaysWhy() {
    assertThat(grade("wire", Map.of()).ungraded()).isEqualTo(FindingGrade.Ungraded.OUTRANKS);
    assertThat(grade("bend", Map.of()).ungraded()).isEqualTo(FindingGrade.Ungraded.FEATURE);
    assertThat(grade("toy", Map.of()).ungraded()).isEqualTo(FindingGrade.Ungraded.KIND_UNKNOWN);
  }

  @Test
  void aLineIsAsBadAsItsWorstFindingInEachAspect() {
    FindingGrade mild = crack(0.001);
    FindingGrade bad = crack(0.003);
    FindingGrade alsoBad = crack(0.0035);
    FindingGrade wire = grade("wire", Map.of());
    FindingGrade roots = grade("roots", Map.of());
    FindingGrade soil = grade("soil", Map.of());
    FindingGrade dirt = grade("dirt", Map.of("share", reading(0.1)));
    LineGrade line = Condition.together(List.of(mild, dirt, bad, alsoBad, wire, roots, soil));
    assertThat(line.worst())
        .containsOnly(
            Map.entry(Aspect.STRUCTURE, new LineGrade.Worst(Grade.SHORT_TERM, bad, 2)),
            Map.entry(Aspect.OPERATION, new LineGrade.Worst(Grade.LONG_TERM, dirt, 1)));
    assertThat(line.outranking()).containsExactly(wire);
    assertThat(line.immediate()).containsExactly(soil);
    assertThat(line.open()).containsExactly(roots);
    assertThat(Condition.together(List.of()).worst()).isEmpty();
  }

  @Test
  void aTableThatDoesNotFallIsRefusedAtBirth() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                new GradeRow.By.Limits(
                    WIDTH,
                    List.of(from(Grade.AT_ONCE, 0.002), from(Grade.SHORT_TERM, 0.004)),
                    Grade.LONG_TERM));
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                new GradeRow.By.Limits(
                    WIDTH, List.of(from(Grade.SHORT_TERM, 0.002)), Grade.SHORT_TERM));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Sized("share", Dimension.SHARE, null, null));
  }
}
