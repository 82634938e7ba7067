package daylight.report.words;

/** A language for which there is a message file. */
public enum Language {
  EN("en");

  private final String code;

  Language(String code) {
    this.code = code;
  }

  /** Its ISO 639 code. */
  public String code() {
    return code;
  }
}
