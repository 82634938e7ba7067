package daylight.line.normal;

/** The covariance of the unknowns, for neighbours at once and for any figure by solving. */
public final class Covariance {
  private final Pattern pattern;
  private final Blocks blocks;
  private final Factor factor;

  Covariance(Pattern pattern, Blocks blocks, Factor factor) {
    this.pattern = pattern;
    this.blocks = blocks;
    this.factor = factor;
  }

  /** The variance of a figure. */
  public double variance(Gradient gradient) {
    return of(gradient, gradient);
  }

  /** The covariance of two figures. */
  public double of(Gradient a, Gradient b) {
    if (!near(a, b)) {
      return b.dot(factor.follows(a));
    }
    double sum = 0;
    for (int i = 0; i < a.count(); i++) {
      double row = 0;
      for (int j = 0; j < b.count(); j++) {
        row += b.value(j) * blocks.get(a.unknown(i), b.unknown(j));
      }
      sum += a.value(i) * row;
    }
    return sum;
  }

  /** Whether all unknowns of two figures are of the border or of one block and its parent. */
  private boolean near(Gradient a, Gradient b) {
    int low = Integer.MAX_VALUE;
    int high = -1;
    for (int i = 0; i < a.count() + b.count(); i++) {
      int unknown = i < a.count() ? a.unknown(i) : b.unknown(i - a.count());
      int block = pattern.block(unknown);
      if (block >= 0) {
        low = Math.min(low, block);
        high = Math.max(high, block);
      }
    }
    if (high < 0 || low == high) {
      return true;
    }
    if (pattern.parent(high) != low) {
      return false;
    }
    return only(a, low, high) && only(b, low, high);
  }

  private boolean only(Gradient gradient, int low, int high) {
    for (int i = 0; i < gradient.count(); i++) {
      int block = pattern.block(gradient.unknown(i));
      if (block >= 0 && block != low && block != high) {
        return false;
      }
    }
    return true;
  }
}
