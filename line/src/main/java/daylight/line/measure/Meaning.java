package daylight.line.measure;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a phrase means as a quantity of a given dimension: one number in SI, or a refusal. */
final class Meaning {
  private static final double WHOLE_RATIO = 1e-9;
  private static final double DEGREE = StrictMath.PI / 180;

  private Meaning() {}

  /** Understands {@link PlainText}; the unit is for a bare length and matters to nothing else. */
  static Parsed<Double> of(Dimension dimension, String plain, @Nullable Unit bareUnit) {
    return Phrase.of(plain)
        .then(phrase -> understood(dimension, phrase, bareUnit))
        .then(value -> inRange(dimension, value));
  }

  private static Parsed<Double> understood(
      Dimension dimension, Phrase phrase, @Nullable Unit bareUnit) {
    return switch (dimension) {
      case LENGTH -> sum(dimension, phrase, bareUnit == null ? null : bareUnit.metres());
      case ANGLE -> sum(dimension, phrase, DEGREE);
      case DURATION ->
          phrase.first().unit().equals(":")
              ? Parsed.refused(Refusal.AMBIGUOUS_COLON)
              : sum(dimension, phrase, null);
      case SLOPE -> isRatio(phrase) ? ratio(phrase) : single(dimension, phrase);
      case CLOCK -> ClockFace.radians(phrase);
      case COUNT -> count(phrase);
      case TEMPERATURE -> temperature(phrase);
      case AREA, VOLUME, FLOW, SHARE, RAINFALL, DEGREE_DAYS, SPEED, DENSITY, CONDUCTIVITY ->
          single(dimension, phrase);
    };
  }

  private static Parsed<Double> inRange(Dimension dimension, double value) {
    return Ranges.allow(dimension, value)
        ? new Parsed.Value<>(value)
        : Parsed.refused(Refusal.OUT_OF_RANGE);
  }

  /** Adds up parts such as 4 ft 7 in: ever smaller units of one system, all whole but the last. */
  private static Parsed<Double> sum(Dimension dimension, Phrase phrase, @Nullable Double bare) {
    List<Phrase.Term> terms = phrase.terms();
    double total = 0;
    double larger = Double.NaN;
    for (int i = 0; i < terms.size(); i++) {
      Phrase.Term term = terms.get(i);
      boolean isBare = term.unit().isEmpty() && phrase.isSingle();
      Double size = isBare ? bare : UnitNames.factor(dimension, term.unit());
      if (size == null) {
        return Parsed.refused(whyNoUnit(dimension, term));
      }
      if (i > 0 && !(term.number() < wholeRatio(larger, size))) {
        return Parsed.refused(whyPartsDoNotFit(larger, size));
      }
      if (i < terms.size() - 1 && !term.isWhole()) {
        return Parsed.refused(Refusal.PARTS_DO_NOT_FIT);
      }
      total += term.number() * size;
      larger = size;
    }
    return new Parsed.Value<>(phrase.signed(total));
  }

  /** How many of the smaller unit make the larger, or 0 when they do not belong together. */
  private static double wholeRatio(double larger, double smaller) {
    double ratio = larger / smaller;
    double whole = StrictMath.rint(ratio);
    return whole > 1 && Math.abs(ratio - whole) < WHOLE_RATIO * whole ? whole : 0;
  }

  private static Refusal whyPartsDoNotFit(double larger, double smaller) {
    boolean feetAndInches = larger == Unit.FOOT.metres() && smaller == Unit.INCH.metres();
    return feetAndInches ? Refusal.INCHES_NOT_BELOW_TWELVE : Refusal.PARTS_DO_NOT_FIT;
  }

  private static Parsed<Double> single(Dimension dimension, Phrase phrase) {
    Phrase.Term term = phrase.first();
    Double size = UnitNames.factor(dimension, term.unit());
    if (size == null) {
      return Parsed.refused(whyNoUnit(dimension, term));
    }
    return phrase.isSingle()
        ? new Parsed.Value<>(phrase.signed(term.number() * size))
        : Parsed.refused(Refusal.TRAILING_TEXT);
  }

  private static boolean isRatio(Phrase phrase) {
    String between = phrase.first().unit();
    return phrase.terms().size() == 2
        && (between.equals(":") || between.equals("in"))
        && phrase.terms().getLast().unit().isEmpty();
  }

  private static Parsed<Double> ratio(Phrase phrase) {
    double run = phrase.terms().getLast().number();
    return run > 0
        ? new Parsed.Value<>(phrase.signed(phrase.first().number() / run))
        : Parsed.refused(Refusal.OUT_OF_RANGE);
  }

  private static Parsed<Double> count(Phrase phrase) {
    Phrase.Term term = phrase.first();
    if (!phrase.isSingle()) {
      return Parsed.refused(Refusal.TRAILING_TEXT);
    }
    if (!term.unit().isEmpty()) {
      return Parsed.refused(whyNoUnit(Dimension.COUNT, term));
    }
    return term.isWhole()
        ? new Parsed.Value<>(phrase.signed(term.number()))
        : Parsed.refused(Refusal.NOT_WHOLE);
  }

  private static Parsed<Double> temperature(Phrase phrase) {
    Phrase.Term term = phrase.first();
    if (term.unit().equals("°")) {
      return Parsed.refused(Refusal.UNIT_MISSING);
    }
    Double celsius = Temperatures.celsius(phrase.signed(term.number()), term.unit());
    if (celsius == null) {
      return Parsed.refused(whyNoUnit(Dimension.TEMPERATURE, term));
    }
    return phrase.isSingle() ? new Parsed.Value<>(celsius) : Parsed.refused(Refusal.TRAILING_TEXT);
  }

  /** Why a term has no unit of a dimension. */
  static Refusal whyNoUnit(Dimension dimension, Phrase.Term term) {
    if (term.unit().isEmpty()) {
      return Refusal.UNIT_MISSING;
    }
    if (UnitNames.knownElsewhere(dimension, term.unit())) {
      return Refusal.UNIT_OF_ANOTHER_DIMENSION;
    }
    return beginsWithUnit(dimension, term.words()) ? Refusal.TRAILING_TEXT : Refusal.UNIT_UNKNOWN;
  }

  private static boolean beginsWithUnit(Dimension dimension, String words) {
    for (int end = words.lastIndexOf(' '); end > 0; end = words.lastIndexOf(' ', end - 1)) {
      String head = words.substring(0, end).replace(" ", "");
      if (UnitNames.factor(dimension, head) != null || Temperatures.isScale(head)) {
        return true;
      }
    }
    return false;
  }
}
