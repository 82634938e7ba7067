package daylight.app.field;

import daylight.archive.Bundled;
import daylight.line.book.Catalogue;
import daylight.line.measure.ClockRange;
import daylight.line.measure.Dimension;
import daylight.line.measure.Parsed;
import daylight.line.measure.Quantities;
import daylight.report.words.Language;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What a pencil writes for short, and what a book says for it: letters for kinds, a bare figure in
 * the unit of the sheet, a size without the name of what it is the size of.
 */
final class PencilWords {
  /** Letters of the twelve kinds, as on the keyboard of the push. */
  private static final String LETTERS = "abcdefghijkl";

  private static final Pattern BARE = Pattern.compile("[+-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)");
  private static final Pattern DECIMAL_COMMA = Pattern.compile("(?<=\\d),(?=\\d)");
  private static final Pattern PARTS = Pattern.compile("\\s*(?:;|,(?!\\d))\\s*");
  private static final Pattern TIME = Pattern.compile("(\\d{1,2})[:h](\\d\\d)(?::(\\d\\d))?");

  /** Ways that particulars may go, as the keys of the push offer them. */
  private static final List<String> WAYS = List.of("up", "down", "left", "right");

  private final Phrases phrases;
  private final String unit;

  /**
   * @param unit in which a bare length is meant, {@code ft} or {@code m}
   */
  PencilWords(Phrases phrases, String unit) {
    this.phrases = phrases;
    this.unit = unit;
  }

  /** The letter of a kind on the sheet; empty for those that are written out. */
  static String letter(Catalogue.Kind kind) {
    int large = PushKeys.LARGE.indexOf(kind.id());
    int stop = PushKeys.stop().indexOf(kind);
    return large >= 0 ? LETTERS.substring(large, large + 1) : stop >= 0 ? "s" + (stop + 1) : "";
  }

  /**
   * A kind by its letter, its name in the language of the page, or the only name that begins so.
   */
  Optional<Catalogue.Kind> kind(String text) {
    String wanted = plain(text);
    List<Catalogue.Kind> begin = new ArrayList<>();
    for (Catalogue.Kind kind : Bundled.catalogue().kinds()) {
      String name = plain(phrases.kind(kind.id()));
      if (wanted.equals(letter(kind)) || wanted.equals(name) || wanted.equals(kind.id())) {
        return Optional.of(kind);
      }
      if (name.startsWith(wanted)) {
        begin.add(kind);
      }
    }
    return begin.size() == 1 && wanted.length() > 1
        ? Optional.of(begin.getFirst())
        : Optional.empty();
  }

  /** Small letters without accents, as somebody in a hurry types. */
  private static String plain(String text) {
    return Normalizer.normalize(text.strip().toLowerCase(Locale.ROOT), Normalizer.Form.NFD)
        .replaceAll("\\p{M}", "");
  }

  /** As a book writes figures: points, feet and inches by their English names. */
  private String figures(String text) {
    String points = DECIMAL_COMMA.matcher(text.strip()).replaceAll(".").replace('−', '-');
    return phrases.tongue() == Language.FR
        ? points.replaceAll("\\bpi\\b", "ft").replaceAll("\\bpo\\b", "in")
        : points;
  }

  /** A length as a book has it, always with its unit; empty where it is none. */
  Optional<String> length(String text) {
    String figures = figures(text);
    String full = BARE.matcher(figures).matches() ? whole(figures) + " " + unit : figures;
    return metres(full).isEmpty() ? Optional.empty() : Optional.of(full);
  }

  private static String whole(String figures) {
    String plain = figures.replace("+", "");
    return plain.startsWith(".") ? "0" + plain : plain.replaceFirst("\\.$", "");
  }

  /** Metres of a length that carries its unit. */
  static Optional<Double> metres(String text) {
    return Quantities.length(text, null).asOptional().map(reading -> reading.value());
  }

  /** Hours as a book has them; empty where they are none. */
  static Optional<String> clock(String text) {
    String plain = text.replace('–', '-').replace('h', ':').replaceFirst(":$", "");
    Parsed<ClockRange> range = Quantities.clockRange(plain);
    boolean good = Quantities.clock(plain).asOptional().isPresent();
    return good || range.asOptional().isPresent() ? Optional.of(plain) : Optional.empty();
  }

  /** A time of day with its seconds, as {@code 10:42:00}; empty where it is none. */
  static Optional<String> time(String text) {
    var found = TIME.matcher(text);
    if (!found.matches()) {
      return Optional.empty();
    }
    int hour = Integer.parseInt(found.group(1));
    int minute = Integer.parseInt(found.group(2));
    int second = found.group(3) == null ? 0 : Integer.parseInt(found.group(3));
    return hour < 24 && minute < 60 && second < 60
        ? Optional.of("%02d:%02d:%02d".formatted(hour, minute, second))
        : Optional.empty();
  }

