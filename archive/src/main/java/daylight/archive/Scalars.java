package daylight.archive;

import daylight.archive.form.Fields;
import daylight.archive.form.Section;
import daylight.archive.form.Tree;
import daylight.line.book.Finding;
import daylight.line.book.Units;
import daylight.line.measure.Argument;
import daylight.line.measure.ClockRange;
import daylight.line.measure.Nearest;
import daylight.line.measure.Parsed;
import daylight.line.measure.Quantities;
import daylight.line.measure.Reading;
import daylight.line.measure.Unit;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Texts of a book that are neither words nor plain quantities. */
final class Scalars {
  private Scalars() {}

  /** What bare numbers mean. */
  static Units units(@Nullable Fields units) {
    if (units == null) {
      return Units.UNSTATED;
    }
    return new Units(
        unit(units, "distance"), unit(units, "depth"), unit(units, "bore"), unit(units, "level"));
  }

  static @Nullable Unit unit(Fields units, String key) {
    String text = units.text(key);
    if (text == null) {
      return null;
    }
    for (Unit unit : Unit.values()) {
      if (unit.symbol().equals(text)) {
        return unit;
      }
    }
    List<String> symbols = Arrays.stream(Unit.values()).map(Unit::symbol).toList();
    units.<@Nullable Unit>notChosen(key, text, symbols, null);
    return null;
  }

  /** A time zone at a key; null when none is written. */
  static @Nullable ZoneId zone(Fields site, String key) {
    String text = site.text(key);
    if (text == null) {
      return null;
    }
    try {
      return ZoneId.of(text);
    } catch (DateTimeException e) {
      Optional<String> near = Nearest.of(text, new TreeSet<>(ZoneId.getAvailableZoneIds()));
      site.complain(
          FileTrouble.NOT_A_ZONE,
          key,
          new Argument.Text(text),
          new Argument.Choices(near.stream().toList()));
      return null;
    }
  }

  /** A bearing that must be there. */
  static Reading bearing(Fields fields, String key) {
    String text = fields.wantedWords(key);
    return switch (Quantities.bearing(text)) {
      case Parsed.Value<Reading>(Reading value) -> value;
      case Parsed.Refused<Reading> refused -> {
        if (fields.has(key)) {
          fields.refuse(key, text, "bearing", refused.reason(), refused.suggestions());
        }
        yield new Reading(0, null, "?");
      }
    };
  }

  /** A clock position or a range of them at a key; null when none is written. */
  static Finding.@Nullable Clock clock(Fields fields, String key) {
    String text = fields.text(key);
    if (text == null) {
      return null;
    }
    boolean ranged = text.contains("-") || text.contains("–") || text.contains(" to ");
    Parsed<Finding.Clock> clock =
        ranged
            ? Quantities.clockRange(text).map(Scalars::clock)
            : Quantities.clock(text).map(r -> new Finding.Clock(r.value(), r.value()));
    return switch (clock) {
      case Parsed.Value<Finding.Clock>(Finding.Clock value) -> value;
      case Parsed.Refused<Finding.Clock> refused -> {
        fields.refuse(key, text, "clock", refused.reason(), refused.suggestions());
        yield null;
      }
    };
  }

  private static Finding.Clock clock(ClockRange range) {
    return new Finding.Clock(range.from(), range.to());
  }

  /** Seconds that may be negative, at a key; null when none are written. */
  static @Nullable Reading shift(Fields fields, String key) {
    String text = fields.text(key);
    if (text == null) {
      return null;
    }
    boolean negative = text.startsWith("-") || text.startsWith("−");
    String size = negative || text.startsWith("+") ? text.substring(1).strip() : text;
    return switch (Quantities.duration(size)) {
      case Parsed.Value<Reading>(Reading value) ->
          new Reading(negative ? -value.value() : value.value(), null, text);
      case Parsed.Refused<Reading> refused -> {
        fields.refuse(key, text, "duration", refused.reason(), refused.suggestions());
        yield null;
      }
    };
  }

  /** The words out of an enum's in the list at a key. */
  static <E extends Enum<E>> List<E> choices(Fields fields, String key, Class<E> type) {
    List<E> chosen = new ArrayList<>();
    fields.eachItem(
        key,
        (tree, place) -> {
          String text = tree instanceof Tree.Text(String word, var p, var c, var at) ? word : "";
          Optional<E> one =
              Stream.of(type.getEnumConstants())
                  .filter(constant -> Section.word(constant).equals(text))
                  .findFirst();
          one.ifPresentOrElse(
              chosen::add, () -> fields.notChosen(key, text, Section.words(type), false));
        });
    return chosen;
  }
}
