package daylight.app.track;

import daylight.line.book.Bend;
import daylight.line.book.Papers.Media;
import daylight.line.book.Pass;
import daylight.line.book.Visit;
import daylight.line.book.Where;
import daylight.line.counter.Fitted;
import daylight.line.measure.Reading;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Whether counter readings were written without their unit, so that the book's is meant. */
final class BareReadings {
  private static final Pattern UNIT = Pattern.compile("[\\p{L}'\"\u2032\u2033]");

  private BareReadings() {}

  /** Whether any was in the passes that a recording shows. */
  static boolean in(Visit visit, Media media) {
    return visit.passes().stream()
        .filter(pass -> pass.label().equals(media.pass()) || Fitted.speaks(pass, media.label()))
        .flatMap(BareReadings::readings)
        .anyMatch(reading -> reading.value() != 0 && !UNIT.matcher(reading.written()).find());
  }

  private static Stream<Reading> readings(Pass pass) {
    Pass.End end = pass.end();
    return Stream.of(
            end == null ? Stream.<Reading>empty() : Stream.of(end.cable()),
            pass.anchors().stream().map(Pass.Anchor::counter),
            pass.bends().stream().map(Bend::cable),
            pass.sight().stream().flatMap(sight -> Stream.of(sight.from(), sight.to())),
            pass.findings().stream().flatMap(finding -> readings(finding.where())))
        .flatMap(all -> all);
  }

  private static Stream<Reading> readings(Where where) {
    return switch (where) {
      case Where.AtCable(Reading cable) -> Stream.of(cable);
      case Where.FromTo(Reading from, Reading to) -> Stream.of(from, to);
      case Where.AtMoment _ -> Stream.empty();
    };
  }
}
