package daylight.footage.counter;

import java.util.Arrays;
import java.util.Map;

/**
 * Whether a figure goes like a counter: it rests and runs, turning its last place one by one. A
 * clock turns once a second whatever happens, a number of frames once a frame, a battery hardly
 * ever, a position by leaps.
 */
final class Judge {
  private static final int FEWEST_TURNS = 3;

  /**
   * With fewer values, one of them nearly always, it is a caption that noise misreads now and then.
   */
  private static final int FEWEST_VALUES = 6;

  private static final double HARDLY_EVER_ANOTHER = 0.85;

  /** From so many values on, more of them say nothing more for a counter. */
  private static final double ENOUGH_VALUES = 10;

  private static final double STEADY = 0.75;
  private static final double ORDERLY = 0.8;

  /** What a figure seems to be. */
  enum Kind {
    DISTANCE,
    CLOCK,
    FRAME_NUMBER,
    STILL,
    OTHER
  }

  private Judge() {}

  static Kind kind(Series series, double[] seconds) {
    int count = series.frames();
    int turns = 0;
    int ones = 0;
    int frames = 0;
    int everyFrame = 0;
    int byLeaps = 0;
    double[] turned = new double[count];
    int before = -1;
    double fastest = 2.5 / series.metresPerStep();
    for (int i = 0; i < count; i++) {
      if (series.at(i) == Series.NONE) {
        continue;
      }
      if (before >= 0) {
        long by = series.at(i) - series.at(before);
        frames++;
        if (by != 0) {
          everyFrame += by == i - before ? 1 : 0;
          turned[turns++] = seconds[i];
          double most = Math.max(2, fastest * (seconds[i] - seconds[before]) + 1);
          byLeaps += Math.abs(by) > most ? 1 : 0;
          ones += Math.abs(by) <= 2 ? 1 : 0;
        }
      }
      before = i;
    }
    if (series.foreign()) {
      return Kind.OTHER;
    }
    if (turns < FEWEST_TURNS || rests(series)) {
      return Kind.STILL;
    }
    if (everyFrame > STEADY * frames) {
      return Kind.FRAME_NUMBER;
    }
    if (!series.hasLength() && secondHand(Arrays.copyOf(turned, turns))) {
      return Kind.CLOCK;
    }
    return turns - byLeaps >= ORDERLY * turns && ones >= 1 ? Kind.DISTANCE : Kind.OTHER;
  }

  private static boolean rests(Series series) {
    Map<Long, Integer> values = series.values();
    int read = values.values().stream().mapToInt(Integer::intValue).sum();
    int usual = values.values().stream().mapToInt(Integer::intValue).max().orElse(0);
    return values.size() < FEWEST_VALUES && usual > HARDLY_EVER_ANOTHER * read;
  }

  private static boolean secondHand(double[] turned) {
    int onTime = 0;
    for (int i = 1; i < turned.length; i++) {
      double apart = turned[i] - turned[i - 1];
      onTime += Math.abs(apart - Math.rint(apart)) < 0.1 && apart > 0.5 && apart < 1.5 ? 1 : 0;
    }
    return onTime >= STEADY * (turned.length - 1);
  }

  /** How much speaks for a distance, to choose among several. */
  static double weight(Series series) {
    return series.share()
        * Math.min(1, series.values().size() / ENOUGH_VALUES)
        * ((series.hasLength() ? 3 : 1) + (series.places() == 0 ? 0 : 1));
  }
}
