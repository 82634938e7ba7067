package daylight.line.normal;

import java.util.Optional;

/**
 * The Cholesky factor of normal equations on a tree with a border.
 *
 * <p>With the block matrix of a block D, its coupling A to the parent and B to the border, D =
 * L·Lᵀ; what is kept is L, L⁻¹Aᵀ and L⁻¹Bᵀ. Parent and border lose what the block explains.
 */
public final class Factor {
  private final Pattern pattern;

  /** In {@code own} L, in {@code link} and {@code edge} the transposes of L⁻¹Aᵀ and L⁻¹Bᵀ. */
  private final Blocks factor;

  private Factor(Pattern pattern, Blocks factor) {
    this.pattern = pattern;
    this.factor = factor;
  }

  static Optional<Factor> of(Pattern pattern, Blocks matrix, double damping) {
    raise(pattern, matrix, damping);
    int m = pattern.border();
    for (int block = pattern.blocks() - 1; block >= 0; block--) {
      int n = pattern.size(block);
      double[] own = matrix.own[block];
      if (!Small.cholesky(own, n)) {
        return Optional.empty();
      }
      int parent = pattern.parent(block);
      int p = parent < 0 ? 0 : pattern.size(parent);
      double[] link = matrix.link[block];
      double[] edge = matrix.edge[block];
      Small.forwardRows(own, n, link, p);
      Small.forwardRows(own, n, edge, m);
      if (parent >= 0) {
        Small.subtractSquare(matrix.own[parent], link, p, n);
        Small.subtractProduct(matrix.edge[parent], p, edge, m, link, p, n);
      }
      Small.subtractSquare(matrix.border, edge, m, n);
    }
    return Small.cholesky(matrix.border, m)
        ? Optional.of(new Factor(pattern, matrix))
        : Optional.empty();
  }

  private static void raise(Pattern pattern, Blocks matrix, double damping) {
    if (damping > 0) {
      for (int block = 0; block < pattern.blocks(); block++) {
        Small.raiseDiagonal(matrix.own[block], pattern.size(block), damping);
      }
      Small.raiseDiagonal(matrix.border, pattern.border(), damping);
    }
  }

  /** The solution for a right-hand side; C·g for a gradient g written out in full. */
  public double[] solve(double[] right) {
    double[] x = right.clone();
    int m = pattern.border();
    for (int block = pattern.blocks() - 1; block >= 0; block--) {
      int n = pattern.size(block);
      int at = pattern.first(block);
      int parent = pattern.parent(block);
      Small.forward(factor.own[block], n, x, at);
      if (parent >= 0) {
        Small.subtractTimes(
            x, pattern.first(parent), factor.link[block], pattern.size(parent), n, x, at);
      }
      Small.subtractTimes(x, 0, factor.edge[block], m, n, x, at);
    }
    Small.forward(factor.border, m, x, 0);
    Small.backward(factor.border, m, x, 0);
    for (int block = 0; block < pattern.blocks(); block++) {
      int n = pattern.size(block);
      int at = pattern.first(block);
      int parent = pattern.parent(block);
      if (parent >= 0) {
        Small.subtractTransposed(
            x, at, factor.link[block], pattern.size(parent), n, x, pattern.first(parent));
      }
      Small.subtractTransposed(x, at, factor.edge[block], m, n, x, 0);
      Small.backward(factor.own[block], n, x, at);
    }
    return x;
  }

  /** C·g: how much every unknown goes with a figure. */
  public double[] follows(Gradient gradient) {
    double[] right = new double[pattern.size()];
    for (int i = 0; i < gradient.count(); i++) {
      right[gradient.unknown(i)] += gradient.value(i);
    }
    return solve(right);
  }

  /** The covariance of every unknown with its neighbours and with the border. */
  public Covariance covariance() {
    Blocks c = new Blocks(pattern);
    int m = pattern.border();
    Small.inverse(factor.border, m, c.border);
    for (int block = 0; block < pattern.blocks(); block++) {
      int n = pattern.size(block);
      int parent = pattern.parent(block);
      int p = parent < 0 ? 0 : pattern.size(parent);
      // The block given parent and border: −Gᵀ of the parent, −Hᵀ of the border, rows by those.
      double[] g = factor.link[block].clone();
      double[] h = factor.edge[block].clone();
      Small.backwardRows(factor.own[block], n, g, p);
      Small.backwardRows(factor.own[block], n, h, m);
      double[] link = c.link[block];
      double[] edge = c.edge[block];
      if (parent >= 0) {
        Small.subtractRows(link, p, n, c.own[parent], p, g);
        Small.subtractColumns(link, p, n, c.edge[parent], m, h);
        Small.subtractRows(edge, m, n, c.edge[parent], p, g);
      }
      Small.subtractRows(edge, m, n, c.border, m, h);
      Small.inverse(factor.own[block], n, c.own[block]);
      Small.subtractInner(c.own[block], n, link, g, p);
      Small.subtractInner(c.own[block], n, edge, h, m);
    }
    return new Covariance(pattern, c, this);
  }
}
