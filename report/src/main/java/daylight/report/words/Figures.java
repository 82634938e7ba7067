package daylight.report.words;

import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import daylight.line.measure.Print;
import daylight.line.measure.Printed;
import daylight.line.measure.Shown;
import daylight.line.measure.Statement;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** Shows one argument of a sentence. */
final class Figures {
  private static final double NEXT_TO_NOTHING = 1e-6;

  /** What a company's own table may add to: there an id may have no words. */
  private static final List<String> OPEN = List.of("kind.", "soil.", "surface.");

  private final Messages messages;
  private final Notation notation;
  private final Shown shown;
  private final Function<Statement, String> sayer;

  /**
   * @param sayer says a part of a sentence
   */
  Figures(Messages messages, Shown shown, Function<Statement, String> sayer) {
    this.messages = messages;
    this.notation = new Notation(messages);
    this.shown = shown;
    this.sayer = sayer;
  }

  String show(Argument argument) {
    return switch (argument) {
      case Argument.Text(String text) -> text;
      case Argument.Number(double value) -> notation.of(plain(value));
      case Argument.Count(long count) -> notation.of(Long.toString(count));
      case Argument.Length(double metres) -> notation.of(Print.length(metres, shown));
      case Argument.UncertainLength(Measured metres) -> giveOrTake(Print.length(metres, shown));
      case Argument.Bore(double metres) -> notation.of(Print.bore(metres, shown));
      case Argument.Small(double metres) -> notation.of(Print.small(metres, shown));
      case Argument.UncertainSlope(Measured slope) -> giveOrTake(slope(slope));
      case Argument.UncertainAngle(Measured radians) -> giveOrTake(angle(radians));
      case Argument.Probability(double value) -> probability(value);
      case Argument.Term(String key) -> term(key);
      case Argument.Day(LocalDate date) -> day(date);
      case Argument.Several(List<Argument> items) ->
          join(items.stream().map(this::show).toList(), "join.and");
      case Argument.Either(List<Argument> items) ->
          join(items.stream().map(this::show).toList(), "join.or");
      case Argument.Said(Statement statement) -> sayer.apply(statement);
      case Argument.Quantity quantity -> quantity(quantity);
      case Argument.Label(String label) -> label;
      case Argument.Choices(List<String> choices) -> join(choices, "join.or");
      case Argument.Reason(var refusal) ->
          messages.get("refusal." + refusal.name().toLowerCase(Locale.ROOT));
    };
  }

  /** What {@link Print} gives, in the way of the language. */
  Notation notation() {
    return notation;
  }

  private String quantity(Argument.Quantity quantity) {
    String printed = Print.of(quantity.dimension(), quantity.value(), shown);
    return quantity.dimension() == Dimension.CLOCK ? notation.clock(printed) : notation.of(printed);
  }

  /** What no message knows is shown by its id, if it may come from a company's table. */
  private String term(String key) {
    return OPEN.stream()
        .filter(key::startsWith)
        .findFirst()
        .map(
            start ->
                messages.find(key).orElseGet(() -> key.substring(start.length()).replace('-', ' ')))
        .orElseGet(() -> messages.get(key));
  }

  /** A slope and half of its 95 % interval, rounded up, to a tenth per cent. */
  static Printed slope(Measured slope) {
    double tenths = StrictMath.ceil(slope.sd() * Measured.Z95 * 1000 - 1e-9);
    return new Printed(Print.slope(slope.value()), "± " + Print.slope(tenths / 1000));
  }

  /** An angle and half of its 95 % interval, rounded up, to a tenth degree. */
  private static Printed angle(Measured angle) {
    double tenths = StrictMath.ceil(StrictMath.toDegrees(angle.sd()) * Measured.Z95 * 10 - 1e-9);
    return new Printed(
        Print.angle(angle.value()), "± " + Print.angle(StrictMath.toRadians(tenths / 10)));
  }

  private String giveOrTake(Printed printed) {
    Printed written = notation.of(new Printed(printed.value(), bare(printed)));
    return messages
        .get("figure.uncertain")
        .replace("{0}", written.value())
        .replace("{1}", written.plusMinus());
  }

  private static String bare(Printed printed) {
    return printed.plusMinus().replace("± ", "");
  }

  /** Nothing that was estimated is quite sure, however it was computed. */
  private String probability(double value) {
    return messages
        .get("figure.probability")
        .replace("{0}", messages.get(likelihood(value)))
        .replace(
            "{1}",
            notation.of(Print.share(Math.clamp(value, NEXT_TO_NOTHING, 1 - NEXT_TO_NOTHING))));
  }

  /** The bands are common practice, no source. */
  private static String likelihood(double value) {
    if (value >= 0.95) {
      return "likelihood.nearly_certain";
    }
    if (value >= 0.8) {
      return "likelihood.likely";
    }
    if (value > 0.6) {
      return "likelihood.rather";
    }
    if (value >= 0.4) {
      return "likelihood.even";
    }
    if (value > 0.2) {
      return "likelihood.rather_not";
    }
    return value > 0.05 ? "likelihood.unlikely" : "likelihood.nearly_excluded";
  }

  private String day(LocalDate date) {
    return messages
        .get(date.getDayOfMonth() == 1 ? "figure.day.first" : "figure.day")
        .replace("{0}", messages.get("month." + date.getMonthValue()))
        .replace("{1}", Integer.toString(date.getDayOfMonth()))
        .replace("{2}", Integer.toString(date.getYear()));
  }

  private String join(List<String> items, String lastJoint) {
    return switch (items.size()) {
      case 0 -> messages.get("join.none");
      case 1 -> items.getFirst();
      default ->
          String.join(messages.get("join.comma"), items.subList(0, items.size() - 1))
              + messages.get(lastJoint)
              + items.getLast();
    };
  }

  private static String plain(double value) {
    String digits = BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    return digits.replace('-', '−');
  }
}
