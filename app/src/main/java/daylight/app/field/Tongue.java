package daylight.app.field;

import java.util.Locale;

/** A language in which the pages speak. */
enum Tongue {
  EN("en", "English"),
  FR("fr", "Français");

  private final String code;
  private final String own;

  Tongue(String code, String own) {
    this.code = code;
    this.own = own;
  }

  /** Its ISO 639 code. */
  String code() {
    return code;
  }

  /** What it calls itself. */
  String own() {
    return own;
  }

  /** Whether a number of things is spoken of as one. */
  boolean isOne(long count) {
    return this == FR ? count < 2 : count == 1;
  }

  /** The decimal sign. */
  String point() {
    return this == FR ? "," : ".";
  }

  static Tongue of(Locale locale) {
    return locale.getLanguage().equals(FR.code) ? FR : EN;
  }
}
