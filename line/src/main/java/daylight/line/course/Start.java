package daylight.line.course;

import daylight.line.book.Level;
import daylight.line.survey.PlanPoint;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** First values of the unknowns: each limb runs from known spot to known spot. */
final class Start {
  private final Model model;
  private final Layout layout;
  private final double[] x;

  private record Known(double t, PlanPoint spot) {}

  private Start(Model model) {
    this.model = model;
    this.layout = model.layout();
    this.x = new double[layout.size()];
  }

  static double[] values(Model model) {
    Start start = new Start(model);
    start.carried();
    start.plan();
    if (layoutHasHeights(model)) {
      start.heights();
    }
    return start.x;
  }

  private static boolean layoutHasHeights(Model model) {
    return model.layout().heights();
  }

  /** How things ride on the cable: what was recorded or is usual. */
  private void carried() {
    for (var visit : model.visits()) {
      for (Mark mark : model.marks()) {
        if (mark.visit().equals(visit.label())
            && mark.position() instanceof Mark.Position.ByCable by
            && by.behind() >= 0) {
          x[by.behind()] =
              model
                  .priors()
                  .recordedOrTypical(
                      daylight.line.book.Priors.Kind.SONDE_BEHIND_LENS,
                      visit.kit().sondeBehindLens())
                  .value();
        }
      }
    }
  }

  private void plan() {
    List<Tree.Limb> limbs = layout.tree().limbs();
    PlanPoint[] ends = new PlanPoint[limbs.size()];
    double[] last = new double[limbs.size()];
    for (int limb = 0; limb < limbs.size(); limb++) {
      int parent = limbs.get(limb).parent();
      List<Known> known = known(limb);
      double[] bearings = new double[layout.steps(limb)];
      PlanPoint near = parent < 0 ? root(limb, known) : ends[parent];
      List<Known> polyline = new ArrayList<>();
      polyline.add(new Known(0, near));
      known.stream().filter(k -> k.t() > 0.1).forEach(polyline::add);
      double bearing = parent < 0 ? 0 : last[parent];
      double step = layout.length0(limb) / bearings.length;
      for (int i = 0; i < bearings.length; i++) {
        bearing = bearingAt(polyline, (i + 0.5) * step, bearing);
        bearings[i] = bearing;
      }
      double before = parent < 0 ? 0 : last[parent];
      for (int i = 0; i < bearings.length; i++) {
        x[layout.turn(limb, i)] = parent < 0 && i == 0 ? bearings[0] : wrap(bearings[i] - before);
        before = bearings[i];
      }
      if (parent < 0) {
        x[0] = near.x();
        x[1] = near.y();
      }
      Shape.Point end = new Shape(layout, x).at(limb, layout.length0(limb));
      ends[limb] = new PlanPoint(end.east(), end.north());
      last[limb] = bearings[bearings.length - 1];
    }
  }

  private List<Known> known(int limb) {
    List<Known> known = new ArrayList<>();
    for (Mark mark : model.marks()) {
      Walk.Reached at = mark.place(layout, x);
      if (at.limb() == limb && model.spotted(mark) && model.survey() != null) {
        known.add(new Known(at.t(), model.survey().point(mark.label())));
      }
    }
    known.sort(
        Comparator.comparingDouble(Known::t)
            .thenComparingDouble(k -> k.spot().x())
            .thenComparingDouble(k -> k.spot().y()));
    return known;
  }

  /** Where the root lies: where it was tied, else back from the first two spots. */
  private PlanPoint root(int limb, List<Known> known) {
    List<Known> all = known.isEmpty() ? elsewhere(limb) : known;
    if (all.isEmpty()) {
      return new PlanPoint(0, 0);
    }
    Known first = all.getFirst();
    if (first.t() < 0.1 || all.size() == 1) {
      return first.spot();
    }
    Known second = all.get(1);
    double run = Math.max(0.1, second.t() - first.t());
    double back = first.t() / run;
    return new PlanPoint(
        first.spot().x() - back * (second.spot().x() - first.spot().x()),
        first.spot().y() - back * (second.spot().y() - first.spot().y()));
  }

  private List<Known> elsewhere(int limb) {
    for (int other = 0; other < layout.tree().limbs().size(); other++) {
      List<Known> known = other == limb ? List.of() : known(other);
      if (!known.isEmpty()) {
        return List.of(new Known(0, known.getFirst().spot()));
      }
    }
    return List.of();
  }

  private static double bearingAt(List<Known> polyline, double t, double otherwise) {
    for (int i = 1; i < polyline.size(); i++) {
      Known a = polyline.get(i - 1);
      Known b = polyline.get(i);
      boolean last = i == polyline.size() - 1;
      if ((t <= b.t() || last) && a.spot().distanceTo(b.spot()) > 0.05) {
        return a.spot().bearingTo(b.spot());
      }
    }
    return otherwise;
  }

  static double wrap(double angle) {
    return StrictMath.IEEEremainder(angle, 2 * Math.PI);
  }

  /** The ground from its levels, and the pipe flat at the mean of what was read below it. */
  private void heights() {
    double mean = 0;
    var levels = model.levels();
    if (levels != null) {
      List<Double> grounds = new ArrayList<>();
      for (Mark mark : model.marks()) {
        if (model.levelled(mark, Level.Part.GROUND)) {
          grounds.add(levels.height(LevelsOfBook.name(mark.label(), Level.Part.GROUND)));
        }
      }
      mean = grounds.stream().mapToDouble(Double::doubleValue).average().orElse(0);
    }
    double sum = 0;
    int n = 0;
    for (Mark mark : model.marks()) {
      if (mark.ground() >= 0) {
        x[mark.ground()] =
            levels != null && model.levelled(mark, Level.Part.GROUND)
                ? levels.height(LevelsOfBook.name(mark.label(), Level.Part.GROUND))
                : mean;
        String surface = mark.surface();
        if (surface != null) {
          x[layout.named("surface/" + surface)] = mean;
        }
        double below =
            switch (mark.depth()) {
              case Mark.DepthRead.ByReceiver read -> read.shown() - read.raised();
              case Mark.DepthRead.ByTape tape -> tape.below();
              case null -> Double.NEGATIVE_INFINITY;
            };
        if (below > Double.NEGATIVE_INFINITY) {
          sum += x[mark.ground()] - below;
          n++;
        }
      }
      if (levels != null && model.levelled(mark, Level.Part.INVERT)) {
        sum += levels.height(LevelsOfBook.name(mark.label(), Level.Part.INVERT));
        n++;
      }
    }
    x[2] = n == 0 ? mean : sum / n;
  }
}
