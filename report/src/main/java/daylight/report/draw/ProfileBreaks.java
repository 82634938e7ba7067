package daylight.report.draw;

import daylight.line.course.LocateFit;
import daylight.line.course.PlacedFinding;
import daylight.line.course.PlacedPass;
import daylight.line.course.Route;
import daylight.line.dig.Crossing;
import daylight.line.dig.Digger;
import daylight.line.dig.ServiceFound;
import daylight.line.fall.Ponding;
import daylight.line.measure.Shown;
import daylight.report.markup.Tag;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Stretches of a route that its profile leaves out: long ones in which nothing was seen, found,
 * noted or joined, where leaving them out draws a crowded rest a good deal larger. Distances and
 * heights on both sides stay true.
 *
 * @param gaps in order
 */
record ProfileBreaks(List<Gap> gaps) {
  /** What a gap takes on the sheet, points. */
  static final double WIDE = 18;

  /** Of what is left out at least so much of the whole length. */
  private static final double LONG = 0.15;

  /** So much of the whole length is still drawn on both sides of a gap. */
  private static final double REST = 0.05;

  /** So many times larger the rest has to be drawn. */
  private static final double WORTH_IT = 1.5;

  /** Neighbours closer than this leave no room for a number each, points. */
  private static final double CLOSE = 14;

  /** From so many close neighbours on a drawing is crowded. */
  private static final int CROWD = 3;

  /** What is left out, metres from the start of the route. */
  record Gap(double from, double to) {
    double length() {
      return to - from;
    }
  }

  ProfileBreaks {
    gaps = List.copyOf(gaps);
  }

  /**
   * Chooses them.
   *
   * @param width that the whole route may take, points
   */
  static ProfileBreaks of(Subject subject, Route route, double width, Shown shown) {
    ProfileBreaks none = new ProfileBreaks(List.of());
    double length = route.length();
    List<Double> told = List.copyOf(told(subject, route));
    double before = Scale.fitting(Math.max(1, length), width, shown).pointsPerMetre();
    List<Gap> gaps = new ArrayList<>();
    int close = 0;
    for (int i = 1; i < told.size(); i++) {
      double from = told.get(i - 1);
      double to = told.get(i);
      close += (to - from) * before < CLOSE ? 1 : 0;
      Gap gap = new Gap(from + REST * length, to - REST * length);
      if (gap.length() > LONG * length) {
        gaps.add(gap);
      }
    }
    ProfileBreaks broken = new ProfileBreaks(gaps);
    if (gaps.isEmpty() || close < CROWD || broken.wide() > width / 2) {
      return none;
    }
    double after = broken.fitting(length, width, shown).pointsPerMetre();
    return after >= WORTH_IT * before ? broken : none;
  }

  /** Every distance at which there is something to tell. */
  private static TreeSet<Double> told(Subject subject, Route route) {
    TreeSet<Double> told = new TreeSet<>(List.of(0.0, route.length()));
    route.runs().forEach(run -> route.station(run.at(0)).ifPresent(told::add));
    for (PlacedFinding placed : Captions.findings(subject)) {
      route.station(placed.from()).ifPresent(told::add);
      if (placed.to() != null) {
        route.station(placed.to()).ifPresent(told::add);
      }
    }
    for (PlacedPass pass : subject.line().passes()) {
      pass.bends().forEach(bend -> route.station(bend.place()).ifPresent(told::add));
      pass.legs().forEach(leg -> route.station(leg.to()).ifPresent(told::add));
    }
    for (LocateFit fit : subject.line().locates()) {
      route.station(fit.place()).ifPresent(told::add);
    }
    for (Ponding.Pool pool : subject.answers().fall().ponding().pools()) {
      route.station(pool.from()).ifPresent(told::add);
      route.station(pool.to()).ifPresent(told::add);
    }
    for (ServiceFound service : Digger.services(subject.book(), subject.line())) {
      for (Crossing crossing : service.crossings()) {
        route.station(crossing.place()).ifPresent(told::add);
      }
    }
    return told;
  }

  private double wide() {
    return WIDE * gaps.size();
  }

  private double leftOut() {
    return gaps.stream().mapToDouble(Gap::length).sum();
  }

  /** The largest scale in which so many metres, less what is left out, fit into so many points. */
  Scale fitting(double length, double width, Shown shown) {
    return Scale.fitting(Math.max(1, length - leftOut()), width - wide(), shown);
  }

  /** How far from the start a distance is drawn, points. */
  double x(double distance, double pointsPerMetre) {
    double x = 0;
    double at = 0;
    for (Gap gap : gaps) {
      if (distance <= gap.from()) {
        break;
      }
      x += (gap.from() - at) * pointsPerMetre;
      at = gap.to();
      if (distance < gap.to()) {
        return x + WIDE * (distance - gap.from()) / gap.length();
      }
      x += WIDE;
    }
    return x + (distance - at) * pointsPerMetre;
  }

  /** Whether a distance is one that is left out. */
  boolean hides(double distance) {
    return gaps.stream().anyMatch(gap -> distance > gap.from() && distance < gap.to());
  }

  /** Draws the sign of every gap over what is drawn through it. */
  void draw(Sheet sheet, ProfileFrame frame, Box plot, Labeller labeller, Legend legend) {
    for (Gap gap : gaps) {
      double left = frame.x(gap.from()) + 3;
      double right = frame.x(gap.to()) - 3;
      Box band = new Box(left, plot.y() + 4, right - left, plot.height() - 2);
      sheet.add(
          Tag.of("g")
              .with("data-gap-from", gap.from())
              .with("data-gap-to", gap.to())
              .add(Pen.box(band, Ink.PAPER, "none"))
              .add(edge(left, band), edge(right, band)));
      labeller.keepClear(band);
      legend.use(Legend.Entry.BREAK);
    }
  }

  /** A stroke from top to bottom with a short zigzag in its middle. */
  private static Tag edge(double x, Box band) {
    return Pen.path(
        "M%s %sV%sl3 3l-6 6l3 3V%s"
            .formatted(
                Tag.number(x),
                Tag.number(band.y()),
                Tag.number(band.middleY() - 6),
                Tag.number(band.bottom())),
        Ink.DARK,
        0.9);
  }

  static Tag sign() {
    return Tag.of("g")
        .add(Pen.path("M-9 0H-4M4 0H9", Ink.DRAIN, 2.4))
        .add(Pen.path("M-3 -7V-4l2 2l-4 4l2 2V7M3 -7V-4l2 2l-4 4l2 2V7", Ink.DARK, 0.9));
  }
}
