package daylight.app.web;

import daylight.line.answer.StopOrder;
import daylight.report.draw.Captions;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;

/** What stands above everything else that is said of a property. */
final class Titles {
  private Titles() {}

  /** What a property is called, where it lies, whether it is invented. */
  static Tag header(Subject subject) {
    Tag header =
        Tag.of("header")
            .add(Tag.of("h1", subject.book().site().name()))
            .add(Pieces.paragraph("quiet", Captions.under(subject)));
    return subject.book().site().invented()
        ? header.add(Pieces.paragraph("invented", subject.words().word("report.invented")))
        : header;
  }

  /** Stop orders, each under a heading of that rank. */
  static List<Tag> stops(Subject subject, String rank) {
    Words words = subject.words();
    List<Tag> stops = new ArrayList<>();
    for (StopOrder stop : subject.answers().stops()) {
      stops.add(
          Tag.of("div")
              .with("class", "stop")
              .add(Tag.of(rank, words.word("report.stop")))
              .add(Tag.of("p", Captions.stop(subject, stop)))
              .add(Tag.of("p", words.word("report.stop.do"))));
    }
    return stops;
  }
}
