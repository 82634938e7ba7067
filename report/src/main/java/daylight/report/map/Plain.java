package daylight.report.map;

/** A text as every format can carry it. */
final class Plain {
  private static final int REPLACEMENT = 0xFFFD;

  private Plain() {}

  /**
   * The same with its lines ended alike, without control characters, and with a mark in the place
   * of what is no character of XML 1.0, section 2.2.
   */
  static String of(String text) {
    StringBuilder plain = new StringBuilder(text.length());
    text.replace("\r\n", "\n")
        .replace('\r', '\n')
        .codePoints()
        .forEach(one -> plain.appendCodePoint(allowed(one)));
    return plain.toString();
  }

  private static int allowed(int character) {
    if (character == '\t' || character == '\n') {
      return character;
    }
    if (character < 0x20 || (character >= 0x7F && character < 0xA0)) {
      return ' ';
    }
    boolean none =
        (character >= 0xD800 && character <= 0xDFFF) || character == 0xFFFE || character == 0xFFFF;
    return none ? REPLACEMENT : character;
  }
}
