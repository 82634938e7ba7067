package daylight.line.sonde;

import daylight.line.measure.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What else a depth may have been, if feet and inches were taken for decimal feet or the other way
 * about: 5.6 for 5' 6", 5' 6" for 5.6 or 5.06.
 */
final class FeetAndInches {
  private static final Pattern DECIMAL =
      Pattern.compile("(\\d{1,3})\\.(\\d{1,2})\\s*(ft|feet|foot|')?");
  private static final Pattern PARTS =
      Pattern.compile(
          "(\\d{1,3})\\s*(?:ft|feet|foot|')\\s*(\\d{1,2})\\s*(?:in|inch|inches|\"|'')?");

  private FeetAndInches() {}

  /**
   * The other readings of a text, in metres; none where it is metric or not of that pattern.
   *
   * @param metres what the text was taken for
   */
  static List<Double> others(String written, double metres) {
    String text =
        written
            .strip()
            .toLowerCase(Locale.ROOT)
            .replace('′', '\'')
            .replace('’', '\'')
            .replace('″', '"')
            .replace('”', '"');
    List<Double> others = new ArrayList<>();
    Matcher decimal = DECIMAL.matcher(text);
    if (decimal.matches()) {
      double feet = Double.parseDouble(decimal.group(1) + "." + decimal.group(2));
      int inches = Integer.parseInt(decimal.group(2));
      // A bare number may be of metres; then the value says so.
      if (near(metres, feet) && inches < 12) {
        add(others, metres, Integer.parseInt(decimal.group(1)) + inches / 12.0);
      }
      // Ten inches written as .10 lose their nought on the way.
      if (near(metres, feet) && decimal.group(2).equals("1")) {
        add(others, metres, Integer.parseInt(decimal.group(1)) + 10 / 12.0);
      }
    }
    Matcher parts = PARTS.matcher(text);
    if (parts.matches()) {
      int feet = Integer.parseInt(parts.group(1));
      int inches = Integer.parseInt(parts.group(2));
      if (inches < 10) {
        add(others, metres, feet + inches / 10.0);
      }
      add(others, metres, feet + inches / 100.0);
    }
    return others;
  }

  private static boolean near(double metres, double feet) {
    return StrictMath.abs(metres - feet * Unit.FOOT.metres()) < 1e-6;
  }

  private static void add(List<Double> others, double metres, double feet) {
    double other = feet * Unit.FOOT.metres();
    if (StrictMath.abs(other - metres) > 1e-6) {
      others.add(other);
    }
  }
}
