package daylight.report.exchange;

import java.math.BigDecimal;

/** Values as text formats write them. */
final class Written {
  private Written() {}

  /** A value as text that no language changes: decimal point, ISO days, true and false. */
  static String of(Object value) {
    return value instanceof Double number ? number(number) : value.toString();
  }

  /** A number in plain digits. */
  static String number(double value) {
    return value == 0
        ? "0"
        : new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
  }
}
