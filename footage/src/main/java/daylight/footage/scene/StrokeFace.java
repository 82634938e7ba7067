package daylight.footage.scene;

import java.util.HashMap;
import java.util.Map;

/** Characters of strokes on a grid four wide and six high, the origin at the upper left. */
final class StrokeFace {
  private static final double WIDE = 0.62;

  /** Character, then its strokes, each a run of grid points; digits of one point are x and y. */
  private static final String[] TABLE = {
    "0 10 30 41 45 36 16 05 01 10",
    "1 11 20 26,16 36",
    "2 01 10 30 41 42 06 46",
    "3 00 40 23 33 44 45 36 16 05",
    "4 30 04 44,32 36",
    "5 40 00 03 32 43 45 36 06",
    "6 40 20 02 05 16 36 45 44 33 03",
    "7 00 40 42 26",
    "8 10 30 41 42 33 13 02 01 10,13 04 05 16 36 45 44 33",
    "9 43 13 02 01 10 30 41 44 26 06",
    "A 06 20 46,14 34",
    "B 00 30 41 42 33 03,33 44 45 36 06 00",
    "C 41 30 10 01 05 16 36 45",
    "D 00 20 42 44 26 06 00",
    "E 40 00 06 46,03 33",
    "F 40 00 06,03 33",
    "G 41 30 10 01 05 16 36 45 43 23",
    "H 00 06,40 46,03 43",
    "I 10 30,20 26,16 36",
    "J 30 35 26 16 05",
    "K 00 06,40 03 46",
    "L 00 06 46",
    "M 06 00 23 40 46",
    "N 06 00 46 40",
    "O 10 30 41 45 36 16 05 01 10",
    "P 06 00 30 41 42 33 03",
    "Q 10 30 41 45 36 16 05 01 10,24 46",
    "R 06 00 30 41 42 33 03,23 46",
    "S 41 30 10 01 02 13 33 44 45 36 16 05",
    "T 00 40,20 26",
    "U 00 05 16 36 45 40",
    "V 00 26 40",
    "W 00 16 23 36 40",
    "X 00 46,40 06",
    "Y 00 23 40,23 26",
    "Z 00 40 06 46",
    "f 40 30 21 26,12 32",
    "t 20 25 36,12 32",
    "m 06 02,03 12 23 26,23 32 43 46",
    "i 22 26,20 20",
    "n 06 02,03 12 32 43 46",
    "c 43 32 12 03 05 16 36 45",
    ". 25 26",
    ": 22 22,25 25",
    "- 13 33",
    "+ 03 43,21 25",
    "' 20 21",
    "\" 10 11,30 31",
    "/ 06 40"
  };

  /**
   * Bars lit for each digit: top, upper left, upper right, middle, lower left, lower right, foot.
   */
  private static final String[] BARS = {
    "1110111", "0010010", "1011101", "1011011", "0111010", "1101011", "1101111", "1010010",
    "1111111", "1111011"
  };

  private static final double[][] BAR = {
    {0, 0, 4, 0}, {0, 0, 0, 3}, {4, 0, 4, 3}, {0, 3, 4, 3}, {0, 3, 0, 6}, {4, 3, 4, 6}, {0, 6, 4, 6}
  };

  private static final Map<Character, String> STROKES_OF = read();

  private StrokeFace() {}

  private static Map<Character, String> read() {
    Map<Character, String> strokes = new HashMap<>();
    for (String line : TABLE) {
      strokes.put(line.charAt(0), line.substring(2));
    }
    return strokes;
  }

  static Stamp strokes(char character, int height, double pen, double lean, boolean slashed) {
    Sheet sheet = new Sheet(height, pen, lean);
    String all = STROKES_OF.getOrDefault(character, "");
    for (String stroke : all.isEmpty() ? new String[0] : all.split(",", -1)) {
      String[] points = stroke.split(" ", -1);
      for (int i = 1; i < points.length; i++) {
        sheet.line(at(points[i - 1], 0), at(points[i - 1], 1), at(points[i], 0), at(points[i], 1));
      }
    }
    if (slashed && character == '0') {
      sheet.line(1, 4.5, 3, 1.5);
    }
    return sheet.stamp;
  }

  static Stamp segments(char character, int height, double pen) {
    if (character < '0' || character > '9') {
      return strokes(character, height, pen * 0.8, 0, false);
    }
    Sheet sheet = new Sheet(height, pen, 0.08);
    for (int i = 0; i < BAR.length; i++) {
      if (BARS[character - '0'].charAt(i) == '1') {
        sheet.bar(BAR[i]);
      }
    }
    return sheet.stamp;
  }

  private static int at(String point, int axis) {
    return point.charAt(axis) - '0';
  }

  /** A sheet on which strokes are drawn with a round pen. */
  private static final class Sheet {
    final Stamp stamp;
    private final double half;
    private final double lean;
    private final double scaleX;
    private final double scaleY;

    Sheet(int height, double pen, double lean) {
      half = Math.max(0.6, pen * height / 2);
      this.lean = lean;
      scaleX = (height * WIDE - 2 * half) / 4;
      scaleY = (height - 2 * half) / 6;
      stamp = new Stamp((int) StrictMath.ceil(height * (WIDE + lean)) + 1, height);
    }

    void line(double x0, double y0, double x1, double y1) {
      draw(placeX(x0, y0), placeY(y0), placeX(x1, y1), placeY(y1));
    }

    /** A line that stops short of its ends, so that bars do not touch. */
    void bar(double[] ends) {
      double dx = (ends[2] - ends[0]) * 0.1;
      double dy = (ends[3] - ends[1]) * 0.1;
      line(ends[0] + dx, ends[1] + dy, ends[2] - dx, ends[3] - dy);
    }

    private double placeX(double x, double y) {
      return half + x * scaleX + lean * (6 - y) * scaleY;
    }

    private double placeY(double y) {
      return half + y * scaleY;
    }

    private void draw(double x0, double y0, double x1, double y1) {
      double dx = x1 - x0;
      double dy = y1 - y0;
      double length = Math.max(1e-9, dx * dx + dy * dy);
      for (int y = 0; y < stamp.height; y++) {
        for (int x = 0; x < stamp.width; x++) {
          double px = x + 0.5 - x0;
          double py = y + 0.5 - y0;
          double share = Math.clamp((px * dx + py * dy) / length, 0.0, 1.0);
          double ox = px - share * dx;
          double oy = py - share * dy;
          stamp.put(x, y, half + 0.5 - StrictMath.sqrt(ox * ox + oy * oy));
        }
      }
    }
  }
}
