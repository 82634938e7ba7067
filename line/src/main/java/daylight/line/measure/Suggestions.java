package daylight.line.measure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Texts near a refused one. Only those that would be understood are ever offered. */
final class Suggestions {
  private static final int MOST = 3;
  private static final Pattern GROUPED =
      Pattern.compile("[^,]*?[0-9]{1,3}(,[0-9]{3})+(?![0-9,]).*");
  private static final Pattern SALVAGE = Pattern.compile("[0-9]+(?:\\.[0-9]+)?");
  private static final Pattern EXPONENT =
      Pattern.compile("([0-9]{1,9}(?:\\.[0-9]{1,9})?)e([+-]?[0-9])(?![0-9])");

  /** After a number: an exponent or a fraction, without which the number would be another. */
  private static final Pattern PART_OF_MORE = Pattern.compile("e[+-]?[0-9]|[ -]?[0-9]*/[0-9]");

  private final Dimension dimension;
  private final String plain;
  private final @Nullable Unit bareUnit;

  private Suggestions(Dimension dimension, String plain, @Nullable Unit bareUnit) {
    this.dimension = dimension;
    this.plain = plain;
    this.bareUnit = bareUnit;
  }

  static List<String> near(
      Dimension dimension, String plain, @Nullable Unit bareUnit, Refusal reason) {
    Suggestions near = new Suggestions(dimension, plain, bareUnit);
    return near.candidates(reason).filter(near::isUnderstood).distinct().limit(MOST).toList();
  }

  private boolean isUnderstood(String candidate) {
    return Meaning.of(dimension, PlainText.of(candidate), bareUnit) instanceof Parsed.Value<Double>;
  }

  private Stream<String> candidates(Refusal reason) {
    return switch (reason) {
      case EMPTY, TOO_LONG, OUT_OF_RANGE, UNIT_OF_ANOTHER_DIMENSION -> Stream.empty();
      case AMBIGUOUS_COMMA -> withoutComma();
      case AMBIGUOUS_COLON -> withoutColon();
      case INCHES_NOT_BELOW_TWELVE, PARTS_DO_NOT_FIT -> carried();
      case UNIT_MISSING -> withUnit();
      case UNIT_UNKNOWN -> withNearestUnit();
      case TRAILING_TEXT -> firstWords();
      case NOT_WHOLE -> nearestWhole();
      case NOT_A_NUMBER -> Stream.concat(withoutExponent(), salvaged());
    };
  }

  private Stream<String> withoutComma() {
    String asPoint = plain.replace(',', '.');
    return GROUPED.matcher(plain).matches()
        ? Stream.of(plain.replace(",", ""), asPoint)
        : Stream.of(asPoint);
  }

  private Stream<String> withoutColon() {
    String[] parts = plain.split(":", -1);
    if (parts.length != 2) {
      return Stream.empty();
    }
    return dimension == Dimension.CLOCK
        ? Stream.of(parts[0] + ":0" + parts[1], parts[0] + ":" + parts[1] + "0")
        : Stream.of(parts[0] + " h " + parts[1] + " min", parts[0] + " min " + parts[1] + " s");
  }

  /** The same sum with its inches carried into feet. */
  private Stream<String> carried() {
    if (dimension != Dimension.LENGTH) {
      return Stream.empty();
    }
    return phrase().stream()
        .filter(p -> p.terms().stream().allMatch(Suggestions::isFeetOrInches))
        .map(p -> feetInches(p.signed(p.terms().stream().mapToDouble(Suggestions::inches).sum())));
  }

  private static boolean isFeetOrInches(Phrase.Term term) {
    Double size = UnitNames.factor(Dimension.LENGTH, term.unit());
    return size != null && (size == Unit.FOOT.metres() || size == Unit.INCH.metres());
  }

  private static double inches(Phrase.Term term) {
    Double size = UnitNames.factor(Dimension.LENGTH, term.unit());
    return size != null && size == Unit.FOOT.metres() ? 12 * term.number() : term.number();
  }

  /** To a sixteenth inch where that is exact, else to three decimals. */
  private static String feetInches(double inches) {
    double size = Math.abs(inches);
    double feet = StrictMath.floor(size / 12);
    double rest = size - 12 * feet;
    boolean sixteenths = StrictMath.rint(rest * 16) == rest * 16;
    String part = sixteenths ? Digits.fraction(rest, 16) : Digits.atMost(rest, 3);
    return Digits.fixed(inches < 0 ? -feet : feet, 0) + "' " + part + "\"";
  }

