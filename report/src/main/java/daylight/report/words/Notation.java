package daylight.report.words;

import daylight.line.measure.Printed;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * How a language writes a quantity: decimal sign, spaces and units. What {@link
 * daylight.line.measure.Print} gives goes in, so every number is rounded in one place alone;
 * digits, signs and feet-inches stay as they are.
 */
final class Notation {
  private static final Pattern POINT = Pattern.compile("(?<=\\d)\\.(?=\\d)");
  private static final Pattern WHOLE = Pattern.compile("(?<![\\d.,/])\\d{5,}");
  private static final Pattern LAST_THREE = Pattern.compile("(?<=\\d)(?=(?:\\d{3})+$)");
  private static final Pattern WORD = Pattern.compile("[^\\s\\d./'\"±<>−–]\\S*");
  private static final Pattern CLOCK = Pattern.compile("(\\d{1,2}):(\\d{2})");

  private final Messages messages;
  private final String point;
  private final String thousands;
  private final String space;

  Notation(Messages messages) {
    this.messages = messages;
    this.point = messages.get("figure.point");
    this.thousands = messages.get("figure.thousands");
    this.space = messages.get("figure.space");
  }

  /** A quantity with its unit, or a bare number. */
  String of(String printed) {
    String grouped =
        thousands.isEmpty() ? printed : WHOLE.matcher(printed).replaceAll(this::grouped);
    String pointed = POINT.matcher(grouped).replaceAll(point);
    String named = WORD.matcher(pointed).replaceAll(word -> unit(word.group()));
    return named.replace(" ", space);
  }

  /** The same of a value and its doubt. */
  Printed of(Printed printed) {
    return new Printed(of(printed.value()), of(printed.plusMinus()));
  }

  /** A unit's symbol, as {@link daylight.line.measure.Unit} has it. */
  String unit(String symbol) {
    return messages.find("unit." + symbol).orElse(symbol);
  }

  /** A time of day or a position on the face of a clock, given as {@code 14:05}. */
  String clock(String printed) {
    return CLOCK.matcher(printed).replaceAll(this::hour).replace(" ", space);
  }

  private String hour(MatchResult clock) {
    String key = clock.group(2).equals("00") ? "figure.hour" : "figure.hour_minute";
    return messages.get(key).replace("{0}", clock.group(1)).replace("{1}", clock.group(2));
  }

  private String grouped(MatchResult digits) {
    return LAST_THREE.matcher(digits.group()).replaceAll(thousands);
  }
}
