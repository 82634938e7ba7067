package daylight.line.course;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The pipes of a tree as first guessed, and the unknowns that are shared along them: how much
 * longer each limb is than the guess, scales, slack, zeros, the planes of surfaces. Those come
 * first in the vector of unknowns, so that they can be used before the course itself is laid out.
 */
final class Layout {
  /** No limb is shorter than a tenth of its first guess: a pipe has a length. */
  private static final double SHRUNK = -0.9;

  private final Tree tree;
  private final boolean heights;
  private final double[] lengths;
  private final Map<String, Integer> named = new LinkedHashMap<>();
  private boolean closed;

  /**
   * @param lengths first guess of the length of each limb, metres
   * @param heights whether anything tells heights; without, the line is laid out flat
   */
  Layout(Tree tree, double[] lengths, boolean heights) {
    this.tree = tree;
    this.heights = heights;
    this.lengths = lengths.clone();
    for (int limb = 0; limb < lengths.length; limb++) {
      named("stretch/" + limb);
    }
  }

  Tree tree() {
    return tree;
  }

  boolean heights() {
    return heights;
  }

  /** How many unknowns are shared. */
  int shared() {
    return named.size();
  }

  /** First guess of a limb's length, metres. */
  double length0(int limb) {
    return lengths[limb];
  }

  /** A limb's length for these unknowns, metres. */
  double length(double[] x, int limb) {
    return lengths[limb] * (1 + x[stretch(limb)]);
  }

  /** By what share a limb is longer than the first guess. */
  int stretch(int limb) {
    return limb;
  }

  /** Whether every limb has a length above nothing for these unknowns. */
  boolean hasLengths(double[] x) {
    for (int limb = 0; limb < lengths.length; limb++) {
      if (!(x[stretch(limb)] > SHRUNK)) {
        return false;
      }
    }
    return true;
  }

  /** From here on the shared unknowns keep their number. */
  void close() {
    closed = true;
  }

  /** The shared unknown of that name, made at the first call. */
  int named(String name) {
    Integer index = named.get(name);
    if (index == null) {
      if (closed) {
        throw new IllegalStateException("no unknown was laid out for " + name);
      }
      index = named.size();
      named.put(name, index);
    }
    return index;
  }
}
