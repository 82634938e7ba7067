package daylight.footage.counter;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** A three and an eight of seven bars, before grounds of several brightnesses. */
class LikenessTest {
  private static final int WIDTH = 24;
  private static final int HEIGHT = 24;
  private static final int INKED = 230;
  private static final int BEHIND = 90;
  private static final char[] NAMES = {'3', '8'};

  private final SplittableRandom chance = new SplittableRandom(3);
  private final Ink ink = new Ink(WIDTH, HEIGHT, 3);
  private final Likeness likeness = new Likeness(INKED, BEHIND, WIDTH, 4, 20);

  private void show(boolean eight, int ground) {
    byte[] pixels = new byte[WIDTH * HEIGHT];
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        boolean high = y >= 4 && y < 20;
        boolean lying = x >= 7 && x < 17 && high && (y < 6 || y >= 18 || (y >= 11 && y < 13));
        boolean right = x >= 15 && x < 17 && high;
        boolean left = eight && x >= 7 && x < 9 && high;
        int level = lying || right || left ? INKED : ground;
        pixels[y * WIDTH + x] = (byte) Math.min(255, level + chance.nextInt(-4, 5));
      }
    }
    ink.find(pixels, false, 0);
  }

  private Fits fits() {
    return likeness.digits(ink, 12, 10, NAMES);
  }

  private void learn() {
    for (int i = 0; i < 20; i++) {
      show(false, BEHIND + i - 10);
      likeness.learn(0, ink, 12, 10);
      show(true, BEHIND + i - 10);
      likeness.learn(1, ink, 12, 10);
    }
  }

  @Test
  void theDigitThatStandsThereFitsBetter() {
    learn();
    show(false, 120);

    assertThat(fits().above(3)).isGreaterThan(fits().above(8) + 8);
    assertThat(fits().misfit(3)).isLessThan(0.9);

    show(true, 60);
    assertThat(fits().above(8)).isGreaterThan(fits().above(3) + 8);
  }

  @Test
  void aGroundAsBrightAsTheInkSaysNothing() {
    learn();
    show(false, INKED - 2);

    assertThat(fits().above(8) - fits().above(3)).isBetween(-8.0, 8.0);
  }

  @Test
  void anEmptyCellIsNoDigit() {
    learn();
    show(false, BEHIND);
    double there = fits().above(3);
    byte[] empty = new byte[WIDTH * HEIGHT];
    java.util.Arrays.fill(empty, (byte) BEHIND);
    ink.find(empty, false, 0);

    assertThat(there).isGreaterThan(5);
    assertThat(fits().above(3)).isNegative();
    assertThat(fits().above(8)).isNegative();
  }

  @Test
  void aDigitNeverSeenIsNotRuledOut() {
    learn();
    show(true, BEHIND);

    assertThat(fits().knows(5)).isFalse();
    assertThat(fits().above(5)).isEqualTo(fits().above(8));
  }
}
