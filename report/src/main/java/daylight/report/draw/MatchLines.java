package daylight.report.draw;

import daylight.line.book.Place;
import daylight.line.course.Run;
import daylight.line.course.Station;
import daylight.line.measure.Argument;
import daylight.report.cut.Part;
import daylight.report.markup.Tag;
import java.util.ArrayList;
import java.util.List;

/** Lines across the drain where a plan goes on upon another sheet. */
final class MatchLines {
  private static final double SIZE = 8;

  /** A line ends so far from where it would meet the drain once more. */
  private static final double OFF = 8;

  private final Subject subject;
  private final PlanFrame frame;
  private final Box box;

  MatchLines(Subject subject, PlanFrame frame, Box box) {
    this.subject = subject;
    this.frame = frame;
    this.box = box;
  }

  /** Draws the lines, and lets no label run over them. */
  List<Match> draw(List<Part.Match> all, Sheet sheet, Labeller labeller) {
    List<Match> drawn = new ArrayList<>();
    for (Part.Match match : all) {
      subject
          .line()
          .findRun(match.place().reach())
          .filter(run -> run.path() instanceof Run.Path.Found)
          .ifPresent(
              run -> {
                Match line = new Match(match, stroke(run, match.place()));
                sheet.add(
                    Pen.line(line.stroke(), Ink.DARK, 1.5).with("stroke-dasharray", "12 3 3 3"));
                labeller.wall(line.stroke());
                drawn.add(line);
              });
    }
    return drawn;
  }

  /** A match and its line on the sheet. */
  record Match(Part.Match match, Stroke stroke) {}

  /** What each line says, beside the end of it that has more room. */
  void labels(List<Match> all, Sheet sheet, Labeller labeller) {
    for (Match one : all) {
      String text = text(subject, one.match());
      double width = Typeface.width(text, SIZE, true);
      double height = SIZE * (Typeface.ASCENT + Typeface.DESCENT);
      Stroke s = one.stroke();
      Point end = new Point(s.x1() + 0.1 * (s.x2() - s.x1()), s.y1() + 0.1 * (s.y2() - s.y1()));
      Point other = new Point(s.x1() + 0.9 * (s.x2() - s.x1()), s.y1() + 0.9 * (s.y2() - s.y1()));
      labeller
          .place(end.x(), end.y(), 3, width, height)
          .or(() -> labeller.place(other.x(), other.y(), 3, width, height))
          .or(() -> labeller.placeOverMarks(end.x(), end.y(), 3, width, height))
          .ifPresentOrElse(spot -> sheet.add(written(one, text, spot)), () -> sheet.note(text));
    }
  }

  private Tag written(Match one, String text, Labeller.Spot spot) {
    Box room = spot.box();
    Tag group =
        Pen.at(one.match().place()).with("data-match", Integer.toString(one.match().other()));
    if (spot.leader() != null) {
      group.add(Pen.line(spot.leader(), Ink.SOFT, 0.6));
    }
    double baseline = room.middleY() + (Typeface.ASCENT - Typeface.DESCENT) * SIZE / 2;
    return group.add(Pen.rimmed(room.x(), baseline, text, SIZE, true));
  }

  /** Such as {@code Match line 75.00 m – see sheet 3}. */
  static String text(Subject subject, Part.Match match) {
    return subject
        .words()
        .say(
            "draw.match",
            new Argument.Text(subject.distance(match.place())),
            new Argument.Count(match.other()));
  }

  /** Across the drain as far as the box goes, or half way to where the drain comes back. */
  private Stroke stroke(Run run, Place place) {
    Point at = frame.at(Between.spot(run, place.distance()));
    Station near = ((Run.Path.Found) run.path()).nearest(place.distance());
    double across = StrictMath.toRadians(frame.turn(near.bearing() + Math.PI / 2));
    Point one = end(at, across);
    Point other = end(at, across + Math.PI);
    return new Stroke(one.x(), one.y(), other.x(), other.y());
  }

  private Point end(Point at, double way) {
    double dx = StrictMath.cos(way);
    double dy = StrictMath.sin(way);
    double far = box.width() + box.height();
    List<List<Point>> inside =
        new Window(box.grown(-1)).pieces(List.of(at, along(at, far, dx, dy)));
    double length = inside.isEmpty() ? 0 : length(at, inside.getFirst().getLast());
    Stroke ray = new Stroke(at.x(), at.y(), at.x() + length * dx, at.y() + length * dy);
    for (Run run : subject.line().runs()) {
      List<Point> path = run.stations().stream().map(station -> frame.at(station.spot())).toList();
      for (Stroke s : path.size() > 1 ? Pen.strokes(path) : List.<Stroke>of()) {
        if (s.crosses(ray)) {
          double away =
              Math.min(
                  length(at, new Point(s.x1(), s.y1())), length(at, new Point(s.x2(), s.y2())));
          length = away > 2 * OFF ? Math.min(length, away - OFF) : length;
        }
      }
    }
    return along(at, length, dx, dy);
  }

  private static Point along(Point at, double length, double dx, double dy) {
    return new Point(at.x() + length * dx, at.y() + length * dy);
  }

  private static double length(Point a, Point b) {
    return StrictMath.hypot(b.x() - a.x(), b.y() - a.y());
  }
}
