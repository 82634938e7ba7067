package daylight.footage.counter;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Digits of dots as on any display of five by seven dots, drawn here from their rows. */
class LettersTest {
  private static final String[] DIGITS = {
    "0E11131519110E", "040C040404040E", "0E11010204081F", "1F02040201110E", "02060A121F0202",
    "1F101E0101110E", "0608101E11110E", "1F010204080808", "0E11110E11110E", "0E11110F01020C"
  };

  @Test
  void digitsOfDotsAreNamed() {
    Kinds kinds = new Kinds(Letters.taught());
    int dot = 3;
    int width = 7 * dot;
    for (int digit = 0; digit < DIGITS.length; digit++) {
      int[] ink = new int[width * 9 * dot];
      int left = width;
      int right = 0;
      for (int i = 0; i < ink.length; i++) {
        int row = i / width / dot - 1;
        int column = i % width / dot - 1;
        if (row >= 0 && row < 7 && column >= 0 && column < 5) {
          int bits = Integer.parseInt(DIGITS[digit].substring(2 * row, 2 * row + 2), 16);
          if ((bits >> (4 - column) & 1) == 1) {
            ink[i] = 200;
            left = Math.min(left, i % width);
            right = Math.max(right, i % width + 1);
          }
        }
      }
      int kind = kinds.of(Shape.of(ink, width, left, right, dot, 8 * dot));

      assertThat(kinds.letter(kind)).isEqualTo((char) ('0' + digit));
    }
  }

  @Test
  void opinionsAreShares() {
    float[] opinion = Letters.taught().opinion(new float[Shape.CELLS]);
    float sum = 0;
    for (float one : opinion) {
      assertThat(one).isBetween(0f, 1f);
      sum += one;
    }
    assertThat(sum).isBetween(0.999f, 1.001f);
  }
}
