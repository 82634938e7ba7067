package daylight.archive.form;

import daylight.line.measure.Argument;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Bytes as UTF-8 text, or a complaint that says at which line and column they are none. */
final class Utf8 {
  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private Utf8() {}

  /** The text without its byte order mark; null when the bytes are no text. */
  static @Nullable String of(byte[] bytes, Desk desk) {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    CharBuffer decoded = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = decoder.decode(ByteBuffer.wrap(bytes), decoded, true);
    String text = decoded.flip().toString();
    if (result.isError()) {
      desk.complain(FormTrouble.NOT_UTF8, endOf(text), "");
      return null;
    }
    if (!text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK) {
      text = text.substring(1);
    }
    if (text.isBlank()) {
      desk.complain(FormTrouble.EMPTY, Mark.NOWHERE, "");
      return null;
    }
    return withoutControls(text, desk);
  }

  private static @Nullable String withoutControls(String text, Desk desk) {
    for (int i = 0; i < text.length(); i++) {
      if (isControl(text.charAt(i))) {
        String code = String.format(Locale.ROOT, "U+%04X", (int) text.charAt(i));
        Mark at = endOf(text.substring(0, i));
        desk.complain(FormTrouble.CONTROL_CHARACTER, at, "", new Argument.Text(code));
        return null;
      }
    }
    return text;
  }

  /** The characters that YAML 1.2 calls not printable (production 1, c-printable). */
  private static boolean isControl(char c) {
    boolean blank = c == '\t' || c == '\n' || c == '\r' || c == '\u0085';
    return !blank
        && (c < ' ' || (c >= '\u007F' && c <= '\u009F') || c == '\uFFFE' || c == '\uFFFF');
  }

  private static Mark endOf(String text) {
    int line = 1;
    int start = 0;
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) == '\n') {
        line++;
        start = i + 1;
      }
    }
    return new Mark(line, text.codePointCount(start, text.length()) + 1);
  }
}
