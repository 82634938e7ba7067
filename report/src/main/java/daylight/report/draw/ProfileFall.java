package daylight.report.draw;

import daylight.line.fall.FallLimit;
import daylight.line.fall.FallStretch;
import daylight.line.measure.Measured;
import daylight.line.measure.Printed;
import daylight.report.words.Words;
import java.util.List;
import java.util.OptionalDouble;

/** The fall, stretch by stretch, along the foot of the profile. */
final class ProfileFall {
  private static final double SIZE = 8;

  /** A stretch drawn shorter than this has no bracket. */
  private static final double BRACKET = 4;

  private ProfileFall() {}

  static void draw(Subject subject, Route route, Sheet sheet, ProfileFrame frame, Box strip) {
    Words words = subject.words();
    sheet.add(
        Pen.text(
            strip.x() - 44, strip.y() + 15, words.word("draw.fall.head"), SIZE, true, Ink.DARK));
    double free = strip.x();
    for (FallStretch stretch : shown(subject)) {
      OptionalDouble from = route.distance(stretch.from());
      OptionalDouble to = route.distance(stretch.to());
      if (from.isPresent() && to.isPresent()) {
        double left = Math.max(free, frame.x(from.getAsDouble()));
        double right = Math.min(strip.right(), frame.x(to.getAsDouble()));
        if (right - left > BRACKET) {
          one(words, sheet, stretch, new Box(left, strip.y(), right - left, strip.height()));
          free = right;
        }
      }
    }
  }

  /** The parts of a reach where it has parts, else the reach as a whole. */
  private static List<FallStretch> shown(Subject subject) {
    List<FallStretch> all = subject.answers().fall().stretches();
    return all.stream()
        .filter(
            stretch ->
                !stretch.whole()
                    || all.stream()
                        .noneMatch(
                            other ->
                                !other.whole()
                                    && other.from().reach().equals(stretch.from().reach())))
        .toList();
  }

  private static void one(Words words, Sheet sheet, FallStretch stretch, Box box) {
    sheet.add(
        Pen.path(
            "M%s %sv4H%sv-4".formatted(n(box.x() + 1.5), n(box.y() + 1), n(box.right() - 1.5)),
            Ink.SOFT,
            1));
    Printed slope = words.slope(stretch.slope());
    String figure = slope.value() + " " + slope.plusMinus();
    String verdict = words.word(verdict(stretch));
    centred(sheet, box, box.y() + 16, figure, true);
    centred(sheet, box, box.y() + 26, verdict, false);
  }

  /** What can be said of the fall; an interval about the limit decides nothing. */
  private static String verdict(FallStretch stretch) {
    Measured slope = stretch.slope();
    FallLimit limit = stretch.limit();
    if (slope.upper95() < 0) {
      return "draw.fall.backward";
    }
    if (limit == null) {
      return "draw.fall.no_rule";
    }
    if (slope.upper95() < limit.slope()) {
      return "draw.fall.flat";
    }
    return slope.lower95() >= limit.slope() ? "draw.fall.enough" : "draw.fall.unsure";
  }

  private static void centred(Sheet sheet, Box box, double baseline, String text, boolean bold) {
    double width = Typeface.width(text, SIZE, bold);
    if (width <= box.width()) {
      sheet.add(Pen.text(box.middleX() - width / 2, baseline, text, SIZE, bold, Ink.DARK));
    }
  }

  private static String n(double value) {
    return daylight.report.markup.Tag.number(value);
  }
}
