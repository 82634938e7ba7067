package daylight.report.draw;

import daylight.line.course.Route;
import daylight.line.course.Run;
import daylight.line.fall.FallLimit;
import daylight.line.fall.FallStretch;
import daylight.line.measure.Measured;
import daylight.line.measure.Printed;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;

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
    for (FallStretch stretch : shown(subject, route, frame)) {
      Box box = box(route, frame, stretch, strip);
      double left = Math.max(free, box.x());
      double right = Math.min(strip.right(), box.right());
      if (right - left > BRACKET) {
        one(words, sheet, stretch, new Box(left, strip.y(), right - left, strip.height()));
        free = right;
      }
    }
  }

  private static Box box(Route route, ProfileFrame frame, FallStretch stretch, Box strip) {
    double left = frame.x(route.station(stretch.from()).orElseThrow());
    double right = frame.x(route.station(stretch.to()).orElseThrow());
    return new Box(left, strip.y(), right - left, strip.height());
  }

  /** The parts of a reach where the figure of each has room, else the reach as a whole. */
  private static List<FallStretch> shown(Subject subject, Route route, ProfileFrame frame) {
    Words words = subject.words();
    List<FallStretch> here =
        subject.answers().fall().stretches().stream()
            .filter(stretch -> route.station(stretch.from()).isPresent())
            .toList();
    List<FallStretch> shown = new ArrayList<>();
    for (Run run : route.runs()) {
      List<FallStretch> parts = here.stream().filter(s -> !s.whole() && of(run, s)).toList();
      boolean room =
          !parts.isEmpty()
              && parts.stream()
                  .allMatch(
                      part -> {
                        Box box = box(route, frame, part, new Box(0, 0, 0, 0));
                        return Typeface.width(figure(words, part), SIZE, true) < box.width()
                            && Typeface.width(words.word(verdict(part)), SIZE, false) < box.width();
                      });
      here.stream().filter(s -> s.whole() != room && of(run, s)).forEach(shown::add);
    }
    return shown;
  }

  private static boolean of(Run run, FallStretch stretch) {
    return stretch.from().reach().equals(run.reach().label());
  }

  private static String figure(Words words, FallStretch stretch) {
    Printed slope = words.slope(stretch.slope());
    return slope.value() + " " + slope.plusMinus();
  }

  private static void one(Words words, Sheet sheet, FallStretch stretch, Box box) {
    sheet.add(
        Pen.path(
            "M%s %sv4H%sv-4".formatted(n(box.x() + 1.5), n(box.y() + 1), n(box.right() - 1.5)),
            Ink.SOFT,
            1));
    String figure = figure(words, stretch);
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
