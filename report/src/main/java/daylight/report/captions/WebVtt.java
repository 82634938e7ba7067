package daylight.report.captions;

import java.util.List;
import java.util.Locale;

/**
 * WebVTT files (W3C, WebVTT: The Web Video Text Tracks Format, section 4, "Syntax"). Every text is
 * one line without markup, so the same cues serve as captions and as chapter titles.
 */
public final class WebVtt {
  private static final long SECOND = 1000;
  private static final long MINUTE = 60 * SECOND;
  private static final long HOUR = 60 * MINUTE;

  private WebVtt() {}

  /**
   * The file as text.
   *
   * @param note what is to be said to whoever reads it; nothing shows it
   */
  public static String write(List<Cue> cues, String note) {
    StringBuilder file = new StringBuilder("WEBVTT\n\nNOTE ").append(escaped(note)).append('\n');
    int number = 0;
    for (Cue cue : cues) {
      long from = Math.round(cue.from() * SECOND);
      long to = Math.max(from + 1, Math.round(cue.to() * SECOND));
      file.append('\n')
          .append(++number)
          .append('\n')
          .append(time(from))
          .append(" --> ")
          .append(time(to))
          .append('\n')
          .append(escaped(cue.text()))
          .append('\n');
    }
    return file.toString();
  }

  private static String time(long milliseconds) {
    return String.format(
        Locale.ROOT,
        "%02d:%02d:%02d.%03d",
        milliseconds / HOUR,
        milliseconds / MINUTE % 60,
        milliseconds / SECOND % 60,
        milliseconds % SECOND);
  }

  /**
   * A line of text: what would be markup or an arrow is escaped, an end of line becomes a space,
   * and what no text holds is replaced as the standard's own parser does.
   */
  private static String escaped(String text) {
    String line = text.replaceAll("[\\r\\n\\u2028\\u2029]+", " ").replace('\0', '\uFFFD').strip();
    return line.isEmpty()
        ? "–"
        : line.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