  /** A surface by its name in the language of the page, or any other in words. */
  String surface(String text) {
    return List.of("yard", "slab", "drive").stream()
        .filter(one -> plain(phrases.say("walk.surface." + one)).equals(plain(text)))
        .findFirst()
        .orElse(text);
  }

  /**
   * Sizes and particulars of a kind, by their keys in a book: {@code 25 %}, {@code 45°, left},
   * {@code width 1/4 in}. Several stand apart by a comma or a semicolon.
   *
   * @return empty where one of them is none of this kind
   */
  Optional<Map<String, String>> sizes(Catalogue.Kind kind, String text) {
    Map<String, String> sizes = new LinkedHashMap<>();
    for (String part : PARTS.split(text.strip(), -1)) {
      Map.Entry<String, String> size = size(kind, part);
      if (size == null || sizes.putIfAbsent(size.getKey(), size.getValue()) != null) {
        return Optional.empty();
      }
    }
    return Optional.of(sizes);
  }

  private Map.@Nullable Entry<String, String> size(Catalogue.Kind kind, String part) {
    String wanted = plain(part);
    for (String word : kind.words()) {
      for (String may : may(kind, word)) {
        if (wanted.equals(may) || wanted.equals(plain(part(may)))) {
          return Map.entry(word, may);
        }
      }
    }
    for (Map.Entry<String, Dimension> one : kind.quantities().entrySet()) {
      String named = without(part, one.getKey());
      Optional<String> value = value(one.getValue(), named == null ? part : named);
      if (value.isPresent() && (named != null || isFirst(kind, one.getKey(), part))) {
        return Map.entry(one.getKey(), value.get());
      }
    }
    for (String word : kind.words()) {
      String said = without(part, word);
      if (said != null && may(kind, word).isEmpty() && !said.isEmpty()) {
        return Map.entry(word, said);
      }
    }
    // Where a kind has one particular that may say anything, plain words can only be that.
    List<String> free = kind.words().stream().filter(word -> may(kind, word).isEmpty()).toList();
    return free.size() == 1 && Character.isLetter(part.isEmpty() ? ' ' : part.charAt(0))
        ? Map.entry(free.getFirst(), part)
        : null;
  }

  /** Whether no size before it takes the same text. */
  private boolean isFirst(Catalogue.Kind kind, String name, String part) {
    for (Map.Entry<String, Dimension> one : kind.quantities().entrySet()) {
      if (one.getKey().equals(name)) {
        return true;
      }
      if (value(one.getValue(), part).isPresent()) {
        return false;
      }
    }
    return false;
  }

  private static List<String> may(Catalogue.Kind kind, String word) {
    List<String> says = kind.says().getOrDefault(word, List.of());
    boolean way = word.equals("direction") || word.equals("sense");
    return says.isEmpty() && way ? WAYS : says;
  }

  /** What stands behind the name of a size; null where another name stands there, or none. */
  private @Nullable String without(String part, String name) {
    for (String said : List.of(part(name), name)) {
      if (plain(part).startsWith(plain(said) + " ")) {
        return part.substring(said.length()).strip();
      }
    }
    return null;
  }

  private Optional<String> value(Dimension dimension, String text) {
    String figures = figures(text);
    String full =
        dimension == Dimension.SHARE && BARE.matcher(figures).matches() ? figures + " %" : figures;
    return Quantities.parse(dimension, full, null).asOptional().isPresent()
        ? Optional.of(full)
        : Optional.empty();
  }

  private String part(String name) {
    return phrases.messages().getProperty("push.part." + name, name);
  }

  /** What the size of a kind is, in a word or two each; empty where it has none. */
  String told(Catalogue.Kind kind) {
    List<String> parts = new ArrayList<>(sized(kind));
    for (String word : kind.words()) {
      List<String> may = may(kind, word);
      parts.add(
          may.isEmpty() ? part(word) : String.join("/", may.stream().map(this::part).toList()));
    }
    return phrases.list(parts);
  }

  /** The same as short as paper wants it: sizes, and ways where it has no size. */
  String brief(Catalogue.Kind kind) {
    List<String> parts = new ArrayList<>(sized(kind));
    if (parts.size() < 2) {
      kind.words().stream()
          .map(word -> may(kind, word))
          .filter(WAYS::equals)
          .forEach(ways -> parts.add(String.join("/", ways.stream().map(this::part).toList())));
    }
    return phrases.list(parts.subList(0, Math.min(2, parts.size())));
  }

  private List<String> sized(Catalogue.Kind kind) {
    return kind.quantities().entrySet().stream()
        .map(one -> part(one.getKey()) + sign(one.getValue()))
        .toList();
  }

  private String sign(Dimension of) {
    return switch (of) {
      case SHARE -> " %";
      case ANGLE -> " °";
      case LENGTH -> unit.equals("m") ? " mm" : " " + phrases.figure("1 in").substring(2);
      case DURATION -> " min";
      default -> "";
    };
  }
}
