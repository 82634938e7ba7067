package daylight.line.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Numbers as digits, the same in every locale. A negative number carries the minus sign U+2212; one
 * that rounds to zero carries none.
 */
final class Digits {
  private Digits() {}

  /** Rounds half away from zero; negative decimals round to tens, hundreds and so on. */
  static String fixed(double value, int decimals) {
    return plain(BigDecimal.valueOf(finite(value)).setScale(decimals, RoundingMode.HALF_UP));
  }

  /** Rounds a number that is not negative up, so that an uncertainty is never understated. */
  static String ceiling(double value, int decimals) {
    return plain(BigDecimal.valueOf(finite(value)).setScale(decimals, RoundingMode.CEILING));
  }

  /** As {@link #fixed}, without zeros at the end of the decimals. */
  static String atMost(double value, int decimals) {
    String digits = fixed(value, decimals);
    return digits.contains(".") ? digits.replaceAll("\\.?0+$", "") : digits;
  }

  /** To the nearest of so many parts of one, as {@code 1 1/2}, {@code 3/4} or {@code 2}. */
  static String fraction(double value, int parts) {
    long total = Math.round(Math.abs(finite(value)) * parts);
    long whole = total / parts;
    long top = total % parts;
    long bottom = parts;
    while (top != 0 && top % 2 == 0 && bottom % 2 == 0) {
      top /= 2;
      bottom /= 2;
    }
    String share = top + "/" + bottom;
    String digits = top == 0 ? Long.toString(whole) : whole == 0 ? share : whole + " " + share;
    return sign(value < 0 && total != 0) + digits;
  }

  /** Whole inches as feet and inches; below a foot the feet are left out. */
  static String feetInches(long inches) {
    long size = Math.abs(inches);
    String digits = size < 12 ? size + "\"" : size / 12 + "' " + size % 12 + "\"";
    return sign(inches < 0) + digits;
  }

  static double finite(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("only a finite value can be shown, was " + value);
    }
    return value;
  }

  private static String plain(BigDecimal rounded) {
    return sign(rounded.signum() < 0) + rounded.abs().toPlainString();
  }

  private static String sign(boolean negative) {
    return negative ? "−" : "";
  }
}
