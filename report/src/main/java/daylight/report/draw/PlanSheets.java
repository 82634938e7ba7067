package daylight.report.draw;

import daylight.line.course.LocateFit;
import daylight.line.course.Route;
import daylight.line.measure.Argument;
import daylight.line.measure.Shown;
import daylight.line.measure.Unit;
import daylight.line.survey.PlanPoint;
import daylight.report.cut.Cutter;
import daylight.report.cut.Ground;
import daylight.report.cut.Lie;
import daylight.report.cut.Part;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The door for the drawing from above on paper: one sheet where that can be read, else a key plan
 * and sheets along the line, each of them to {@link #SMALLEST_METRIC} with match lines where it
 * joins others.
 */
public final class PlanSheets {
  /**
   * The smallest scale at which a drain is drawn with its findings, 1:500 or an inch to forty feet;
   * our own choice, after common practice, without a source.
   */
  private static final double SMALLEST_METRIC = 500;

  private static final double SMALLEST_FEET = 12 * 40;

  /** What has to lie on a sheet keeps so far from its edge, points. */
  private static final double MARGIN = 26;

  private static final double FEET_TOGETHER = 5;

  /** So many times smaller than that, a plan is not cut any more; our own choice. */
  private static final double MOST_TIMES = 50;

  private final Subject subject;
  private final Words words;
  private final Scale scale;
  private final List<Part> parts;

  private PlanSheets(Subject subject) {
    this.subject = subject;
    this.words = subject.words();
    boolean metric = words.shown() == Shown.METRES;
    this.scale = new Scale(metric ? SMALLEST_METRIC : SMALLEST_FEET);
    Box box = PlanDrawing.box(PlanDrawing.sheet(subject, "probe", "", "")).grown(-MARGIN);
    double k = scale.pointsPerMetre();
    this.parts =
        Cutter.cut(
            routes(subject),
            beside(subject),
            new Ground(box.width() / k, box.height() / k),
            lie(subject.plan()),
            metric ? 1 : FEET_TOGETHER * Unit.FOOT.metres());
  }

  /** The sheets in order, each with what did not find room beside it right behind it. */
  public static List<Tag> of(Subject subject) {
    if (!isLong(subject)) {
      return PlanDrawing.sheets(subject);
    }
    PlanSheets plan = new PlanSheets(subject);
    if (plan.parts.isEmpty()) {
      return PlanDrawing.sheets(subject);
    }
    List<Tag> sheets = new ArrayList<>(new KeyPlan(subject, plan.parts, plan.corners()).sheets());
    plan.parts.forEach(part -> sheets.addAll(plan.sheet(part)));
    return sheets;
  }

  /**
   * Whether one sheet would show it at a smaller scale than can be read. Of what is larger still,
   * kilometres or a place that was mistyped, nobody would read so many sheets: it stays whole.
   */
  public static boolean isLong(Subject subject) {
    double n = PlanDrawing.frame(subject).scale().n();
    double least = subject.words().shown() == Shown.METRES ? SMALLEST_METRIC : SMALLEST_FEET;
    return n > least && n <= MOST_TIMES * least;
  }

  List<Part> parts() {
    return parts;
  }

  static List<Part> parts(Subject subject) {
    return new PlanSheets(subject).parts();
  }

  private static Lie lie(PlanTurn turn) {
    return switch (turn) {
      case NORTH_UP -> Lie.NORTH_UP;
      case ALONG -> Lie.ALONG;
      case AS_IT_FITS -> Lie.AS_IT_FITS;
    };
  }

  /** The longest ways first, then what branches off them. */
  private static List<Route> routes(Subject subject) {
    Set<Route> routes = new LinkedHashSet<>(Route.mains(subject.line()));
    subject.line().runs().stream()
        .map(run -> run.reach().line())
        .distinct()
        .forEach(name -> routes.addAll(Route.of(subject.line(), name)));
    return List.copyOf(routes);
  }

  private static List<PlanPoint> beside(Subject subject) {
    List<PlanPoint> beside = new ArrayList<>(PlanDrawing.shownPoints(subject).values());
    for (LocateFit fit : subject.line().locates()) {
      if (fit.spot() != null) {
        beside.add(fit.spot());
      }
    }
    beside.addAll(new PlanServices(subject).points());
    return beside;
  }

  private List<Tag> sheet(Part part) {
    Sheet sheet =
        PlanDrawing.sheet(subject, "plan-sheet-" + part.number(), title(part), about(part));
    sheet.bookmark(name(words, part));
    Box box = PlanDrawing.box(sheet);
    PlanFrame frame = PlanFrame.about(part.middle(), box, scale, part.up());
    return PlanDrawing.part(subject, sheet, frame, part).sheets();
  }

  /** Such as {@code Sheet 3}. */
  static String name(Words words, Part part) {
    return words.say("draw.sheet", new Argument.Count(part.number()));
  }

  private String title(Part part) {
    return words.say(
        "draw.sheet.title",
        new Argument.Text(subject.book().site().name()),
        new Argument.Count(part.number()),
        new Argument.Count(parts.size()),
        new Argument.Text(stretch(subject, part)));
  }

  /** From where to where it shows the drain, or that it shows what lies beside it. */
  static String stretch(Subject subject, Part part) {
    Words words = subject.words();
    return part.from() == null || part.to() == null
        ? words.word("draw.sheet.beside")
        : words.say(
            "draw.sheet.stretch",
            new Argument.Text(subject.distance(part.from())),
            new Argument.Text(subject.distance(part.to())));
  }

  private String about(Part part) {
    String joins =
        part.matches().stream()
            .map(match -> MatchLines.text(subject, match))
            .collect(Collectors.joining("; "));
    String desc =
        words.say(
            "draw.sheet.desc",
            new Argument.Count(part.number()),
            new Argument.Count(parts.size()),
            new Argument.Text(stretch(subject, part)),
            new Argument.Text(scale.say(words)));
    return joins.isEmpty() ? desc : desc + " " + joins + ".";
  }

  /** The ground that each sheet shows, corner by corner. */
  private List<List<PlanPoint>> corners() {
    Box box = PlanDrawing.box(PlanDrawing.sheet(subject, "probe", "", ""));
    double half = box.width() / 2 / scale.pointsPerMetre();
    double high = box.height() / 2 / scale.pointsPerMetre();
    List<List<PlanPoint>> all = new ArrayList<>();
    for (Part part : parts) {
      double e = StrictMath.sin(part.up());
      double n = StrictMath.cos(part.up());
      List<PlanPoint> corners = new ArrayList<>();
      for (double[] c :
          new double[][] {{-half, high}, {half, high}, {half, -high}, {-half, -high}}) {
        corners.add(
            new PlanPoint(
                part.middle().x() + n * c[0] + e * c[1], part.middle().y() - e * c[0] + n * c[1]));
      }
      all.add(corners);
    }
    return all;
  }
}
