package daylight.app.cli;

import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import daylight.line.measure.Parsed;
import daylight.line.measure.Quantities;
import daylight.line.measure.Reading;
import daylight.line.measure.Shown;
import daylight.line.measure.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * The options of a calculation, read as quantities. What is wrong is gathered, one complaint an
 * option, so that all of it is told at once; an option that is wrong reads as if it were not there.
 */
final class Given {
  private final List<Wrong> wrong = new ArrayList<>();

  private @Nullable Shown chosen;
  private @Nullable Shown written;

  /**
   * A complaint.
   *
   * @param option its name, or the place in a file
   * @param key of the message that says what is wrong
   */
  record Wrong(String option, String key, List<Argument> arguments) {
    Wrong {
      arguments = List.copyOf(arguments);
    }
  }

  static Argument text(String text) {
    return new Argument.Text(text);
  }

  /** Chooses the units to show, whatever is written. */
  void show(Shown shown) {
    chosen = shown;
  }

  /** The units of a book, which go before those of an option. */
  void usually(Shown shown) {
    written = shown;
  }

  /** The units to show: those chosen, else those of the first length, else feet and inches. */
  Shown shown() {
    Shown asked = chosen == null ? written : chosen;
    return asked == null ? Shown.FEET_INCHES : asked;
  }

  boolean sound() {
    return wrong.isEmpty();
  }

  List<Wrong> wrong() {
    return List.copyOf(wrong);
  }

  void complain(String option, String key, Argument... arguments) {
    wrong.add(new Wrong(option, key, List.of(arguments)));
  }

  /** Asks for an option that is not there. */
  void need(String option, @Nullable String text) {
    if (text == null) {
      complain(option, "cli.option.needed");
    }
  }

  /** A quantity; null where the option is absent or wrong. */
  @Nullable Reading quantity(Dimension dimension, String option, @Nullable String text) {
    return quantity(dimension, option, text, null);
  }

  /**
   * The same.
   *
   * @param bare what a bare length means; null where it must carry its unit
   */
  @Nullable Reading quantity(
      Dimension dimension, String option, @Nullable String text, @Nullable Unit bare) {
    if (text == null) {
      return null;
    }
    return switch (Quantities.parse(dimension, text, bare)) {
      case Parsed.Value<Reading>(Reading reading) -> {
        if (dimension == Dimension.LENGTH && written == null) {
          written = unitsOf(bare == null ? text : text + " " + bare.symbol());
        }
        yield reading;
      }
      case Parsed.Refused<Reading>(var reason, var near) -> {
        complain(
            option,
            "form.not-a-quantity",
            text(text),
            new Argument.Term(
                "dimension." + dimension.name().toLowerCase(Locale.ROOT).replace('_', '-')),
            new Argument.Reason(reason),
            new Argument.Choices(near));
        yield null;
      }
    };
  }

  /** A length in metres. */
  @Nullable Reading length(String option, @Nullable String text) {
    return quantity(Dimension.LENGTH, option, text);
  }

  /** A length of zero or more. */
  @Nullable Reading lengthFromZero(String option, @Nullable String text) {
    Reading reading = length(option, text);
    if (reading != null && reading.value() < 0) {
      complain(option, "cli.option.negative", text(reading.written()));
      return null;
    }
    return reading;
  }

  /** A length of more than nothing. */
  @Nullable Reading positiveLength(String option, @Nullable String text) {
    return positive(option, length(option, text));
  }

  /** The same of a quantity already read. */
  @Nullable Reading positive(String option, @Nullable Reading reading) {
    if (reading != null && !(reading.value() > 0)) {
      complain(option, "form.not-positive", text(reading.written()));
      return null;
    }
    return reading;
  }

  /** A plain number between two others, both allowed; null where absent or wrong. */
  @Nullable Double number(String option, @Nullable String text, double least, double most) {
    if (text == null) {
      return null;
    }
    if (text.strip().matches("[-+−]?[0-9]{1,12}(?:\\.[0-9]{1,12})?")) {
      double value = Double.parseDouble(text.strip().replace('−', '-'));
      if (value >= least && value <= most) {
        return value;
      }
    }
    complain(
        option,
        "form.not-a-number",
        text(text),
        new Argument.Number(least),
        new Argument.Number(most));
    return null;
  }

  /** The standard uncertainty of half a 95 % interval as given, else another. */
  double sd(@Nullable Reading giveOrTake, double otherwise) {
    return giveOrTake == null ? otherwise : giveOrTake.value() / Measured.Z95;
  }

  private static Shown unitsOf(String text) {
    String plain = text.toLowerCase(Locale.ROOT);
    boolean metric = plain.matches(".*[0-9\\s](m|cm|mm|met(re|er)s?|(centi|milli)met(re|er)s?)");
    boolean decimalFeet = plain.matches(".*\\.[0-9]+\\s*(ft|feet|foot|')");
    return metric ? Shown.METRES : decimalFeet ? Shown.DECIMAL_FEET : Shown.FEET_INCHES;
  }
}
