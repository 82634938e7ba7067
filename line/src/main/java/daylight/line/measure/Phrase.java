package daylight.line.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A quantity taken apart: one sign for the whole and numbers, each with the text up to the next, so
 * that {@code -4' 7 1/2"} is minus, (4, {@code '}), (7.5, {@code "}). No unit is understood yet.
 *
 * @param negative whether a minus sign leads
 * @param terms at least one
 */
record Phrase(boolean negative, List<Term> terms) {

  /**
   * A number and what follows it.
   *
   * @param number not negative
   * @param digits the number as typed
   * @param words what follows, in lower case with single blanks; empty when nothing does
   */
  record Term(double number, String digits, String words) {
    /** What follows without its blanks, as units are named. */
    String unit() {
      return words.replace(" ", "");
    }

    boolean isWhole() {
      return number == StrictMath.rint(number);
    }
  }

  /** Keeps the work on a hostile text small. */
  private static final int LONGEST = 1000;

  /** A mixed or simple fraction, or a decimal number without exponent. */
  private static final Pattern NUMBER =
      Pattern.compile("(?:([0-9]+)[ -])?([0-9]+)/([0-9]+)|[0-9]+(?:\\.[0-9]+)?|\\.[0-9]+");

  private static final Pattern EXPONENT = Pattern.compile("e[+-]?[0-9]");

  /** A power that belongs to a unit, such as the 3 of {@code m3/h}, not a number of its own. */
  private static final Pattern POWER = Pattern.compile("[23](?=$|[/·)]| per)");

  Phrase {
    terms = List.copyOf(terms);
  }

  Term first() {
    return terms.getFirst();
  }

  boolean isSingle() {
    return terms.size() == 1;
  }

  double signed(double size) {
    return negative ? -size : size;
  }

  /** Takes {@link PlainText} apart. */
  static Parsed<Phrase> of(String plain) {
    if (plain.isEmpty()) {
      return Parsed.refused(Refusal.EMPTY);
    }
    if (plain.length() > LONGEST) {
      return Parsed.refused(Refusal.TOO_LONG);
    }
    boolean signed = plain.startsWith("-") || plain.startsWith("+");
    String unsigned = signed ? plain.substring(1).strip() : plain;
    List<Term> terms = new ArrayList<>();
    int at = 0;
    while (at < unsigned.length()) {
      Matcher number = NUMBER.matcher(unsigned).region(at, unsigned.length());
      if (!number.lookingAt()) {
        return Parsed.refused(Refusal.NOT_A_NUMBER);
      }
      int wordsFrom = number.end();
      if (unsigned.startsWith(",", wordsFrom)) {
        return Parsed.refused(Refusal.AMBIGUOUS_COMMA);
      }
      if (goesOn(unsigned, wordsFrom) || !isSound(number)) {
        return Parsed.refused(Refusal.NOT_A_NUMBER);
      }
      at = nextNumber(unsigned, wordsFrom);
      String words = tidy(unsigned.substring(wordsFrom, at), at == unsigned.length());
      terms.add(new Term(value(number), number.group(), words));
    }
    return terms.isEmpty()
        ? Parsed.refused(Refusal.NOT_A_NUMBER)
        : new Parsed.Value<>(new Phrase(plain.startsWith("-"), terms));
  }

  /** Whether the number is only the head of something that is none, as in 5.5.5 or 1e3. */
  private static boolean goesOn(String text, int at) {
    if (text.startsWith(".", at)) {
      return true;
    }
    if (text.startsWith("/", at) && at + 1 < text.length() && isDigit(text.charAt(at + 1))) {
      return true;
    }
    return EXPONENT.matcher(text).region(at, text.length()).lookingAt();
  }

  /** A fraction must not divide by zero, and beside a whole number it must be less than one. */
  private static boolean isSound(Matcher number) {
    if (number.group(3) == null) {
      return true;
    }
    double top = Double.parseDouble(number.group(2));
    double bottom = Double.parseDouble(number.group(3));
    return bottom > 0 && (number.group(1) == null || top < bottom);
  }

  private static double value(Matcher number) {
    if (number.group(3) == null) {
      return Double.parseDouble(number.group());
    }
    double whole = number.group(1) == null ? 0 : Double.parseDouble(number.group(1));
    return whole + Double.parseDouble(number.group(2)) / Double.parseDouble(number.group(3));
  }

  private static int nextNumber(String text, int from) {
    for (int at = from; at < text.length(); at++) {
      boolean point = text.charAt(at) == '.' && at + 1 < text.length();
      boolean starts = isDigit(text.charAt(at)) || (point && isDigit(text.charAt(at + 1)));
      if (starts && !isPower(text, from, at)) {
        return at;
      }
    }
    return text.length();
  }

  private static boolean isPower(String text, int from, int at) {
    boolean afterUnit = at > from && "mtn^".indexOf(text.charAt(at - 1)) >= 0;
    return afterUnit && POWER.matcher(text).region(at, text.length()).lookingAt();
  }

  /** Drops the points of abbreviations, and before a further number the comma or hyphen between. */
  private static String tidy(String words, boolean last) {
    String tidy = words.strip().replace(". ", " ");
    if (!last && (tidy.endsWith("-") || tidy.endsWith(","))) {
      tidy = tidy.substring(0, tidy.length() - 1).strip();
    }
    return tidy.endsWith(".") ? tidy.substring(0, tidy.length() - 1) : tidy;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }
}
