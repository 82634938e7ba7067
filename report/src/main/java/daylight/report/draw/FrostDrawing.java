package daylight.report.draw;

import daylight.line.answer.Answers;
import daylight.line.answer.Evidence;
import daylight.line.answer.FigureKey;
import daylight.line.answer.Indoors;
import daylight.line.answer.Question;
import daylight.line.course.Route;
import daylight.line.course.Run;
import daylight.line.course.Station;
import daylight.line.fall.WaterSeen;
import daylight.line.measure.Argument;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Cover against frost along the main route: how deep the top of the pipe lies below the ground, and
 * how deep the frost of the winter goes that was answered for, each with the band that holds 95 %.
 */
public final class FrostDrawing {
  private static final double HEIGHT = 400;
  private static final double AXIS = 34;
  private static final double SIZE = 8;

  /** Taken where no bore was written, as where frost was worked out: a usual drain's, metres. */
  private static final double USUAL_BORE = 0.1;

  private static final String FROST_BAND = "#dbe6f2";
  private static final String PIPE_BAND = "#d3e6da";

  private final Subject subject;
  private final Words words;
  private final Route route;
  private final Measured frost;
  private final List<Crown> crowns;
  private final Sheet sheet;
  private final Box plot;
  private final double deepest;

  /** The top of the pipe at a distance along the route, below the ground. */
  private record Crown(double x, Measured below, double bore) {}

  private FrostDrawing(Subject subject, Measured frost, List<Crown> crowns) {
    this.subject = subject;
    this.words = subject.words();
    this.route = subject.route();
    this.frost = frost;
    this.crowns = crowns;
    this.sheet =
        new Sheet(
            "frost",
            subject,
            HEIGHT,
            words.say("draw.frost.title", new Argument.Text(subject.book().site().name())),
            words.word("draw.frost.desc"));
    Box body = sheet.body();
    double left = body.x() + 44;
    this.plot = new Box(left, body.y() + 14, body.right() - left, body.height() - AXIS - 14);
    double most = frost.upper95();
    for (Crown crown : crowns) {
      most = Math.max(most, crown.below().upper95());
    }
    this.deepest = 1.05 * most;
  }

  /** Whether there is anything to draw: a depth of frost and a pipe whose depth is known. */
  public static boolean isFor(Subject subject) {
    return frost(subject).isPresent() && crowns(subject).size() > 1;
  }

  /** The frost and the pipe; only where {@link #isFor} says so. */
  public static Tag draw(Subject subject) {
    return new FrostDrawing(subject, frost(subject).orElseThrow(), crowns(subject)).draw();
  }

  private static Optional<Measured> frost(Subject subject) {
    for (Answers.LineAnswers line : subject.answers().lines()) {
      for (Evidence evidence : line.to(Question.FREEZE).evidence()) {
        if (evidence instanceof Evidence.Figure figure
            && figure.what() == FigureKey.FROST_DEPTH
            && figure.figure() instanceof Argument.UncertainLength(Measured depth)) {
          return Optional.of(depth);
        }
      }
    }
    return Optional.empty();
  }

  /** Under a floor indoors no frost comes, and none is drawn. */
  private static List<Crown> crowns(Subject subject) {
    Route route = subject.route();
    Indoors indoors = Indoors.of(subject.book(), subject.line());
    List<Crown> crowns = new ArrayList<>();
    for (Run run : route.runs()) {
      Reading written = run.reach().bore();
      double bore = written == null ? USUAL_BORE : written.value();
      for (Station station : run.stations()) {
        Measured depth = station.depth();
        if (depth != null && !indoors.holds(station.place())) {
          double x = route.station(station.place()).orElse(0);
          crowns.add(new Crown(x, depth.plus(-bore), bore));
        }
      }
    }
    return crowns;
  }

  private double x(double along) {
    return plot.x() + plot.width() * along / Math.max(1, route.length());
  }

  private double y(double below) {
    return plot.y() + plot.height() * Math.max(0, below) / deepest;
  }

