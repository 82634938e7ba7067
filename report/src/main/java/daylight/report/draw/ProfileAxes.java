package daylight.report.draw;

import daylight.line.course.Route;
import daylight.line.measure.Argument;
import daylight.line.measure.Shown;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;

/** Distance along the foot of the profile, height on its left, and the scale in words. */
final class ProfileAxes {
  private static final double SIZE = 7.5;

  private ProfileAxes() {}

  static void draw(
      Sheet sheet, Box plot, ProfileFrame frame, Profile profile, Route route, Words words) {
    distances(sheet, plot, frame, route, words);
    if (profile.known() != Profile.Known.NOTHING) {
      heights(sheet, plot, frame, profile, words);
    }
    caption(sheet, plot, frame, profile, route, words);
  }

  private static void distances(
      Sheet sheet, Box plot, ProfileFrame frame, Route route, Words words) {
    double step = AxisUnit.length(words.shown()).step(70 / frame.scale().pointsPerMetre());
    int last = (int) Math.floor(route.length() / step + 1e-9);
    sheet.add(
        Pen.line(new Stroke(plot.x(), plot.bottom(), plot.right(), plot.bottom()), Ink.DARK, 1));
    List<Box> written = atBreaks(sheet, plot, frame, words);
    for (int i = 0; i <= last; i++) {
      if (!frame.breaks().hides(i * step)) {
        double x = frame.x(i * step);
        sheet.add(Pen.line(new Stroke(x, plot.bottom(), x, plot.bottom() + 4), Ink.DARK, 1));
        String text = AxisUnit.length(words.shown()).tick(i * step, words);
        double half = Typeface.width(text, SIZE, false) / 2;
        Box room = Box.ofText(x - half, plot.bottom() + 13, text, SIZE, false).grown(3);
        if (written.stream().noneMatch(room::overlaps)) {
          written.add(room);
          sheet.add(Pen.text(x - half, plot.bottom() + 13, text, SIZE, false, Ink.DARK));
        }
      }
    }
  }

  /** The distances at both sides of each break; where they are written. */
  private static List<Box> atBreaks(Sheet sheet, Box plot, ProfileFrame frame, Words words) {
    List<Box> written = new ArrayList<>();
    for (ProfileBreaks.Gap gap : frame.breaks().gaps()) {
      String before = words.length(gap.from());
      String after = words.length(gap.to());
      double width = Typeface.width(before, SIZE, false);
      double left = frame.x(gap.from()) + 4 - width;
      double right = frame.x(gap.to()) - 4;
      written.add(Box.ofText(left, plot.bottom() + 13, before, SIZE, false));
      written.add(Box.ofText(right, plot.bottom() + 13, after, SIZE, false));
      sheet.add(Pen.text(left, plot.bottom() + 13, before, SIZE, false, Ink.DARK));
      sheet.add(Pen.text(right, plot.bottom() + 13, after, SIZE, false, Ink.DARK));
    }
    return written;
  }

  private static void heights(
      Sheet sheet, Box plot, ProfileFrame frame, Profile profile, Words words) {
    double perMetre = frame.scale().pointsPerMetre() * frame.exaggeration();
    Shown shown = words.shown();
    double step = AxisUnit.length(shown).step(Math.max(45 / perMetre, 0.01));
    double low = profile.samples().stream().mapToDouble(s -> s.bottom().value()).min().orElse(0);
    int first = (int) Math.floor(low / step);
    int last = (int) Math.ceil(frame.highest() / step);
    for (int i = first; i <= last; i++) {
      double y = frame.y(i * step);
      if (y > plot.y() + 20 && y < plot.bottom() - 6) {
        Stroke rule = new Stroke(plot.x(), y, plot.right(), y);
        sheet.add(Pen.line(rule, Ink.RULE, 0.5).with("stroke-dasharray", "1 2.5"));
        String text = AxisUnit.length(shown).tick(i * step, words);
        double width = Typeface.width(text, SIZE, false);
        sheet.add(Pen.text(plot.x() - 5 - width, y + 2.6, text, SIZE, false, Ink.DARK));
      }
    }
  }

  private static void caption(
      Sheet sheet, Box plot, ProfileFrame frame, Profile profile, Route route, Words words) {
    StringBuilder text = new StringBuilder();
    text.append(words.say("draw.distance", new Argument.Label(route.from())));
    if (profile.known() != Profile.Known.NOTHING) {
      text.append(" · ")
          .append(
              words.word(profile.known() == Profile.Known.HEIGHTS ? "draw.height" : "draw.below"));
    }
    text.append(" · ").append(frame.scale().say(words));
    if (profile.known() != Profile.Known.NOTHING) {
      text.append(", ")
          .append(
              frame.exaggeration() == 1
                  ? words.word("draw.heights_true")
                  : words.say("draw.exaggeration", new Argument.Number(frame.exaggeration())));
    }
    String cut = Pen.cut(text.toString(), SIZE, false, plot.width() + 44);
    sheet.add(Pen.text(plot.x() - 44, plot.bottom() + 27, cut, SIZE, false, Ink.SOFT));
  }
}
