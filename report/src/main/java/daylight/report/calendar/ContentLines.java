package daylight.report.calendar;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * Content lines of iCalendar (RFC 5545, 3.1): UTF-8, ended by CR LF, folded so that none is longer
 * than {@value #MOST} octets without its end, and never within a character.
 */
final class ContentLines {
  private static final int MOST = 75;
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuuuMMdd", Locale.ROOT);

  private final ByteArrayOutputStream lines = new ByteArrayOutputStream();

  /** A line whose value stands as it is. */
  ContentLines put(String name, String value) {
    fold(name + ":" + value);
    return this;
  }

  /** A line whose value is text, with what means something in the format escaped (3.3.11). */
  ContentLines text(String name, String text) {
    return put(
        name,
        text.replace("\\", "\\\\")
            .replace(";", "\\;")
            .replace(",", "\\,")
            .replace("\r\n", "\n")
            .replace('\r', '\n')
            .replace("\n", "\\n"));
  }

  /** A line whose value is a day. */
  ContentLines day(String name, LocalDate day) {
    return put(name + ";VALUE=DATE", day.format(DAY));
  }

  /** A line whose value is the beginning of a day in UTC. */
  ContentLines beginOf(String name, LocalDate day) {
    return put(name, day.format(DAY) + "T000000Z");
  }

  byte[] bytes() {
    return lines.toByteArray();
  }

  private void fold(String line) {
    int written = 0;
    for (int code : line.codePoints().toArray()) {
      byte[] one = Character.toString(code).getBytes(StandardCharsets.UTF_8);
      if (written + one.length > MOST) {
        end();
        lines.write(' ');
        written = 1;
      }
      lines.writeBytes(one);
      written += one.length;
    }
    end();
  }

  private void end() {
    lines.write('\r');
    lines.write('\n');
  }
}
