package daylight.line.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.function.UnaryOperator;

/** Sines and cosines to forty digits by their series, and roots by halving an interval. */
final class HighPrecision {
  static final MathContext DIGITS = new MathContext(40);
  static final BigDecimal TWO = BigDecimal.valueOf(2);

  private HighPrecision() {}

  static BigDecimal sine(BigDecimal x) {
    return series(x, x, 1);
  }

  static BigDecimal cosine(BigDecimal x) {
    return series(BigDecimal.ONE, x, 0);
  }

  private static BigDecimal series(BigDecimal first, BigDecimal x, int power) {
    BigDecimal square = x.multiply(x, DIGITS);
    BigDecimal term = first;
    BigDecimal sum = first;
    for (int n = power + 2; n < 90; n += 2) {
      BigDecimal down = BigDecimal.valueOf((long) n * (n - 1));
      term = term.multiply(square, DIGITS).divide(down, DIGITS).negate();
      sum = sum.add(term, DIGITS);
    }
    return sum;
  }

  /** Where a rising function is zero. */
  static BigDecimal root(UnaryOperator<BigDecimal> rising, double from, double to) {
    BigDecimal low = BigDecimal.valueOf(from);
    BigDecimal high = BigDecimal.valueOf(to);
    for (int i = 0; i < 120; i++) {
      BigDecimal middle = low.add(high).divide(TWO, DIGITS);
      if (rising.apply(middle).signum() < 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
