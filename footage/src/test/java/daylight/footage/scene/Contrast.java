package daylight.footage.scene;

/** How far burned-in ink stands out from what it covers, in its spread. */
final class Contrast {
  private static final int CHANGED = 4;

  /** Levels that a picture's noise and packing spread even where it is plain. */
  private static final double LEAST_SPREAD = 6;

  private Contrast() {}

  static double of(int[] before, int[] after) {
    double difference = 0;
    double sum = 0;
    double squares = 0;
    int count = 0;
    for (int i = 0; i < before.length; i++) {
      double was = luma(before[i]);
      double by = Math.abs(luma(after[i]) - was);
      if (by > CHANGED || before[i] != after[i]) {
        difference += by;
        sum += was;
        squares += was * was;
        count++;
      }
    }
    if (count == 0) {
      return 0;
    }
    double mean = sum / count;
    double spread = Math.sqrt(Math.max(0, squares / count - mean * mean));
    return difference / count / Math.max(LEAST_SPREAD, spread);
  }

  private static double luma(int pixel) {
    return 0.299 * (pixel >> 16 & 255) + 0.587 * (pixel >> 8 & 255) + 0.114 * (pixel & 255);
  }
}
