package daylight.line.course;

import java.util.LinkedHashMap;
import java.util.Map;

/** Where each unknown of a line stands in the vector of unknowns. */
final class Layout {
  /** Length of one straight step of a limb, metres, before it is fitted to whole steps. */
  private static final double STEP = 0.3;

  /** No limb is shorter than a tenth of its first guess: a pipe has a length. */
  private static final double SHRUNK = -0.9;

  private static final int FEWEST_STEPS = 4;
  private static final int MOST_STEPS = 150;

  private final Tree tree;
  private final boolean heights;
  private final double[] lengths;
  private final int[] steps;
  private final int[] turns;
  private final int[] pitches;
  private final int[] stretches;
  private final Map<String, Integer> named = new LinkedHashMap<>();
  private int size;
  private boolean closed;

  /**
   * @param lengths first guess of the length of each limb, metres
   * @param heights whether anything tells heights; without, the line is laid out flat
   */
  Layout(Tree tree, double[] lengths, boolean heights) {
    this.tree = tree;
    this.heights = heights;
    this.lengths = lengths.clone();
    int limbs = tree.limbs().size();
    steps = new int[limbs];
    turns = new int[limbs];
    pitches = new int[limbs];
    stretches = new int[limbs];
    size = heights ? 3 : 2;
    for (int limb = 0; limb < limbs; limb++) {
      steps[limb] = Math.clamp((int) Math.ceil(lengths[limb] / STEP), FEWEST_STEPS, MOST_STEPS);
      turns[limb] = size;
      size += steps[limb];
      pitches[limb] = size;
      size += heights ? steps[limb] : 0;
      stretches[limb] = size++;
    }
  }

  Tree tree() {
    return tree;
  }

  boolean heights() {
    return heights;
  }

  int size() {
    return size;
  }

  /** First guess of a limb's length, metres. */
  double length0(int limb) {
    return lengths[limb];
  }

  /** Straight steps of a limb. */
  int steps(int limb) {
    return steps[limb];
  }

  /** The change of bearing at the start of step j of a limb; the bearing itself at the root. */
  int turn(int limb, int j) {
    return turns[limb] + j;
  }

  /** The change of pitch at the start of step j of a limb; the pitch itself at the root. */
  int pitch(int limb, int j) {
    return pitches[limb] + j;
  }

  /** By what share a limb is longer than the first guess. */
  int stretch(int limb) {
    return stretches[limb];
  }

  /** Whether every limb has a length above nothing for these unknowns. */
  boolean hasLengths(double[] x) {
    for (int stretch : stretches) {
      if (!(x[stretch] > SHRUNK)) {
        return false;
      }
    }
    return true;
  }

  /** From here on the vector of unknowns keeps its size. */
  void close() {
    closed = true;
  }

  /** The unknown of that name, made at the first call. */
  int named(String name) {
    Integer index = named.get(name);
    if (index == null) {
      if (closed) {
        throw new IllegalStateException("no unknown was laid out for " + name);
      }
      index = size++;
      named.put(name, index);
    }
    return index;
  }
}