  private Tag draw() {
    band(
        List.of(
            new Point(plot.x(), y(frost.lower95())), new Point(plot.right(), y(frost.lower95()))),
        List.of(
            new Point(plot.x(), y(frost.upper95())), new Point(plot.right(), y(frost.upper95()))),
        FROST_BAND);
    List<Point> over = new ArrayList<>();
    List<Point> under = new ArrayList<>();
    List<Point> top = new ArrayList<>();
    for (Crown crown : crowns) {
      over.add(new Point(x(crown.x()), y(crown.below().lower95())));
      under.add(new Point(x(crown.x()), y(crown.below().upper95())));
      top.add(new Point(x(crown.x()), y(crown.below().value())));
    }
    band(over, under, PIPE_BAND);
    double front = y(frost.value());
    sheet.add(
        Pen.line(new Stroke(plot.x(), front, plot.right(), front), Ink.WATER, 1.4)
            .with("stroke-dasharray", "6 3"));
    sheet.add(Pen.path(Pen.through(top, false), Ink.DRAIN, 2.2));
    subject.answers().fall().water().forEach(this::water);
    sheet.add(Pen.line(new Stroke(plot.x(), plot.y(), plot.right(), plot.y()), Ink.DARK, 1.4));
    labels(front, top.getFirst());
    axes();
    return sheet.finished();
  }

  private void band(List<Point> one, List<Point> other, String fill) {
    List<Point> round = new ArrayList<>(one);
    round.addAll(other.reversed());
    sheet.add(Pen.filled(Pen.through(round, true), fill));
  }

  /** Water that was seen, as high as it stood at most. */
  private void water(WaterSeen seen) {
    double from = route.station(seen.from()).orElse(-1);
    double to = seen.to() == null ? from : route.station(seen.to()).orElse(from);
    Measured depth = seen.depth();
    List<Point> surface = new ArrayList<>();
    for (Crown crown : crowns) {
      if (from >= 0 && crown.x() >= Math.min(from, to) && crown.x() <= Math.max(from, to)) {
        double deep = depth == null ? crown.bore() / 2 : Math.min(crown.bore(), depth.value());
        double below = crown.below().value() + crown.bore() - deep;
        surface.add(new Point(x(crown.x()), y(below)));
      }
    }
    if (surface.size() > 1) {
      sheet.add(Pen.path(Pen.through(surface, false), Ink.WATER, 3.4));
      Point at = surface.get(surface.size() / 2);
      sheet.add(Pen.rimmed(at.x() - 20, at.y() + 14, words.word("draw.frost.water"), SIZE, false));
    }
  }

  private void labels(double front, Point crown) {
    String ground = words.word("draw.frost.ground");
    sheet.add(Pen.text(plot.x() + 4, plot.y() - 4, ground, SIZE, false, Ink.DARK));
    String frozen = words.word("draw.frost.front");
    double wide = Typeface.width(frozen, SIZE, true);
    sheet.add(Pen.rimmed(plot.right() - wide - 4, front - 4, frozen, SIZE, true));
    sheet.add(Pen.rimmed(crown.x() + 4, crown.y() - 5, words.word("draw.frost.crown"), SIZE, true));
    sheet.sideHeading(words.word("draw.frost.reads"));
    sheet.note(words.word("draw.frost.bands"));
    sheet.note(words.word("draw.frost.under"));
  }

  private void axes() {
    double along = Scale.round(70 * route.length() / plot.width(), words.shown());
    double low = plot.bottom();
    sheet.add(Pen.line(new Stroke(plot.x(), low, plot.right(), low), Ink.DARK, 1));
    for (int i = 0; i * along <= route.length() + 1e-9; i++) {
      double x = x(i * along);
      String text = Scale.tick(i * along, words.shown());
      sheet.add(Pen.line(new Stroke(x, low, x, low + 4), Ink.DARK, 1));
      sheet.add(
          Pen.text(
              x - Typeface.width(text, SIZE, false) / 2, low + 13, text, SIZE, false, Ink.DARK));
    }
    double down = Scale.round(40 * deepest / plot.height(), words.shown());
    for (int i = 0; i * down <= deepest; i++) {
      double y = y(i * down);
      String text = Scale.tick(i * down, words.shown());
      sheet.add(Pen.line(new Stroke(plot.x() - 4, y, plot.x(), y), Ink.DARK, 1));
      double wide = Typeface.width(text, SIZE, false);
      sheet.add(Pen.text(plot.x() - 7 - wide, y + 3, text, SIZE, false, Ink.DARK));
    }
  }
}
