package daylight.archive;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.book.Catalogue;
import daylight.line.condition.Aspect;
import daylight.line.condition.Cited;
import daylight.line.condition.Condition;
import daylight.line.condition.FindingGrade;
import daylight.line.condition.GradeRow;
import daylight.line.condition.GradeScheme;
import daylight.line.condition.Immediate;
import daylight.line.condition.ImmediateRow;
import daylight.line.condition.Seen;
import daylight.line.condition.Verdict;
import daylight.line.measure.Dimension;
import daylight.line.measure.Mark;
import daylight.line.measure.Parsed;
import daylight.line.measure.Quantities;
import daylight.line.measure.Reading;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The grades that come with Daylight against their source: Stein & Stein (eds.), Instandhaltung von
 * Kanalisationen, 2001, Table 4.7.4.3.1-1, and ATV-M 149:1999, class 0, after Table 4.7.4.1.1-1 of
 * the same handbook; both looked up at unitracc.de. Which kind of the catalogue a row is for is our
 * own mapping; that a value on a limit takes the worse class is our own rule, the tables do not
 * say.
 */
class GradesReferenceTest {
  private static final Condition CONDITION = new Condition(Bundled.grades(), Bundled.catalogue());

  private static Reading read(Dimension dimension, String text) {
    if (Quantities.parse(dimension, text, null) instanceof Parsed.Value<Reading>(Reading reading)) {
      return reading;
    }
    throw new AssertionError(text);
  }

  private static FindingGrade grade(String kind, String size, String value, @Nullable String bore) {
    Dimension dimension =
        Bundled.catalogue()
            .find(kind)
            .orElseThrow()
            .quantities()
            .getOrDefault(size, Dimension.AREA);
    Double inside = bore == null ? null : read(Dimension.LENGTH, bore).value();
    return CONDITION.grade(Seen.of(kind, Map.of(size, read(dimension, value)), Map.of(), inside));
  }

  private static FindingGrade said(String kind, String word, String text) {
    return CONDITION.grade(Seen.of(kind, Map.of(), Map.of(word, text), null));
  }

  /** The class in the only aspect in which the kind has rows; 0 where none can be given. */
  private static int number(FindingGrade grade) {
    assertThat(grade.verdicts()).hasSize(1);
    return grade.verdicts().values().iterator().next() instanceof Verdict.Graded graded
        ? graded.grade().number()
        : 0;
  }

  @ParameterizedTest
  @CsvSource({
    "crack, width, 0.3 mm, , 4, no",
    "crack, width, 3 mm, , 2, no",
    "crack, width, 6 mm, , 1, no",
    "crack, width, 12 mm, , 1, yes",
    "displaced-joint, offset, 12 mm, 100 mm, 3, not listed",
    "displaced-joint, offset, 25 mm, 100 mm, 2, not listed",
    "standing-water, share, 30 %, , 3, not listed",
    "deposit-loose, share, 60 %, , 1, yes",
    "deformation, share, 7 %, , 3, no",
    "deformation, share, 12 %, , 2, no"
  })
  void theCheckRows(
      String kind, String size, String value, @Nullable String bore, int number, String immediate) {
    FindingGrade grade = grade(kind, size, value, bore);
    assertThat(number(grade)).isEqualTo(number);
    Class<?> expected =
        switch (immediate) {
          case "yes" -> Immediate.Yes.class;
          case "no" -> Immediate.No.class;
          default -> Immediate.NotListed.class;
        };
    assertThat(grade.immediate()).isInstanceOf(expected);
  }

  @Test
  void rootsInAThirdOfTheSectionCallForActionWhateverTheirThickness() {
    FindingGrade roots = grade("roots", "share", "35 %", null);
    assertThat(roots.immediate()).isInstanceOf(Immediate.Yes.class);
    assertThat(number(roots)).isZero();
    assertThat(grade("roots", "share", "25 %", null).immediate()).isInstanceOf(Immediate.No.class);
  }

  /** Between any two classes of the table, a little less, the limit itself, and a little more. */
  @ParameterizedTest
  @CsvSource({
    "crack, width, 4.9 mm, , 2",
    "crack, width, 5 mm, , 1",
    "crack, width, 1.9 mm, , 3",
    "crack, width, 2 mm, , 2",
    "crack, width, 0.2 cm, , 2",
    "crack, width, 0.49 mm, , 4",
    "crack, width, 0.5 mm, , 3",
    "crack, width, 0.19 mm, , 5",
    "crack, width, 0.2 mm, , 4",
    "displaced-joint, offset, 9 mm, 4 in, 4",
    "displaced-joint, offset, 10 mm, 4 in, 3",
    "displaced-joint, offset, 20 mm, 299 mm, 2",
    "displaced-joint, offset, 20 mm, 300 mm, 3",
    "displaced-joint, offset, 9 mm, 300 mm, 5",
    "displaced-joint, offset, 30 mm, 600 mm, 2",
    "displaced-joint, offset, 30 mm, 601 mm, 3",
    "displaced-joint, offset, 19 mm, 800 mm, 5",
    "displaced-joint, offset, 20 mm, 800 mm, 4",
    "displaced-joint, offset, 40 mm, 1000 mm, 2",
    "displaced-joint, offset, 40 mm, 1200 mm, 3",
    "displaced-joint, offset, 29 mm, 1200 mm, 5",
    "displaced-joint, offset, 51 mm, 1200 mm, 2",
    "standing-water, share, 9 %, , 5",
    "standing-water, share, 10 %, , 4",
    "standing-water, share, 25 %, , 3",
    "standing-water, share, 50 %, , 2",
    "standing-water, depth, 30 mm, 100 mm, 3",
    "standing-water, depth, 25 mm, 100 mm, 3",
    "standing-water, depth, 24 mm, 100 mm, 4",
    "deposit-loose, share, 9 %, , 4",
    "deposit-loose, share, 10 %, , 3",
    "deposit-loose, share, 25 %, , 2",
    "deposit-loose, share, 50 %, , 1",
    "deposit-loose, height, 50 mm, 100 mm, 1",
    "deposit-loose, height, 25 mm, 100 mm, 3",
    "obstruction, share, 4 %, , 4",
    "obstruction, share, 5 %, , 3",
    "deposit-hard, share, 15 %, , 2",
    "grease, share, 30 %, , 1",
    "intruding-connection, share, 29 %, , 2",
    "surface-wear, depth-of-wear, 9 mm, , 3",
    "surface-wear, depth-of-wear, 10 mm, , 2",
    "surface-wear, depth-of-wear, 30 mm, , 1",
    "deformation, share, 4 %, , 4",
    "deformation, share, 5 %, , 3",
    "deformation, share, 10 %, , 2"
  })
  void everyLimitAndItsNeighbours(
      String kind, String size, String value, @Nullable String bore, int number) {
    assertThat(number(grade(kind, size, value, bore))).isEqualTo(number);
  }

