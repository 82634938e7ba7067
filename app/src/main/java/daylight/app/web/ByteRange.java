package daylight.app.web;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What part of a file is asked for (RFC 9110, section 14): one range of bytes. Several ranges at
 * once, and units that are not bytes, are not taken up; the whole file is then sent, as the section
 * allows.
 */
sealed interface ByteRange {
  Pattern ONE = Pattern.compile("(?i)bytes=\\s*(\\d{0,18})-(\\d{0,18})\\s*");

  /** All of it. */
  record Whole() implements ByteRange {}

  /** From one byte to another, both of them included. */
  record Part(long first, long last) implements ByteRange {
    long length() {
      return last - first + 1;
    }
  }

  /** Nothing of it lies in the file. */
  record Outside() implements ByteRange {}

  /** What the text of a Range header asks of a file of that many bytes. */
  static ByteRange of(String header, long size) {
    Matcher one = ONE.matcher(header);
    if (!one.matches() || (one.group(1).isEmpty() && one.group(2).isEmpty())) {
      return new Whole();
    }
    if (one.group(1).isEmpty()) {
      long length = Math.min(Long.parseLong(one.group(2)), size);
      return length == 0 ? new Outside() : new Part(size - length, size - 1);
    }
    long first = Long.parseLong(one.group(1));
    long last = one.group(2).isEmpty() ? size - 1 : Long.parseLong(one.group(2));
    if (!one.group(2).isEmpty() && last < first) {
      return new Whole();
    }
    return first >= size ? new Outside() : new Part(first, Math.min(last, size - 1));
  }
}
