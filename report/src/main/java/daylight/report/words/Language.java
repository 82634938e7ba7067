package daylight.report.words;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** A language for which there is a message file. */
public enum Language {
  EN("en", "English"),
  FR("fr", "Français");

  private final String code;
  private final String own;

  Language(String code, String own) {
    this.code = code;
    this.own = own;
  }

  /** Its ISO 639 code. */
  public String code() {
    return code;
  }

  /** What it calls itself. */
  public String own() {
    return own;
  }

  /** Whether a number of things is spoken of as one. */
  public boolean isOne(long count) {
    return this == FR ? Math.abs(count) < 2 : count == 1;
  }

  /** The decimal sign. */
  public String point() {
    return this == FR ? "," : ".";
  }

  /** The language of that code; empty where there are no messages in it. */
  public static Optional<Language> of(String code) {
    return Stream.of(values()).filter(one -> one.code.equals(code)).findFirst();
  }

  /** The one that is nearest to a locale; English where there is none. */
  public static Language of(Locale locale) {
    return of(locale.getLanguage()).orElse(EN);
  }
}