  @ParameterizedTest
  @CsvSource({
    "joint, 0.9 mm, 5",
    "joint, 1 mm, 4",
    "joint, 5 mm, 3",
    "joint, 10 mm, 2",
    "joint, 20 mm, 1",
    "crack, 1 mm, 3",
    "crack, 5 mm, 2",
    "crack, 10 mm, 1"
  })
  void rootsByWhatTheyCameThrough(String through, String thickness, int number) {
    Seen seen =
        Seen.of(
            "roots",
            Map.of("thickness", read(Dimension.LENGTH, thickness)),
            Map.of("through", through),
            null);
    assertThat(number(CONDITION.grade(seen))).isEqualTo(number);
  }

  @ParameterizedTest
  @CsvSource({
    "infiltration, strength, running, 1",
    "infiltration, strength, dripping, 2",
    "infiltration, strength, damp, 2",
    "corrosion, extent, collapsed, 1",
    "corrosion, extent, pieces missing, 2",
    "corrosion, extent, general, 3",
    "break, missing, yes, 2",
    "collapse, x, x, 1",
    "hole, x, x, 2"
  })
  void kindsByWhatIsSaidOfThem(String kind, String word, String text, int number) {
    assertThat(number(said(kind, word, text))).isEqualTo(number);
  }

  @ParameterizedTest
  @CsvSource({
    "crack, width, 9.9 mm, false",
    "crack, width, 10 mm, true",
    "deformation, share, 39 %, false",
    "deformation, share, 40 %, true",
    "obstruction, share, 49 %, false",
    "obstruction, share, 50 %, true",
    "deposit-hard, share, 30 %, true",
    "hole, diameter, 49 mm, false",
    "hole, diameter, 5 cm, true",
    "break, length, 6 cm, true",
    "soil-entering, share, 1 %, true"
  })
  void theListOfActionAtOnce(String kind, String size, String value, boolean yes) {
    assertThat(grade(kind, size, value, null).immediate() instanceof Immediate.Yes).isEqualTo(yes);
  }

  @Test
  void aBrokenWallWhosePiecesAreThereHasNoRow() {
    assertThat(said("break", "missing", "no").verdicts())
        .containsEntry(Aspect.STRUCTURE, new Verdict.NoRow("missing", List.of("yes")));
  }

  @Test
  void waterThatSomethingHoldsUpIsNoSag() {
    Map<String, Reading> share = Map.of("share", read(Dimension.SHARE, "30 %"));
    Seen held = Seen.of("standing-water", share, Map.of("held-by", "roots"), null);
    assertThat(CONDITION.grade(held).verdicts())
        .containsEntry(Aspect.OPERATION, new Verdict.NoRow("held-by", List.of()));
  }

  @Test
  void whatOutranksEveryGradeHasNone() {
    for (String kind : List.of("foreign-pipe", "foreign-cable", "gas-smell")) {
      assertThat(CONDITION.grade(Seen.of(kind, Map.of(), Map.of(), 0.1)).ungraded())
          .isEqualTo(FindingGrade.Ungraded.OUTRANKS);
    }
  }

  /** A kind bears in the catalogue on what it is graded for here. */
  @Test
  void theTableAndTheCatalogueAgree() {
    GradeScheme scheme = Bundled.grades();
    for (GradeRow row : scheme.rows()) {
      Catalogue.Bears bears = Bundled.catalogue().find(row.kind()).orElseThrow().bears();
      assertThat(bears.name()).as(row.kind()).isEqualTo(row.aspect().name());
    }
    assertThat(scheme.adaptedFor()).isEqualTo("small drains");
    assertThat(scheme.onLimit()).isEqualTo(GradeScheme.OnLimit.WORSE);
  }

  @Test
  void everyRowSaysWhereItComesFrom() {
    GradeScheme scheme = Bundled.grades();
    Stream<Cited> grades = scheme.rows().stream().map(GradeRow::cited);
    Stream<Cited> immediate = scheme.immediate().stream().map(ImmediateRow::cited);
    assertThat(grades).allMatch(c -> c.source().equals("stein-h5") && c.mark() == Mark.LOOKED_UP);
    assertThat(immediate).allMatch(c -> c.source().equals("atv-m-149"));
  }
}
