package daylight.footage.scene;

import java.util.HashMap;
import java.util.Map;

/** Characters of five by seven dots, one letter a row of dots: bit 4 is the leftmost. */
final class MatrixFace {
  private static final int COLUMNS = 5;
  private static final int ROWS = 7;

  /** Character, then its seven rows in hexadecimal. */
  private static final String[] TABLE = {
    "0 0E 11 11 11 11 11 0E", "1 04 0C 04 04 04 04 0E", "2 0E 11 01 06 08 10 1F",
    "3 0E 11 01 06 01 11 0E", "4 02 06 0A 12 1F 02 02", "5 1F 10 1E 01 01 11 0E",
    "6 06 08 10 1E 11 11 0E", "7 1F 01 02 04 04 08 08", "8 0E 11 11 0E 11 11 0E",
    "9 0E 11 11 0F 01 02 0C", "A 0E 11 11 1F 11 11 11", "B 1E 11 11 1E 11 11 1E",
    "C 0E 11 10 10 10 11 0E", "D 1C 12 11 11 11 12 1C", "E 1F 10 10 1E 10 10 1F",
    "F 1F 10 10 1E 10 10 10", "G 0E 11 10 17 11 11 0F", "H 11 11 11 1F 11 11 11",
    "I 0E 04 04 04 04 04 0E", "J 07 02 02 02 02 12 0C", "K 11 12 14 18 14 12 11",
    "L 10 10 10 10 10 10 1F", "M 11 1B 15 15 11 11 11", "N 11 19 15 13 11 11 11",
    "O 0E 11 11 11 11 11 0E", "P 1E 11 11 1E 10 10 10", "Q 0E 11 11 11 15 12 0D",
    "R 1E 11 11 1E 14 12 11", "S 0F 10 10 0E 01 01 1E", "T 1F 04 04 04 04 04 04",
    "U 11 11 11 11 11 11 0E", "V 11 11 11 11 11 0A 04", "W 11 11 11 15 15 1B 11",
    "X 11 11 0A 04 0A 11 11", "Y 11 11 0A 04 04 04 04", "Z 1F 01 02 04 08 10 1F",
    "f 03 04 04 0E 04 04 04", "t 04 04 0E 04 04 04 03", "m 00 00 1A 15 15 15 15",
    "i 04 00 0C 04 04 04 0E", "n 00 00 16 19 11 11 11", "c 00 00 0E 10 10 11 0E",
    ". 00 00 00 00 00 0C 0C", ": 00 0C 0C 00 0C 0C 00", "- 00 00 00 0E 00 00 00",
    "+ 00 04 04 1F 04 04 00", "' 0C 0C 08 00 00 00 00", "\" 1B 1B 12 00 00 00 00",
    "/ 01 01 02 04 08 10 10"
  };

  private static final int[] SLASHED_ZERO = {0x0E, 0x11, 0x13, 0x15, 0x19, 0x11, 0x0E};
  private static final Map<Character, int[]> ROWS_OF = read();

  private MatrixFace() {}

  private static Map<Character, int[]> read() {
    Map<Character, int[]> rows = new HashMap<>();
    for (String line : TABLE) {
      int[] dots = new int[ROWS];
      for (int i = 0; i < ROWS; i++) {
        dots[i] = Integer.parseInt(line.substring(2 + 3 * i, 4 + 3 * i), 16);
      }
      rows.put(line.charAt(0), dots);
    }
    return rows;
  }

  private static boolean dot(char character, int x, int y, boolean slashed) {
    int[] rows =
        slashed && character == '0' ? SLASHED_ZERO : ROWS_OF.getOrDefault(character, new int[ROWS]);
    return x >= 0 && y >= 0 && x < COLUMNS && y < ROWS && (rows[y] >> (COLUMNS - 1 - x) & 1) == 1;
  }

  static Stamp square(char character, int height, boolean slashed) {
    Stamp stamp = sheet(height);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < stamp.width; x++) {
        if (dot(character, x * ROWS / height, y * ROWS / height, slashed)) {
          stamp.put(x, y, 1);
        }
      }
    }
    return stamp;
  }

  static Stamp round(char character, int height, boolean slashed) {
    Stamp stamp = sheet(height);
    double dot = (double) height / ROWS;
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < stamp.width; x++) {
        int column = (int) (x / dot);
        int row = (int) (y / dot);
        if (dot(character, column, row, slashed)) {
          double dx = x + 0.5 - (column + 0.5) * dot;
          double dy = y + 0.5 - (row + 0.5) * dot;
          stamp.put(x, y, 0.46 * dot + 0.5 - StrictMath.sqrt(dx * dx + dy * dy));
        }
      }
    }
    return stamp;
  }

  /** Each dot is a blot that runs into its neighbours: corners round off, steps become slopes. */
  static Stamp smooth(char character, int height, boolean slashed) {
    Stamp stamp = sheet(height);
    double dot = (double) height / ROWS;
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < stamp.width; x++) {
        double column = (x + 0.5) / dot;
        double row = (y + 0.5) / dot;
        double sum = 0;
        for (int j = (int) row - 1; j <= (int) row + 1; j++) {
          for (int i = (int) column - 1; i <= (int) column + 1; i++) {
            double dx = column - i - 0.5;
            double dy = row - j - 0.5;
            double near = Math.max(0, 1.7 - (dx * dx + dy * dy));
            sum += dot(character, i, j, slashed) ? near * near : 0;
          }
        }
        stamp.put(x, y, (sum - 2.1) * dot * 0.45 + 0.5);
      }
    }
    return stamp;
  }

  private static Stamp sheet(int height) {
    return new Stamp(height * COLUMNS / ROWS + 1, height);
  }
}
