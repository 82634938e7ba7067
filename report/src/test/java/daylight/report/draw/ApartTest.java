package daylight.report.draw;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.report.markup.Tag;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Nothing lies on anything else, however much there is to be told. */
class ApartTest {
  private static final int SEEDS = 50;

  /** As many of them as are looked at each time; all of them where long tests run. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9})
  void nothingLiesOnAnythingElse(int tens) {
    for (int seed = tens * SEEDS / 10; seed < (tens + 1) * SEEDS / 10; seed++) {
      Subject subject = DenseYard.subject(seed);
      for (Tag svg : all(subject)) {
        assertThat(Clashes.of(svg)).as("seed %d", seed).isEmpty();
      }
    }
  }

  private static List<Tag> all(Subject subject) {
    List<Tag> all = new ArrayList<>();
    all.add(PlanDrawing.draw(subject));
    all.add(PlanDrawing.draw(subject.turned(PlanTurn.ALONG)));
    all.add(ProfileDrawing.draw(subject));
    all.add(StripDrawing.draw(subject));
    all.addAll(PlanDrawing.sheets(subject));
    all.addAll(ProfileDrawing.sheets(subject));
    all.addAll(StripDrawing.sheets(subject));
    return all;
  }

  @Test
  void theReaderSeesWhatLiesOnWhat() {
    Tag svg =
        Tag.of("svg")
            .with("viewBox", "0 0 100 100")
            .add(Pen.text(10, 50, "one", 10, false, Ink.DARK))
            .add(Pen.text(20, 52, "two", 10, false, Ink.DARK))
            .add(Symbols.locate(52, 20), Pen.text(54, 22, "on it", 10, false, Ink.DARK))
            .add(Pen.path("M60 70L90 76", Ink.DRAIN, SeenStroke.STROKE))
            .add(Pen.text(65, 75, "pipe", 10, false, Ink.DARK))
            .add(Pen.text(80, 90, "far too long", 10, false, Ink.DARK));

    assertThat(Clashes.of(svg))
        .hasSize(4)
        .contains("'one' on 'two'", "'pipe' on the drain", "cut: far too long")
        .anyMatch(one -> one.startsWith("'on it' on a sign"));
  }

  @Test
  void theReaderOfTheFontAgreesWithTheOneThatDraws() {
    for (String text : List.of("Roots 32' 0\"", "12–19 · ± 0.3 %", "Wg, jA: Éàç")) {
      for (boolean bold : List.of(true, false)) {
        assertThat(Glyphs.width(text, 8, bold))
            .isCloseTo(Typeface.width(text, 8, bold), org.assertj.core.data.Offset.offset(1e-6));
      }
    }
  }
}
