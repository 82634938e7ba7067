package daylight.report.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.measure.Shown;
import daylight.report.Example;
import daylight.report.page.OwnersReport;
import daylight.report.page.Paper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Drawings on paper, as they come out of the printer. */
class PaperDrawingsTest {
  /** What no printer reaches, points: a sixth of an inch. */
  private static final double EDGE = 12;

  private record Word(String text, double left, double right, double y) {
    double middle() {
      return (left + right) / 2;
    }
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void theyKeepOffTheEdgesAndAreTrueToTheScaleThatStandsOnThem(Paper paper) throws IOException {
    OwnersReport report = OwnersReport.of(Example.usual(Shown.METRES).subject());
    List<String> scales = new ArrayList<>();
    try (PDDocument document = Reading.open(PaperReport.write(report.edition(), paper))) {
      for (int page = 0; page < document.getNumberOfPages(); page++) {
        double wide = document.getPage(page).getMediaBox().getWidth();
        double high = document.getPage(page).getMediaBox().getHeight();
        List<Word> words = words(Reading.letters(document, page));
        assertThat(words)
            .allSatisfy(
                word -> {
                  assertThat(word.left()).isGreaterThanOrEqualTo(EDGE);
                  assertThat(word.right()).isLessThanOrEqualTo(wide - EDGE);
                  assertThat(word.y()).isBetween(EDGE, high - EDGE);
                });
        if (wide > high) {
          words.stream()
              .map(Word::text)
              .filter(text -> text.matches(".*1:\\d+ printed at full size.*"))
              .findFirst()
              .ifPresent(
                  text -> {
                    scales.add(text);
                    String n = text.replaceAll(".*1:(\\d+) printed.*", "$1");
                    bar(words, Double.parseDouble(n));
                  });
        }
      }
    }
    // From above, from the side, straightened out.
    assertThat(scales).hasSizeGreaterThanOrEqualTo(3);
  }

  /** The lowest row of round distances is a scale: as long on the sheet as it says. */
  private static void bar(List<Word> words, double n) {
    List<Word> ticks = words.stream().filter(w -> w.text().matches("\\d+(\\.\\d+)? m")).toList();
    double lowest = ticks.stream().mapToDouble(Word::y).max().orElseThrow();
    List<Word> row = ticks.stream().filter(w -> Math.abs(w.y() - lowest) < 0.5).toList();
    Word first = row.getFirst();
    Word last = row.getLast();
    double drawn = (last.middle() - first.middle()) / 72 * 0.0254 * n;

    assertThat(row).hasSizeGreaterThan(1);
    assertThat(drawn).isCloseTo(metres(last) - metres(first), within(0.01 * drawn));
  }

  private static double metres(Word word) {
    return Double.parseDouble(word.text().substring(0, word.text().indexOf(' ')));
  }

  /** Letters that stand behind each other, as far as a space may part them. */
  private static List<Word> words(List<TextPosition> letters) {
    List<Word> words = new ArrayList<>();
    for (TextPosition letter : letters) {
      double left = letter.getXDirAdj();
      double right = left + letter.getWidthDirAdj();
      double y = letter.getYDirAdj();
      Word before = words.isEmpty() ? null : words.getLast();
      if (before != null && Math.abs(before.y() - y) < 0.1 && Math.abs(left - before.right()) < 1) {
        words.set(
            words.size() - 1,
            new Word(before.text() + letter.getUnicode(), before.left(), right, y));
      } else {
        words.add(new Word(letter.getUnicode(), left, right, y));
      }
    }
    return words;
  }
}
