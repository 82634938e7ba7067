package daylight.report.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LineEndsTest {
  private static List<String> pieces(String text) {
    LineEnds ends = new LineEnds();
    ends.setText(text);
    List<String> pieces = new ArrayList<>();
    int from = 0;
    for (int to = ends.next(); to != BreakIterator.DONE; to = ends.next()) {
      pieces.add(text.substring(from, to));
      from = to;
    }
    return pieces;
  }

  @Test
  void halfOfAFigureIsNeverLeftBehind() {
    assertThat(pieces("with 1' 0\" to work")).containsExactly("with ", "1' 0\" ", "to ", "work");
    assertThat(pieces("unlikely (23 %).")).containsExactly("unlikely ", "(23 %).");
    assertThat(pieces("the owner's 5 tapes")).containsExactly("the ", "owner's ", "5 ", "tapes");
  }

  @Test
  void anApostropheStaysWithItsWord() {
    assertThat(pieces("de l’eau")).containsExactly("de ", "l’eau");
  }
}
