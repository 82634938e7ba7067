package daylight.app.web;

import daylight.line.measure.Shown;
import daylight.report.words.Language;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * How somebody wants to see the pages.
 *
 * @param shown feet and inches, or metres
 * @param light null for what the device says of itself
 */
public record Look(Language language, Shown shown, @Nullable Light light) {
  /** What the browser remembers it by. */
  public static final String COOKIE = "daylight-look";

  /** Where people measure in feet (CLDR, measurement system US; from memory). */
  private static final Set<String> FEET = Set.of("US", "LR", "MM");

  /** The choice that a cookie holds; empty where it holds none of ours. */
  public static Optional<Look> read(@Nullable String cookie) {
    List<String> parts = cookie == null ? List.of() : List.of(cookie.split("\\.", -1));
    return parts.size() == 3
        ? Language.of(parts.get(0))
            .flatMap(
                language ->
                    shown(parts.get(1)).map(s -> new Look(language, s, light(parts.get(2)))))
        : Optional.empty();
  }

  /** What is taken where nobody chose: by the header Accept-Language (RFC 9110, 12.5.4). */
  public static Look ofHeader(@Nullable String languages) {
    Locale wanted = first(languages);
    boolean feet =
        wanted.getCountry().isEmpty()
            ? Language.of(wanted) == Language.EN
            : FEET.contains(wanted.getCountry());
    return new Look(Language.of(wanted), feet ? Shown.FEET_INCHES : Shown.METRES, null);
  }

  private static Locale first(@Nullable String languages) {
    try {
      return Locale.LanguageRange.parse(languages == null ? "en" : languages).stream()
          .map(range -> Locale.forLanguageTag(range.getRange()))
          .filter(locale -> Language.of(locale.getLanguage()).isPresent())
          .findFirst()
          .orElse(Locale.ENGLISH);
    } catch (IllegalArgumentException e) {
      return Locale.ENGLISH;
    }
  }

  /** The choice as a cookie holds it. */
  public String cookie() {
    return language.code()
        + "."
        + code(shown)
        + "."
        + (light == null ? Light.DEVICE : light.code());
  }

  /** The language that somebody wants by that header; empty where it names none of ours. */
  static Optional<Language> languageOf(@Nullable String languages) {
    return languages == null ? Optional.empty() : Optional.of(ofHeader(languages).language());
  }

  /** The word for units in cookies and forms. */
  public static String code(Shown shown) {
    return shown == Shown.METRES ? "metres" : "feet";
  }

  /** The units of that word; empty where it is none of ours. */
  public static Optional<Shown> shown(String code) {
    return Stream.of(Shown.FEET_INCHES, Shown.METRES)
        .filter(one -> code(one).equals(code))
        .findFirst();
  }

  /** The light of that word; null where it is none of ours. */
  public static @Nullable Light light(String code) {
    return Stream.of(Light.values())
        .filter(one -> one.code().equals(code))
        .findFirst()
        .orElse(null);
  }
}
