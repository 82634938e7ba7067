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
    assertThat(pieces("it is 1 1/4 in deep")).containsExactly("it ", "is ", "1 1/4 in ", "deep");
    assertThat(pieces("at 0:49.")).containsExactly("at ", "0:49.");
    assertThat(pieces("ASCE 38-22 is")).containsExactly("ASCE ", "38-22 ", "is");
    assertThat(pieces("wash-down [> 99 %]")).containsExactly("wash-", "down ", "[> 99 %]");
    assertThat(pieces("to 16.91 m. A 5 minute"))
        .containsExactly("to ", "16.91 m. ", "A ", "5 ", "minute");
    assertThat(pieces("3.22 L/s, 4 in")).containsExactly("3.22 L/s, ", "4 in");
    assertThat(pieces("the owner's 5 tapes")).containsExactly("the ", "owner's ", "5 ", "tapes");
  }

  @Test
  void anApostropheStaysWithItsWord() {
    assertThat(pieces("de l’eau")).containsExactly("de ", "l’eau");
  }
}
