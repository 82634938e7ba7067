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
    int high = Math.max(highest(a), highest(b));
    if (high < 0) {
      return true;
    }
    int parent = pattern.parent(high);
    return only(a, parent, high) && only(b, parent, high);
  }

  private int highest(Gradient gradient) {
    int high = -1;
    for (int i = 0; i < gradient.count(); i++) {
      high = Math.max(high, pattern.block(gradient.unknown(i)));
    }
    return high;
  }

  private boolean only(Gradient gradient, int parent, int block) {
    for (int i = 0; i < gradient.count(); i++) {
      int of = pattern.block(gradient.unknown(i));
      if (of >= 0 && of != parent && of != block) {
        return false;
      }
    }
    return true;
  }
}
