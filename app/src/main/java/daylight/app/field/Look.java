package daylight.app.field;

import daylight.line.measure.Shown;
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
record Look(Tongue tongue, Shown shown, @Nullable Light light) {
  /** Where people measure in feet (CLDR, measurement system US; from memory). */
  private static final Set<String> FEET = Set.of("US", "LR", "MM");

  /** The choice that a cookie holds; empty where it holds none of ours. */
  static Optional<Look> read(@Nullable String cookie) {
    List<String> parts = cookie == null ? List.of() : List.of(cookie.split("\\.", -1));
    return parts.size() == 3
        ? tongue(parts.get(0))
            .flatMap(
                tongue -> shown(parts.get(1)).map(s -> new Look(tongue, s, light(parts.get(2)))))
        : Optional.empty();
  }

  /** What is taken where nobody chose: by the header Accept-Language (RFC 9110, 12.5.4). */
  static Look ofHeader(@Nullable String languages) {
    Locale wanted = first(languages);
    boolean feet =
        wanted.getCountry().isEmpty()
            ? Tongue.of(wanted) == Tongue.EN
            : FEET.contains(wanted.getCountry());
    return new Look(Tongue.of(wanted), feet ? Shown.FEET_INCHES : Shown.METRES, null);
  }

  private static Locale first(@Nullable String languages) {
    try {
      return Locale.LanguageRange.parse(languages == null ? "en" : languages).stream()
          .map(range -> Locale.forLanguageTag(range.getRange()))
          .filter(
              locale ->
                  Stream.of(Tongue.values()).anyMatch(t -> t.code().equals(locale.getLanguage())))
          .findFirst()
          .orElse(Locale.ENGLISH);
    } catch (IllegalArgumentException e) {
      return Locale.ENGLISH;
    }
  }

  String cookie() {
    return tongue.code() + "." + code(shown) + "." + (light == null ? "device" : light.code());
  }

  static Optional<Tongue> tongue(String code) {
    return Stream.of(Tongue.values()).filter(one -> one.code().equals(code)).findFirst();
  }

  static String code(Shown shown) {
    return shown == Shown.METRES ? "metres" : "feet";
  }

  static Optional<Shown> shown(String code) {
    return Stream.of(Shown.FEET_INCHES, Shown.METRES)
        .filter(one -> code(one).equals(code))
        .findFirst();
  }

  static @Nullable Light light(String code) {
    return Stream.of(Light.values())
        .filter(one -> one.code().equals(code))
        .findFirst()
        .orElse(null);
  }
}
