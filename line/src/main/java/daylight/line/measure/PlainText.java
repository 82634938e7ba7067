package daylight.line.measure;

import java.text.Normalizer;
import java.util.Locale;

/**
 * Text as typed, reduced to the characters the grammar knows: every blank is one space, every minus
 * and dash is {@code -}, every foot and inch mark is {@code '} or {@code "}, {@code ½} is {@code
 * 1/2}, {@code m³} is {@code m3}, and letters are lower case.
 */
final class PlainText {
  private PlainText() {}

  static String of(String typed) {
    StringBuilder plain = new StringBuilder(typed.length() + 8);
    typed.codePoints().forEach(c -> append(plain, c));
    return plain
        .toString()
        .replace("''", "\"")
        .replaceAll("\\s+", " ")
        .strip()
        .toLowerCase(Locale.ROOT);
  }

  private static void append(StringBuilder plain, int c) {
    switch (c) {
      case '−', '–', '‐', '‑' -> plain.append('-');
      case '′', '’', '‘', '´', '`' -> plain.append('\'');
      case '″', '”', '“' -> plain.append('"');
      case 'º', '˚' -> plain.append('°');
      case '⁄' -> plain.append('/');
      case '⋅', '∙' -> plain.append('·');
      default -> appendCompatible(plain, c);
    }
  }

  private static void appendCompatible(StringBuilder plain, int c) {
    String character = Character.toString(c);
    if (Character.isSpaceChar(c) || Character.isWhitespace(c)) {
      plain.append(' ');
    } else if (Character.getType(c) == Character.OTHER_NUMBER && isVulgarFraction(character)) {
      // The blank keeps 4½ from becoming 41/2.
      plain.append(' ').append(compatible(character).replace('⁄', '/'));
    } else {
      plain.append(c < 0x80 || c == '°' || c == '·' ? character : compatible(character));
    }
  }

  private static boolean isVulgarFraction(String character) {
    return compatible(character).indexOf('⁄') > 0;
  }

  private static String compatible(String character) {
    return Normalizer.normalize(character, Normalizer.Form.NFKC);
  }
}
