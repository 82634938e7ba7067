package daylight.footage.counter;

import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/**
 * Says what a glyph may be: a small network of two layers, taught from open typefaces by the
 * teacher in this room's tests, whose weights are a resource. It gives a first opinion; a counter's
 * own arithmetic has the last word.
 */
final class Letters {
  /** What it tells apart; the last stands for everything else. */
  static final String KINDS = "0123456789.:-+'/ftFTmM%\"?";

  static final int HIDDEN = 96;

  private static final String RESOURCE = "letters.bin";

  private final float[][] first;
  private final float[][] second;

  Letters(float[][] first, float[][] second) {
    this.first = first;
    this.second = second;
  }

  /** As taught. */
  static Letters taught() {
    try (InputStream in = Letters.class.getResourceAsStream(RESOURCE)) {
      if (in == null) {
        throw new IllegalStateException("the resource " + RESOURCE + " is missing");
      }
      DataInputStream data = new DataInputStream(in);
      return new Letters(
          read(data, HIDDEN, Shape.CELLS + 1), read(data, KINDS.length(), HIDDEN + 1));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static float[][] read(DataInputStream data, int rows, int columns) throws IOException {
    float[][] weights = new float[rows][columns];
    for (float[] row : weights) {
      for (int i = 0; i < columns; i++) {
        row[i] = data.readShort() / 1024f;
      }
    }
    return weights;
  }

  /** The share of belief in each kind, together 1. */
  float[] opinion(float[] shape) {
    float[] middle = new float[HIDDEN];
    for (int i = 0; i < HIDDEN; i++) {
      middle[i] = Math.max(0, sum(first[i], shape));
    }
    float[] last = new float[KINDS.length()];
    float most = Float.NEGATIVE_INFINITY;
    for (int i = 0; i < last.length; i++) {
      last[i] = sum(second[i], middle);
      most = Math.max(most, last[i]);
    }
    float all = 0;
    for (int i = 0; i < last.length; i++) {
      last[i] = (float) StrictMath.exp(last[i] - most);
      all += last[i];
    }
    for (int i = 0; i < last.length; i++) {
      last[i] /= all;
    }
    return last;
  }

  private static float sum(float[] weights, float[] values) {
    float sum = weights[values.length];
    for (int i = 0; i < values.length; i++) {
      sum += weights[i] * values[i];
    }
    return sum;
  }
}
