package daylight.report.draw;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.report.Example;
import daylight.report.Filmed;
import daylight.report.markup.Tag;
import daylight.report.page.Paper;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class StripSheetsTest {
  private static final Pattern HEIGHT = Pattern.compile("viewBox=\"0 0 792 (\\d+)\"");
  private static final Pattern ID = Pattern.compile(" id=\"([^\"]+)\"");

  static List<Subject> subjects() {
    return List.of(
        Example.usual().subject(),
        Filmed.on(Paper.LETTER, Example.deadly(), true).subject(),
        StripCases.sixty());
  }

  @ParameterizedTest
  @MethodSource("subjects")
  void noSheetIsHigherThanPaperLyingOnItsSide(Subject subject) {
    assertThat(StripDrawing.sheets(subject))
        .allSatisfy(
            sheet ->
                assertThat(HEIGHT.matcher(sheet.write()).results().findFirst())
                    .hasValueSatisfying(
                        found ->
                            assertThat(Double.parseDouble(found.group(1)))
                                .isLessThanOrEqualTo(Sheet.HIGHEST)));
  }

  @ParameterizedTest
  @MethodSource("subjects")
  void allThatStandsOnTheLongOneStandsOnTheSheets(Subject subject) {
    List<String> words = new ArrayList<>();
    StripDrawing.sheets(subject).forEach(sheet -> words.addAll(LabelOverlaps.words(sheet)));

    for (String label : findings(LabelOverlaps.words(StripDrawing.draw(subject)))) {
      assertThat(findings(words)).contains(label);
    }
  }

  @Test
  void whatFitsOnOneSheetIsOnOne() {
    assertThat(StripDrawing.sheets(StripCases.sixty())).hasSizeGreaterThan(1);
    assertThat(StripDrawing.sheets(Objects.requireNonNull(StripCases.all().get("one finding"))))
        .hasSize(1);
  }

  @Test
  void noIdIsOnTwoSheets() {
    List<String> ids = new ArrayList<>();
    for (Tag sheet : StripDrawing.sheets(StripCases.sixty())) {
      ID.matcher(sheet.write()).results().forEach(found -> ids.add(found.group(1)));
    }

    assertThat(ids).isNotEmpty().doesNotHaveDuplicates();
  }

  /** The labels of findings, which a text begins with. */
  private static Set<String> findings(List<String> words) {
    Set<String> labels = new TreeSet<>();
    for (String word : words) {
      Pattern.compile("^F\\d+").matcher(word).results().forEach(found -> labels.add(found.group()));
    }
    return labels;
  }
}
