package daylight.footage.counter;

import java.awt.image.BufferedImage;
import java.util.Random;

/** Digits of seven bars and of dots, drawn in many proportions. */
final class OwnFaces {
  /** Bars of the digits: top, upper right, lower right, bottom, lower left, upper left, middle. */
  private static final int[] BARS = {
    0b1111110, 0b0110000, 0b1101101, 0b1111001, 0b0110011, 0b1011011, 0b1011111, 0b1110000,
    0b1111111, 0b1111011
  };

  private static final String[] DOTS = {
    "0E11131519110E", "040C040404040E", "0E11010204081F", "1F02040201110E", "02060A121F0202",
    "1F101E0101110E", "0608101E11110E", "1F010204080808", "0E11110E11110E", "0E11110F01020C",
    "0E11111111110E", "0E11010608101F", "0E11010601110E", "040C140404041F", "1F010102040404",
    "0E11110F01110E", "0E11101E11110E"
  };

  private static final String DOTTED = "01234567890231769" + "6";

  private OwnFaces() {}

  /** Draws a digit; false for what is none. {@code line} takes where it begins and ends. */
  static boolean draw(
      BufferedImage sheet, char letter, int face, int tall, Random chance, double[] line) {
    int digit = letter - '0';
    if (digit < 0 || digit > 9) {
      return false;
    }
    line[0] = tall;
    line[1] = 2 * tall;
    if (face == 1) {
      bars(sheet, digit, tall, chance);
    } else {
      dots(sheet, letter, tall, chance, face == 3);
    }
    return true;
  }

  private static void bars(BufferedImage sheet, int digit, int tall, Random chance) {
    int bits = BARS[digit];
    if (digit == 6 && chance.nextInt(3) == 0) {
      bits &= ~0b1000000;
    }
    if (digit == 9 && chance.nextInt(3) == 0) {
      bits &= ~0b0001000;
    }
    if (digit == 7 && chance.nextInt(4) == 0) {
      bits |= 0b0000010;
    }
    double wide = tall * (0.42 + 0.25 * chance.nextDouble());
    double pen = Math.max(1.2, tall * (0.09 + 0.1 * chance.nextDouble()));
    double gap = chance.nextInt(2) * tall * 0.05 * chance.nextDouble();
    double lean = chance.nextInt(3) == 0 ? 0.2 * chance.nextDouble() : 0;
    double half = tall / 2.0;
    double in = pen / 2;
    double[][] ends = {
      {in, in, wide - in, in},
      {wide - in, in, wide - in, half},
      {wide - in, half, wide - in, tall - in},
      {in, tall - in, wide - in, tall - in},
      {in, half, in, tall - in},
      {in, in, in, half},
      {in, half, wide - in, half}
    };
    for (int y = 0; y < tall; y++) {
      for (int x = 0; x < 2 * tall; x++) {
        double py = y + 0.5;
        double px = x + 0.5 - lean * (tall - py);
        double cover = 0;
        for (int bar = 0; bar < 7; bar++) {
          if ((bits >> (6 - bar) & 1) == 1) {
            double[] e = ends[bar];
            boolean lying = e[1] == e[3];
            double along = lying ? px : py;
            double from = (lying ? e[0] : e[1]) + gap;
            double to = (lying ? e[2] : e[3]) - gap;
            double beyond = Math.max(0, Math.max(from - along, along - to));
            double off = Math.abs(lying ? py - e[1] : px - e[0]);
            cover =
                Math.max(
                    cover,
                    Math.clamp(
                        pen / 2 + 0.5 - Math.max(off, beyond + (beyond > 0 ? off : 0)), 0, 1));
          }
        }
        if (x + tall < sheet.getWidth()) {
          sheet.getRaster().setSample(x + tall, y + tall, 0, (int) (255 * cover));
        }
      }
    }
  }

  private static void dots(
      BufferedImage sheet, char letter, int tall, Random chance, boolean round) {
    int pick = letter - '0';
    if (chance.nextBoolean()) {
      int start = 10 + chance.nextInt(7);
      for (int i = 0; i < 7; i++) {
        int at = 10 + (start - 10 + i) % 7;
        if (DOTTED.charAt(at) == letter) {
          pick = at;
        }
      }
    }
    double down = tall / 7.0;
    double across = down * (0.75 + 0.4 * chance.nextDouble());
    double size = round ? 0.38 + 0.12 * chance.nextDouble() : 0.5;
    for (int y = 0; y < tall; y++) {
      int row =
          Integer.parseInt(
              DOTS[pick].substring(2 * (int) (y / down), 2 * (int) (y / down) + 2), 16);
      for (int x = 0; x < 5 * across; x++) {
        int column = (int) (x / across);
        if ((row >> (4 - column) & 1) == 1) {
          double dx = (x + 0.5) / across - column - 0.5;
          double dy = (y + 0.5) / down - (int) (y / down) - 0.5;
          double ink = round ? Math.clamp((size - Math.hypot(dx, dy)) * down + 0.5, 0, 1) : 1;
          sheet.getRaster().setSample(x + tall, y + tall, 0, (int) (255 * ink));
        }
      }
    }
  }
}
