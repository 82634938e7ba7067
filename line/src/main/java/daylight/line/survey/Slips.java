package daylight.line.survey;

import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Parsed;
import daylight.line.measure.Quantities;
import daylight.line.measure.Reading;
import daylight.line.measure.Statement;
import daylight.line.measure.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Slips that the text of a reading can tell: figures, units, a foot (common practice, no source).
 */
final class Slips {
  /** Figures that are taken for each other in handwriting and on a worn tape. */
  private static final List<String> ALIKE = List.of("17", "38", "69", "56", "06", "08", "27", "49");

  private static final Pattern PLAIN = Pattern.compile("([-−+]?\\d+)(?:[.](\\d+))?\\s*(\\p{L}*|')");
  private static final Pattern FEET_INCHES =
      Pattern.compile("(\\d+)\\s*(?:'|′|ft)\\s*(\\d+)\\s*(?:\"|″|in)");
  private static final double DEGREE = Math.PI / 180;

  private final Written written;
  private final Suspect.Misread misread;
  private final List<Likely> found = new ArrayList<>();

  Slips(Written written, Suspect.Misread misread) {
    this.written = written;
    this.misread = misread;
  }

  List<Likely> likely() {
    figures();
    units();
    offBy();
    if (misread.quantity() == Quantity.RISE || misread.quantity() == Quantity.HEIGHT) {
      offer(-misread.read(), Statement.of(SurveyKey.LIKELY_SIGN));
    }
    return found;
  }

  /** Keeps what the reading would be if it came close to what the others say. */
  private void offer(double value, Statement said) {
    double off = value - (misread.read() - misread.blunder());
    if (misread.quantity().angular()) {
      off = StrictMath.IEEEremainder(off, 2 * Math.PI);
    }
    found.add(new Likely(said, Math.abs(off) / misread.sd()));
  }

  private @Nullable Double value(String text) {
    Parsed<Reading> parsed =
        misread.quantity() == Quantity.BEARING
            ? Quantities.bearing(text)
            : Quantities.parse(written.dimension(), text, written.bare());
    return parsed instanceof Parsed.Value<Reading>(Reading reading) ? reading.value() : null;
  }

  /** Neighbouring figures that changed places, and figures taken for their likes. */
  private void figures() {
    String text = written.reading().written();
    int before = -1;
    for (int i = 0; i < text.length(); i++) {
      char figure = text.charAt(i);
      if (figure < '0' || figure > '9') {
        continue;
      }
      if (before >= 0 && text.charAt(before) != figure) {
        var swapped = new StringBuilder(text);
        swapped.setCharAt(before, figure);
        swapped.setCharAt(i, text.charAt(before));
        offer(swapped.toString(), SurveyKey.LIKELY_SWAPPED);
      }
      for (String alike : ALIKE) {
        int at = alike.indexOf(figure);
        if (at >= 0) {
          var taken = new StringBuilder(text);
          taken.setCharAt(i, alike.charAt(1 - at));
          offer(taken.toString(), SurveyKey.LIKELY_FIGURE);
        }
      }
      before = i;
    }
  }

  private void offer(String meant, SurveyKey key) {
    Double value = value(meant);
    if (value != null) {
      offer(value, said(key, meant));
    }
  }

  private Statement said(SurveyKey key, String meant) {
    return Statement.of(
        key, new Argument.Text(written.shown()), new Argument.Text(written.shown(meant)));
  }

  private void units() {
    if (written.dimension() != Dimension.LENGTH) {
      return;
    }
    String text = written.reading().written().strip();
    Matcher both = FEET_INCHES.matcher(text);
    if (both.matches()) {
      String inches = both.group(2);
      offer(both.group(1) + "." + inches + " ft", SurveyKey.LIKELY_DECIMAL);
      return;
    }
    Matcher plain = PLAIN.matcher(text);
    Unit unit = plain.matches() ? unit(plain.group(3)) : null;
    if (unit == null) {
      return;
    }
    String decimals = plain.group(2);
    String number = plain.group(1) + (decimals == null ? "" : "." + decimals);
    Unit other =
        switch (unit) {
          case METRE -> Unit.FOOT;
          case FOOT -> Unit.METRE;
          case INCH -> Unit.CENTIMETRE;
          case CENTIMETRE, MILLIMETRE -> Unit.INCH;
        };
    offer(number + " " + other.symbol(), SurveyKey.LIKELY_UNIT);
    if (unit == Unit.FOOT && decimals != null && Integer.parseInt(cut(decimals)) < 12) {
      String meant = plain.group(1) + "' " + Integer.parseInt(cut(decimals)) + "\"";
      offer(meant, SurveyKey.LIKELY_FEET_INCHES);
    }
  }

  /** No more figures than an int holds. */
  private static String cut(String decimals) {
    return decimals.substring(0, Math.min(6, decimals.length()));
  }

  private @Nullable Unit unit(String symbol) {
    return switch (symbol.toLowerCase(Locale.ROOT)) {
      case "" -> written.bare();
      case "'", "ft", "feet", "foot" -> Unit.FOOT;
      case "in", "inch", "inches" -> Unit.INCH;
      case "m", "metre", "metres", "meter", "meters" -> Unit.METRE;
      case "cm" -> Unit.CENTIMETRE;
      case "mm" -> Unit.MILLIMETRE;
      default -> null;
    };
  }

  /** A foot, a metre or a degree, or ten of them, too much or too little. */
  private void offBy() {
    boolean angle = written.dimension() == Dimension.ANGLE;
    String text = written.reading().written();
    boolean feet =
        text.contains("'") || text.contains("f") || text.contains("in") || text.contains("\"");
    boolean metric = !feet && (text.contains("m") || metricBare());
    List<Double> steps = new ArrayList<>();
    if (angle) {
      steps.addAll(List.of(DEGREE, 10 * DEGREE, 90 * DEGREE, 100 * DEGREE));
    } else if (metric) {
      steps.addAll(List.of(0.1, 1.0, 10.0));
    } else {
      steps.addAll(List.of(0.3048, 3.048));
    }
    for (double step : steps) {
      Argument by =
          angle ? new Argument.Quantity(Dimension.ANGLE, step) : new Argument.Text(words(step));
      offer(misread.read() - step, Statement.of(SurveyKey.LIKELY_OVER, by));
      offer(misread.read() + step, Statement.of(SurveyKey.LIKELY_UNDER, by));
    }
  }

  private boolean metricBare() {
    Unit bare = written.bare();
    return bare != Unit.FOOT && bare != Unit.INCH;
  }

  private static String words(double step) {
    if (step == 0.3048) {
      return "1 ft";
    }
    if (step == 3.048) {
      return "10 ft";
    }
    return step == 0.1 ? "10 cm" : step == 1.0 ? "1 m" : "10 m";
  }
}
