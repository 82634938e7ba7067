package daylight.app.web;

import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Pages that only say why there is nothing to see. */
final class NoticePage {
  private NoticePage() {}

  /** There is nothing at that address. */
  static String missing(Frame frame) {
    return write(frame, "web.missing", null);
  }

  /** A fault of ours, named so that it can be told. */
  static String fault(Frame frame, RuntimeException fault) {
    return write(frame, "web.fault", fault);
  }

  private static String write(Frame frame, String key, @Nullable RuntimeException fault) {
    Words words = frame.words();
    Tag header =
        Tag.of("header")
            .add(Tag.of("h1", words.word(key)))
            .add(Tag.of("p", words.word(key + ".why")));
    if (fault != null) {
      header.add(Tag.of("p").add(Tag.of("code", fault.toString())));
    }
    return frame.write(words.word(key), List.of(header));
  }
}
