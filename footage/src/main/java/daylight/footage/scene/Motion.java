package daylight.footage.scene;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * What the counter reads over time. At each anchor it reads exactly what the anchor says; between
 * two anchors it never turns back, and where both say the same it rests. A moving camera starts and
 * stops gently and is pushed in strokes, as an arm pushes.
 */
public final class Motion {
  /** One stroke of the arm, in seconds; common practice, no source. */
  private static final double STROKE = 1.7;

  /** How much a stroke adds to the mean speed and takes from it; below 1, or it would turn back. */
  private static final double SURGE = 0.8;

  private final double[] seconds;
  private final double[] readings;
  private final double[] speeds;

  /**
   * A moment at which the reading is known.
   *
   * @param seconds from the first frame, not negative
   * @param reading of the counter, in metres
   */
  public record Anchor(double seconds, double reading) {
    public Anchor {
      if (!(seconds >= 0) || !Double.isFinite(seconds) || !Double.isFinite(reading)) {
        throw new IllegalArgumentException(
            "an anchor has a time from 0 s and a reading, was " + seconds + " s, " + reading);
      }
    }
  }

  /** A motion through anchors, in any order, at least one, no two at the same second. */
  public Motion(List<Anchor> anchors) {
    List<Anchor> sorted =
        anchors.stream().sorted(Comparator.comparingDouble(Anchor::seconds)).toList();
    if (sorted.isEmpty()) {
      throw new IllegalArgumentException("a motion has at least one anchor, was given none");
    }
    seconds = sorted.stream().mapToDouble(Anchor::seconds).toArray();
    readings = sorted.stream().mapToDouble(Anchor::reading).toArray();
    for (int i = 1; i < seconds.length; i++) {
      if (seconds[i] == seconds[i - 1]) {
        throw new IllegalArgumentException("two anchors at " + seconds[i] + " s");
      }
    }
    speeds = speeds();
  }

  /** When the last anchor is, in seconds. */
  public double end() {
    return seconds[seconds.length - 1];
  }

  /** The least reading there is, in metres. */
  public double least() {
    return Arrays.stream(readings).min().orElseThrow();
  }

  /** The greatest reading there is, in metres. */
  public double most() {
    return Arrays.stream(readings).max().orElseThrow();
  }

  /** The reading at a moment; before the first anchor and after the last the counter rests. */
  public double readingAt(double moment) {
    int i = before(moment);
    if (i < 0) {
      return readings[0];
    }
    if (i == seconds.length - 1 || moment == seconds[i] || readings[i] == readings[i + 1]) {
      return readings[i];
    }
    double span = seconds[i + 1] - seconds[i];
    double u = stroke((moment - seconds[i]) / span, span);
    double v = 1 - u;
    return readings[i] * v * v * (1 + 2 * u)
        + readings[i + 1] * u * u * (3 - 2 * u)
        + span * u * v * (speeds[i] * v - speeds[i + 1] * u);
  }

  /** Whether the counter moves at a moment. */
  public boolean movesAt(double moment) {
    int i = before(moment);
    return i >= 0 && i < seconds.length - 1 && readings[i] != readings[i + 1];
  }

  private int before(double moment) {
    int i = seconds.length - 1;
    while (i >= 0 && seconds[i] > moment) {
      i--;
    }
    return i;
  }

  /** Bends time so that speed swells and ebbs without ever turning back. */
  private static double stroke(double share, double span) {
    double strokes = Math.max(1, StrictMath.rint(span / STROKE));
    double turn = 2 * StrictMath.PI * strokes;
    return share + SURGE * StrictMath.sin(turn * share) / turn;
  }

  /**
   * A speed at every anchor so that the cubics between them do not overshoot: nothing where the
   * camera turns or rests, else the harmonic mean of both sides (Fritsch and Carlson 1980 prove
   * that up to three times the smaller one is safe; from memory).
   */
  private double[] speeds() {
    double[] result = new double[seconds.length];
    for (int i = 1; i < seconds.length - 1; i++) {
      double before = slope(i - 1);
      double after = slope(i);
      result[i] = before * after > 0 ? 2 * before * after / (before + after) : 0;
    }
    return result;
  }

  private double slope(int i) {
    return (readings[i + 1] - readings[i]) / (seconds[i + 1] - seconds[i]);
  }
}
