package daylight.footage.counter;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Shapes that each fill one cell, and a network that says of each what the test wants. */
class EndingTest {
  private static final int LINES = 20;

  /** What narrow letters look like. */
  private static final Map<Character, Double> LIKE_ONE = Map.of('1', 0.8, 'f', 0.1, 't', 0.08);

  @Test
  void narrowLettersThatNeverTurnAreAUnit() {
    Kinds kinds = kinds(LIKE_ONE, LIKE_ONE);
    Ending.name(lines(kinds, true), kinds);

    assertThat(kinds.letter(10)).isEqualTo('f');
    assertThat(kinds.letter(11)).isEqualTo('t');
  }

  @Test
  void whatTurnsStaysAFigure() {
    Kinds kinds = kinds(LIKE_ONE, LIKE_ONE);
    Ending.name(lines(kinds, false), kinds);

    assertThat(kinds.letter(10)).isEqualTo('1');
    assertThat(kinds.letter(11)).isEqualTo('1');
  }

  @Test
  void digitsBeyondDoubtStayDigits() {
    Kinds kinds = kinds(Map.of('0', 1.0), Map.of('5', 1.0));
    Ending.name(lines(kinds, true), kinds);

    assertThat(kinds.letter(10)).isEqualTo('0');
    assertThat(kinds.letter(11)).isEqualTo('5');
  }

  /** Three figures, the last of which turns, and two letters behind, or a single line again. */
  private static List<Glyphs> lines(Kinds kinds, boolean alike) {
    List<Glyphs> lines = new ArrayList<>();
    for (int i = 0; i < LINES; i++) {
      List<Integer> end = alike || i % 3 > 0 ? List.of(10, 11) : List.of(11, 10);
      List<Integer> labels = new ArrayList<>(List.of(4, i / 10, i % 10));
      labels.addAll(end);
      List<Cut.Box> boxes = new ArrayList<>();
      for (int k = 0; k < labels.size(); k++) {
        boxes.add(new Cut.Box(12 * k, 0, 12 * k + 9, 16, 60));
      }
      lines.add(new Glyphs(boxes, labels));
    }
    assertThat(kinds.size()).isEqualTo(12);
    return lines;
  }

  private static Kinds kinds(Map<Character, Double> first, Map<Character, Double> second) {
    float[][] middle = new float[Letters.HIDDEN][Shape.CELLS + 1];
    float[][] last = new float[Letters.KINDS.length()][Letters.HIDDEN + 1];
    for (int i = 0; i < 12; i++) {
      middle[i][i] = 1;
      for (int k = 0; k < last.length; k++) {
        char letter = Letters.KINDS.charAt(k);
        Map<Character, Double> said =
            i == 10 ? first : i == 11 ? second : Map.of((char) ('0' + i), 1.0);
        last[k][i] = (float) Math.log(said.getOrDefault(letter, 1e-6));
      }
    }
    Kinds kinds = new Kinds(new Letters(middle, last));
    for (int i = 0; i < 12; i++) {
      float[] shape = new float[Shape.CELLS];
      shape[i] = 1;
      kinds.of(shape);
    }
    kinds.settle();
    return kinds;
  }
}
