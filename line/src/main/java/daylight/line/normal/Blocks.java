package daylight.line.normal;

/**
 * A symmetric matrix of that pattern: only neighbours on the tree, and the border, share elements.
 */
final class Blocks {
  private final Pattern pattern;

  /** Of each block with itself, row by row, both halves. */
  final double[][] own;

  /** Of each block (columns) with its parent (rows); empty for a root. */
  final double[][] link;

  /** Of each block (columns) with the border (rows). */
  final double[][] edge;

  /** Of the border with itself, both halves. */
  final double[] border;

  Blocks(Pattern pattern) {
    this.pattern = pattern;
    int n = pattern.blocks();
    own = new double[n][];
    link = new double[n][];
    edge = new double[n][];
    for (int block = 0; block < n; block++) {
      int size = pattern.size(block);
      int parent = pattern.parent(block);
      own[block] = new double[size * size];
      link[block] = new double[parent < 0 ? 0 : pattern.size(parent) * size];
      edge[block] = new double[pattern.border() * size];
    }
    border = new double[pattern.border() * pattern.border()];
  }

  Blocks copy() {
    Blocks copy = new Blocks(pattern);
    for (int block = 0; block < own.length; block++) {
      System.arraycopy(own[block], 0, copy.own[block], 0, own[block].length);
      System.arraycopy(link[block], 0, copy.link[block], 0, link[block].length);
      System.arraycopy(edge[block], 0, copy.edge[block], 0, edge[block].length);
    }
    System.arraycopy(border, 0, copy.border, 0, border.length);
    return copy;
  }

  /** Adds to one element and to its mirror image. */
  void add(int a, int b, double value) {
    int p = pattern.block(a);
    int q = pattern.block(b);
    if (p < 0 && q < 0) {
      put(border, pattern.border(), a, b, value);
    } else if (p == q) {
      put(own[p], pattern.size(p), a - pattern.first(p), b - pattern.first(p), value);
    } else if (p < 0) {
      edge[q][a * pattern.size(q) + b - pattern.first(q)] += value;
    } else if (q < 0) {
      edge[p][b * pattern.size(p) + a - pattern.first(p)] += value;
    } else if (pattern.parent(p) == q) {
      link[p][(b - pattern.first(q)) * pattern.size(p) + a - pattern.first(p)] += value;
    } else if (pattern.parent(q) == p) {
      link[q][(a - pattern.first(p)) * pattern.size(q) + b - pattern.first(q)] += value;
    } else {
      throw new IllegalArgumentException(
          "an equation must stay among neighbours, tied blocks " + p + " and " + q);
    }
  }

  private static void put(double[] square, int size, int i, int j, double value) {
    square[i * size + j] += value;
    if (i != j) {
      square[j * size + i] += value;
    }
  }

  /** One element; both unknowns must be of neighbouring blocks or of the border. */
  double get(int a, int b) {
    int p = pattern.block(a);
    int q = pattern.block(b);
    if (p < 0 && q < 0) {
      return border[a * pattern.border() + b];
    }
    if (p == q) {
      return own[p][(a - pattern.first(p)) * pattern.size(p) + b - pattern.first(p)];
    }
    if (p < 0) {
      return edge[q][a * pattern.size(q) + b - pattern.first(q)];
    }
    if (q < 0) {
      return edge[p][b * pattern.size(p) + a - pattern.first(p)];
    }
    if (pattern.parent(p) == q) {
      return link[p][(b - pattern.first(q)) * pattern.size(p) + a - pattern.first(p)];
    }
    return link[q][(a - pattern.first(p)) * pattern.size(q) + b - pattern.first(q)];
  }
}
