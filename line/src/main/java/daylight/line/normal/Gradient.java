package daylight.line.normal;

import java.util.Arrays;

/** The derivatives of one figure by the few unknowns it depends on. Grows by {@code add}. */
public final class Gradient {
  private int[] unknowns = new int[8];
  private double[] values = new double[8];
  private int count;

  /** Adds to the derivative by one unknown. */
  public void add(int unknown, double value) {
    for (int i = 0; i < count; i++) {
      if (unknowns[i] == unknown) {
        values[i] += value;
        return;
      }
    }
    if (count == unknowns.length) {
      unknowns = Arrays.copyOf(unknowns, 2 * count);
      values = Arrays.copyOf(values, 2 * count);
    }
    unknowns[count] = unknown;
    values[count++] = value;
  }

  /** Adds a multiple of another gradient. */
  public void add(Gradient other, double times) {
    for (int i = 0; i < other.count; i++) {
      add(other.unknowns[i], times * other.values[i]);
    }
  }

  /** Adds another gradient. */
  public void add(Gradient other) {
    add(other, 1);
  }

  /** How many unknowns it has a derivative by. */
  public int count() {
    return count;
  }

  /** The i-th of them. */
  public int unknown(int i) {
    return unknowns[i];
  }

  /** The derivative by the i-th of them. */
  public double value(int i) {
    return values[i];
  }

  /** The change of the figure for a change of every unknown. */
  public double dot(double[] change) {
    double sum = 0;
    for (int i = 0; i < count; i++) {
      sum += values[i] * change[unknowns[i]];
    }
    return sum;
  }
}
