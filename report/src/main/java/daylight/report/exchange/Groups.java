package daylight.report.exchange;

import daylight.line.survey.PlanPoint;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The pairs of code and value that a drawing of release 12 is written in, in its code page.
 *
 * @param unit of the drawing, metres
 */
record Groups(StringBuilder out, double unit) {
  /** A text of an entity's own data may be so long. */
  private static final int LONGEST = 240;

  private static final int DECIMALS = 5;

  /** The name under which an entity's own data stand. */
  static final String APPLICATION = "DAYLIGHT";

  Groups(double unit) {
    this(new StringBuilder(), unit);
  }

  byte[] bytes() {
    return out.toString().getBytes(DrawingText.CODE_PAGE);
  }

  Groups put(int code, String value) {
    out.append(code).append("\r\n").append(value).append("\r\n");
    return this;
  }

  Groups put(int code, int value) {
    return put(code, Integer.toString(value));
  }

  /** A number in units of the drawing. */
  Groups size(int code, double value) {
    String digits =
        BigDecimal.valueOf(value)
            .setScale(DECIMALS, RoundingMode.HALF_UP)
            .stripTrailingZeros()
            .toPlainString();
    return put(code, digits.equals("0") ? "0.0" : digits.contains(".") ? digits : digits + ".0");
  }

  /** Metres, from code on: x, y and, ten codes on each, z. */
  Groups point(int code, PlanPoint at, @Nullable Double height) {
    return size(code, at.x() / unit)
        .size(code + 10, at.y() / unit)
        .size(code + 20, height == null ? 0 : height / unit);
  }

  Groups entity(String type, String layer) {
    return put(0, type).put(8, layer);
  }

  /**
   * What is known of an entity, as {@code name=value}; what is long goes on with {@code name+=}.
   */
  Groups data(Map<String, String> values) {
    if (values.isEmpty()) {
      return this;
    }
    put(1001, APPLICATION);
    values.forEach(this::datum);
    return this;
  }

  private void datum(String name, String value) {
    String sign = "=";
    StringBuilder part = new StringBuilder();
    for (int at = 0; at < value.length(); at = value.offsetByCodePoints(at, 1)) {
      String one = DrawingText.escaped(Character.toString(value.codePointAt(at)));
      if (name.length() + 2 + part.length() + one.length() > LONGEST) {
        put(1000, name + sign + part);
        part.setLength(0);
        sign = "+=";
      }
      part.append(one);
    }
    put(1000, name + sign + part);
  }
}
