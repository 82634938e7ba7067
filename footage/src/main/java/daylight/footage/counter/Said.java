package daylight.footage.counter;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A figure in a line of text.
 *
 * @param steps the figure in units of its last place; inches where it is in feet and inches
 * @param places decimals; {@link #INCHES} for feet and inches
 * @param shown the figure as it stands there, without its unit
 * @param unit what follows, with a space before it where there is one; empty for nothing
 * @param from where its first digit stands in the line
 * @param to behind its last
 */
record Said(long steps, int places, String shown, String unit, int from, int to) {
  static final int INCHES = -1;

  private static final int PER_FOOT = 12;

  /**
   * A mark of feet or inches has a cell as wide as a digit's, and may seem to stand apart; which of
   * the two it is is told by its place.
   */
  private static final Pattern FEET =
      Pattern.compile(
          "(?<![\\d.:/'-])([+-]?)(\\d{1,5}) ?['\"]( ?)(\\d{1,2})(?: ?('{1,2}|\"{1,2}))?(?![\\d:/.])");

  private static final Pattern NUMBER =
      Pattern.compile(
          "(?<![\\d.:/'-])(?<!\\d ?: )([+-]?)(\\d{1,6})(?:\\.(\\d{1,3}))?(?![\\d:/.-]| ?[:'\"])( ?[ftFTmM%?]{1,3})?");

  /** All there are in a line, from left to right. */
  static List<Said> in(String line) {
    List<Said> found = new ArrayList<>();
    Matcher feet = FEET.matcher(line);
    while (feet.find()) {
      long inches = Long.parseLong(feet.group(4));
      if (inches < PER_FOOT) {
        long steps = Long.parseLong(feet.group(2)) * PER_FOOT + inches;
        String mark = feet.group(5) == null ? "" : "\"";
        String shown = feet.group(1) + feet.group(2) + "'" + feet.group(3) + feet.group(4) + mark;
        found.add(
            new Said(signed(feet.group(1), steps), INCHES, shown, "", feet.start(2), feet.end(4)));
      }
    }
    if (!found.isEmpty()) {
      return found;
    }
    Matcher number = NUMBER.matcher(line);
    while (number.find()) {
      String decimals = number.group(3) == null ? "" : number.group(3);
      String unit = number.group(4) == null ? "" : number.group(4);
      String shown = number.group().substring(0, number.group().length() - unit.length());
      long steps = Long.parseLong(number.group(2) + decimals);
      int end = number.group(3) == null ? number.end(2) : number.end(3);
      found.add(
          new Said(
              signed(number.group(1), steps),
              decimals.length(),
              shown,
              unit,
              number.start(2),
              end));
    }
    return found;
  }

  /** Digits before the point, or of the feet. */
  int wholeDigits() {
    int digits = 0;
    for (int i = 0; i < shown.length(); i++) {
      char one = shown.charAt(i);
      if (Character.isDigit(one)) {
        digits++;
      } else if (one != '+' && one != '-') {
        break;
      }
    }
    return digits;
  }

  /** Whether it begins with a zero that could be left out. */
  boolean filled() {
    int first = shown.startsWith("+") || shown.startsWith("-") ? 1 : 0;
    return shown.charAt(first) == '0' && wholeDigits() > 1;
  }

  /**
   * Whether it is written as where zeros fill up to so many digits.
   *
   * @param signed whether a plus stands before what is not negative
   */
  boolean fits(int zeros, boolean signed) {
    int digits = wholeDigits();
    if (signed && Character.isDigit(shown.charAt(0))) {
      return false;
    }
    boolean whole = places != INCHES || shown.endsWith("\"");
    return whole && (digits == zeros || (digits > zeros && !filled()));
  }

  private static long signed(String sign, long steps) {
    return sign.equals("-") ? -steps : steps;
  }
}