  private Stream<String> withUnit() {
    Optional<Phrase> phrase = phrase();
    if (dimension == Dimension.LENGTH && phrase.filter(p -> p.terms().size() == 2).isPresent()) {
      List<Phrase.Term> terms = phrase.get().terms();
      return Stream.of(
          phrase.get().negative()
              ? "−" + terms.get(0).digits() + "' " + terms.get(1).digits() + "\""
              : terms.get(0).digits() + "' " + terms.get(1).digits() + "\"");
    }
    String bare = plain.endsWith("°") ? plain.substring(0, plain.length() - 1) : plain;
    Stream<String> named = UnitNames.offered(dimension).stream().map(unit -> bare + unit);
    return mayBeShare() ? Stream.concat(phrase.stream().map(Suggestions::asPerCent), named) : named;
  }

  private boolean mayBeShare() {
    return dimension == Dimension.SHARE || dimension == Dimension.SLOPE;
  }

  private static String asPerCent(Phrase phrase) {
    return Digits.atMost(phrase.signed(100 * phrase.first().number()), 4) + " %";
  }

  private Stream<String> withNearestUnit() {
    return phrase().stream()
        .flatMap(
            phrase -> {
              Phrase.Term first = phrase.first();
              String number = (phrase.negative() ? "−" : "") + first.digits();
              Stream<String> offered = UnitNames.offered(dimension).stream();
              if (first.unit().length() < 3 || !phrase.isSingle()) {
                return phrase.isSingle() ? offered.map(unit -> number + unit) : Stream.empty();
              }
              return Nearest.of(first.unit(), UnitNames.names(dimension)).stream()
                  .map(unit -> number + " " + unit);
            });
  }

  private Stream<String> firstWords() {
    List<String> heads = new ArrayList<>();
    for (int end = plain.lastIndexOf(' '); end > 0; end = plain.lastIndexOf(' ', end - 1)) {
      heads.add(plain.substring(0, end));
    }
    return heads.stream().filter(this::isUnderstood).limit(1);
  }

  private Stream<String> nearestWhole() {
    return phrase().stream()
        .flatMap(
            phrase -> {
              double number = phrase.first().number();
              String below = Digits.fixed(StrictMath.floor(number), 0);
              String above = Digits.fixed(StrictMath.ceil(number), 0);
              boolean half = dimension == Dimension.CLOCK && number % 1 == 0.5;
              return half ? Stream.of(below + ":30") : Stream.of(below, above);
            });
  }

  private Stream<String> withoutExponent() {
    Matcher exponent = EXPONENT.matcher(plain);
    if (!exponent.find()) {
      return Stream.empty();
    }
    String digits = new BigDecimal(exponent.group()).toPlainString();
    return Stream.of(exponent.replaceFirst(digits));
  }

  /** The first number there is, in the unit there is; a number that breaks off is shown with .5. */
  private Stream<String> salvaged() {
    Matcher number = SALVAGE.matcher(plain);
    if (!number.find()) {
      return Stream.empty();
    }
    String tail = plain.substring(number.end());
    if (PART_OF_MORE.matcher(tail).lookingAt()) {
      return Stream.empty();
    }
    boolean breaksOff = tail.startsWith(".") && number.group().indexOf('.') < 0;
    String digits = breaksOff ? number.group() + ".5" : number.group();
    String sign = plain.startsWith("-") ? "−" : "";
    List<String> units = unitsIn(tail);
    Stream<String> inUnits = units.stream().map(unit -> sign + digits + unit);
    return dimension == Dimension.LENGTH && units.getFirst().equals(" ft")
        ? Stream.of(sign + digits + " ft", sign + feetInches(12 * Double.parseDouble(digits)))
        : inUnits;
  }

  /** The last known unit of a text, or the one chosen for bare numbers, or all that are offered. */
  private List<String> unitsIn(String tail) {
    Set<String> known = UnitNames.names(dimension);
    List<String> found =
        Stream.of(tail.split("[^a-z0-9°%'\"/^]+"))
            .filter(word -> known.contains(word) || UnitNames.factor(dimension, word) != null)
            .collect(Collectors.toCollection(ArrayList::new));
    if (!found.isEmpty()) {
      String last = found.getLast();
      Double size = UnitNames.factor(dimension, last);
      boolean feet = dimension == Dimension.LENGTH && size != null && size == Unit.FOOT.metres();
      return List.of(feet ? " ft" : " " + last);
    }
    return bareUnit != null && dimension == Dimension.LENGTH
        ? List.of(" " + bareUnit.symbol())
        : UnitNames.offered(dimension);
  }

  private Optional<Phrase> phrase() {
    return Phrase.of(plain).asOptional();
  }
}
