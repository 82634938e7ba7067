package daylight.app.cli;

import daylight.footage.FrameTimes;
import daylight.line.measure.Parsed;
import daylight.line.measure.Quantities;
import daylight.line.measure.Reading;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A moment of a recording as people write it: a player's clock, or seconds. */
final class Moment {
  /** Minutes and seconds, or hours before them. */
  private static final Pattern CLOCK =
      Pattern.compile("(?:(\\d{1,3}):)?(\\d{1,4}):(\\d{1,2}(?:\\.\\d+)?)");

  private Moment() {}

  /** The frame on display then; empty where it is no moment of the recording. */
  static OptionalInt frame(FrameTimes times, String text) {
    OptionalDouble seconds = seconds(text);
    return seconds.isPresent() ? times.shownAt(seconds.getAsDouble()) : OptionalInt.empty();
  }

  /** Seconds from the first frame. */
  static OptionalDouble seconds(String text) {
    Matcher clock = CLOCK.matcher(text.strip());
    if (clock.matches()) {
      double hours = clock.group(1) == null ? 0 : Double.parseDouble(clock.group(1));
      double minutes = Double.parseDouble(clock.group(2));
      double seconds = Double.parseDouble(clock.group(3));
      return OptionalDouble.of((hours * 60 + minutes) * 60 + seconds);
    }
    String plain = text.strip().matches("[0-9.]+") ? text.strip() + " s" : text;
    return Quantities.duration(plain) instanceof Parsed.Value<Reading>(Reading reading)
        ? OptionalDouble.of(reading.value())
        : OptionalDouble.empty();
  }

  /** Whether it is a length with its unit. */
  static boolean isDistance(String text) {
    return Quantities.length(text, null) instanceof Parsed.Value<Reading>;
  }
}
