package daylight.report.exchange;

import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.util.ArrayList;
import java.util.List;

/** Texts as drawings of release 12 carry them. */
final class DrawingText {
  /**
   * That of western Europe, which the head of the file names: a number for each accent, as later
   * releases allow, is shown as it stands by some readers of this one.
   */
  static final Charset CODE_PAGE = Charset.forName("windows-1252");

  private static final char DELETE = 0x7F;
  private static final int NOTE_WIDTH = 96;

  private DrawingText() {}

  /**
   * In the code page: a character beyond it by its UTF-16 number as {@code \U+2A6A}, so is the
   * backslash itself; a control character as a caret and a letter.
   */
  static String escaped(String text) {
    StringBuilder out = new StringBuilder();
    CharsetEncoder page = CODE_PAGE.newEncoder();
    for (int i = 0; i < text.length(); i++) {
      char one = text.charAt(i);
      if (one < ' ') {
        out.append('^').append((char) (one + '@'));
      } else if (one == '^') {
        out.append("^ ");
      } else if (one == '\\' || one == DELETE || !page.canEncode(one)) {
        out.append("\\U+%04X".formatted((int) one));
      } else {
        out.append(one);
      }
    }
    return out.toString();
  }

  /** To be read on the sheet: in one line, and without what draws signs and lines under it. */
  static String line(String text) {
    StringBuilder basic = new StringBuilder();
    // Beyond the sixteen bits that the number of a character has here, a drawing shows nothing.
    text.replaceAll("\\s*\\n\\s*", " / ")
        .replace("%%", "% %")
        .codePoints()
        .forEach(one -> basic.appendCodePoint(Character.isBmpCodePoint(one) ? one : 0xFFFD));
    return escaped(basic.toString());
  }

  /** A sentence in lines that are short enough for a note beside a drawing. */
  static List<String> lines(String sentence) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : sentence.split("[ \n]+", -1)) {
      if (!line.isEmpty() && line.length() + 1 + word.length() > NOTE_WIDTH) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.isEmpty() ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }
}
