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
  private final Axes axes;

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
    plot = new Box(left, body.y() + 14, body.right() - left, body.height() - AXIS - 14);
    double most = frost.upper95();
    for (Crown crown : crowns) {
      most = Math.max(most, crown.below().upper95());
    }
    this.axes = new Axes(sheet, words, plot, Math.max(1, route.length()), 1.05 * most, true);
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

  private Tag draw() {
    double end = route.length();
    axes.band(
        List.of(axes.at(0, frost.lower95()), axes.at(end, frost.lower95())),
        List.of(axes.at(0, frost.upper95()), axes.at(end, frost.upper95())),
        FROST_BAND);
    List<Point> over = new ArrayList<>();
    List<Point> under = new ArrayList<>();
    List<Point> top = new ArrayList<>();
    for (Crown crown : crowns) {
      over.add(axes.at(crown.x(), crown.below().lower95()));
      under.add(axes.at(crown.x(), crown.below().upper95()));
      top.add(axes.at(crown.x(), crown.below().value()));
    }
    axes.band(over, under, PIPE_BAND);
    List<Point> front = List.of(axes.at(0, frost.value()), axes.at(end, frost.value()));
    axes.curve(front, Ink.WATER, 1.4, "6 3");
    axes.curve(top, Ink.DRAIN, 2.2, "");
    List<List<Point>> water =
        subject.answers().fall().water().stream()
            .map(this::water)
            .filter(surface -> !surface.isEmpty())
            .toList();
    water.forEach(surface -> axes.curve(surface, Ink.WATER, 3.4, ""));
    sheet.add(Pen.line(new Stroke(plot.x(), plot.y(), plot.right(), plot.y()), Ink.DARK, 1.4));
    axes.name(front.getLast(), words.word("draw.frost.front"));
    axes.name(top.get(top.size() / 4), words.word("draw.frost.crown"));
    water.stream()
        .findFirst()
        .ifPresent(s -> axes.name(s.get(s.size() / 2), words.word("draw.frost.water")));
    labels();
    axes.across(AxisUnit.length(words.shown()));
    axes.up(AxisUnit.length(words.shown()));
    return sheet.finished();
  }

  /** The surface of water that was seen, as high as it stood at most; no points off the route. */
  private List<Point> water(WaterSeen seen) {
    double from = route.station(seen.from()).orElse(-1);
    double to = seen.to() == null ? from : route.station(seen.to()).orElse(from);
    Measured depth = seen.depth();
    List<Point> surface = new ArrayList<>();
    for (Crown crown : crowns) {
      if (from >= 0 && crown.x() >= Math.min(from, to) && crown.x() <= Math.max(from, to)) {
        double deep = depth == null ? crown.bore() / 2 : Math.min(crown.bore(), depth.value());
        double below = crown.below().value() + crown.bore() - deep;
        surface.add(axes.at(crown.x(), below));
      }
    }
    return surface.size() > 1 ? surface : List.of();
  }

  private void labels() {
    String ground = words.word("draw.frost.ground");
    sheet.add(Pen.text(plot.x() + 4, plot.y() - 4, ground, Axes.SIZE, false, Ink.DARK));
    sheet.sideHeading(words.word("draw.frost.reads"));
    sheet.note(words.word("draw.frost.bands"));
    sheet.note(words.word("draw.frost.under"));
  }
}
