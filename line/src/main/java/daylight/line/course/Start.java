package daylight.line.course;

import daylight.line.book.Bend;
import daylight.line.book.FieldBook;
import daylight.line.book.Level;
import daylight.line.book.Priors;
import daylight.line.book.Visit;
import daylight.line.measure.Reading;
import daylight.line.survey.Adjusted;
import daylight.line.survey.LevelAdjusted;
import daylight.line.survey.PlanPoint;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * First values of the unknowns: each limb is its nominal pipe, straight but for the bends seen,
 * laid from known spot to known spot.
 */
final class Start {
  /** Spots nearer to each other than this give no direction, metres. */
  private static final double TOO_NEAR = 0.05;

  private final Model model;
  private final Layout layout;
  private final Knots knots;
  private final int[] hands;
  private final double[] x;

  private record Known(double t0, PlanPoint spot) {}

  private Start(Model model, int[] hands) {
    this.model = model;
    this.layout = model.layout();
    this.knots = model.knots();
    this.hands = hands;
    this.x = new double[knots.pattern().size()];
  }

  /** The shared unknowns as expected before anything is known of the course. */
  static double[] shared(Gathered of, FieldBook book, Priors priors) {
    return shared(of.layout(), of.walks(), of.marks(), book, priors, of.levels());
  }

  /** The same before everything is gathered. */
  static double[] shared(
      Layout layout,
      Walks walks,
      List<Mark> marks,
      FieldBook book,
      Priors priors,
      @Nullable LevelAdjusted levels) {
    double[] x = new double[layout.shared()];
    for (Walk walk : walks.all()) {
      x[walk.scale()] = walk.counter().scale().value() - 1;
      x[walk.slack()] = walk.counter().slack().value();
    }
    for (Visit visit : book.visits()) {
      for (Mark mark : marks) {
        if (mark.visit().equals(visit.label())) {
          if (mark.position() instanceof Mark.Position.ByCable by && by.behind() >= 0) {
            x[by.behind()] =
                usual(priors, Priors.Kind.SONDE_BEHIND_LENS, visit.kit().sondeBehindLens());
          }
          if (mark.depth() instanceof Mark.DepthRead.ByReceiver || mark.silent() != null) {
            x[layout.named("above/" + visit.label())] =
                usual(priors, Priors.Kind.SONDE_ABOVE_INVERT, visit.kit().sondeAboveInvert());
          }
        }
        String surface = mark.surface();
        if (surface != null && layout.heights()) {
          x[layout.named(Surfaces.plane(surface))] = GroundEquations.meanGround(levels);
        }
      }
    }
    return x;
  }

  private static double usual(Priors priors, Priors.Kind kind, @Nullable Reading recorded) {
    return priors.recordedOrTypical(kind, recorded).value();
  }

  /**
   * Values for every unknown.
   *
   * @param shared the shared unknowns to start from
   */
  static double[] values(Model model, double[] shared, int[] hands) {
    Start start = new Start(model, hands);
    System.arraycopy(shared, 0, start.x, 0, model.layout().shared());
    start.plan();
    if (model.layout().heights()) {
      start.heights();
      WaterEquations.start(model, start.x);
    }
    return start.x;
  }

  /** The same course on other knots. */
  static double[] moved(Shape shape, Knots from, double[] values, Knots to) {
    double[] x = new double[to.pattern().size()];
    Layout layout = to.layout();
    System.arraycopy(values, 0, x, 0, layout.shared());
    for (int limb = 0; limb < layout.tree().limbs().size(); limb++) {
      for (int i = 0; i < to.count(limb); i++) {
        double t0 = to.t0(limb, i);
        int end = from.segment(limb, t0);
        double f = (t0 - from.t0(limb, end - 1)) / (from.t0(limb, end) - from.t0(limb, end - 1));
        int size = to.pattern().size(to.block(limb, i));
        for (int which = 0; which < size; which++) {
          x[to.unknown(limb, i, which)] =
              (1 - f) * values[from.unknown(limb, end - 1, which)]
                  + f * values[from.unknown(limb, end, which)];
        }
        Shape.Point at = shape.at(limb, t0 * (1 + values[layout.stretch(limb)]));
        x[to.unknown(limb, i, Knots.EAST)] = at.east();
        x[to.unknown(limb, i, Knots.NORTH)] = at.north();
        if (layout.heights()) {
          x[to.unknown(limb, i, Knots.UP)] = at.up();
        }
      }
    }
    return x;
  }

  /** The nominal pipe of a limb: from the origin northward, turning where bends were seen. */
  private final class Nominal {
    private final double[] east;
    private final double[] north;
    private final double[] up;
    private final double[] bearing;
    private final double[] pitch;
    private final int limb;

    Nominal(int limb) {
      this.limb = limb;
      int n = knots.count(limb);
      east = new double[n];
      north = new double[n];
      up = new double[n];
      bearing = new double[n];
      pitch = new double[n];
      for (int i = 1; i < n; i++) {
        double[] bent = bent(limb, i);
        bearing[i] = bearing[i - 1] + bent[0];
        pitch[i] = pitch[i - 1] + bent[1];
        double h = (knots.t0(limb, i) - knots.t0(limb, i - 1)) * (1 + x[layout.stretch(limb)]);
        double[] d = Shape.direction(bearing[i - 1] + bent[0] / 2, pitch[i - 1] + bent[1] / 2);
        east[i] = east[i - 1] + h * d[0];
        north[i] = north[i - 1] + h * d[1];
        up[i] = up[i - 1] + h * d[2];
      }
    }

    /** How far east and north a distance is. */
    double[] at(double t0) {
      double t = Math.clamp(t0, 0, layout.length0(limb));
      int end = knots.segment(limb, t);
      double f = (t - knots.t0(limb, end - 1)) / (knots.t0(limb, end) - knots.t0(limb, end - 1));
      return new double[] {
        (1 - f) * east[end - 1] + f * east[end], (1 - f) * north[end - 1] + f * north[end]
      };
    }
  }

  private double[] bent(int limb, int segment) {
    double[] bent = new double[2];
    int free = -1;
    for (int k = 0; k < model.turns().size(); k++) {
      Turn turn = model.turns().get(k);
      free += turn.sense() == Bend.Sense.UNKNOWN ? 1 : 0;
      if (turn.limb() == limb && model.segmentOf(k) == segment) {
        switch (turn.sense()) {
          case LEFT -> bent[0] -= turn.angle();
          case RIGHT -> bent[0] += turn.angle();
          case UNKNOWN -> bent[0] += hands[free] * turn.angle();
          case UP -> bent[1] += turn.angle();
          case DOWN -> bent[1] -= turn.angle();
        }
      }
    }
    return bent;
  }

  /** A similar copy: turned, stretched and set down. */
  private record Laying(double turn, double grow, double fromEast, double fromNorth, PlanPoint to) {
    PlanPoint put(double east, double north) {
      double e = grow * (east - fromEast);
      double n = grow * (north - fromNorth);
      double sin = StrictMath.sin(turn);
      double cos = StrictMath.cos(turn);
      return new PlanPoint(to.x() + cos * e + sin * n, to.y() - sin * e + cos * n);
    }
  }

  private void plan() {
    List<Tree.Limb> limbs = layout.tree().limbs();
    for (int limb = 0; limb < limbs.size(); limb++) {
      int parent = limbs.get(limb).parent();
      Nominal nominal = new Nominal(limb);
      List<Known> known = new ArrayList<>();
      double before = 0;
      if (parent >= 0) {
        int last = knots.count(parent) - 1;
        known.add(new Known(0, position(parent, last)));
        before =
            x[knots.unknown(parent, last, Knots.BEARING)]
                + (layout.tree().meets(limb) ? Math.PI : 0);
      } else if (limb > 0) {
        known.add(new Known(0, position(0, 0)));
        before = x[knots.unknown(0, 0, Knots.BEARING)] + Math.PI;
      }
      boolean rooted = !known.isEmpty();
      known(limb).stream().filter(k -> !rooted || k.t0() > 2 * TOO_NEAR).forEach(known::add);
      if (known.isEmpty()) {
        known.add(new Known(0, elsewhere(limb)));
      }
      lay(limb, nominal, layings(nominal, known, before));
    }
  }

  private PlanPoint position(int limb, int i) {
    return new PlanPoint(
        x[knots.unknown(limb, i, Knots.EAST)], x[knots.unknown(limb, i, Knots.NORTH)]);
  }

  /** How the nominal pipe is laid up to a distance. */
  private record Stretch(double upTo, Laying laying) {}

  private List<Stretch> layings(Nominal nominal, List<Known> known, double before) {
    List<Stretch> stretches = new ArrayList<>();
    double turn = before;
    for (int i = 1; i < known.size(); i++) {
      Known a = known.get(i - 1);
      Known b = known.get(i);
      double[] p = nominal.at(a.t0());
      double[] q = nominal.at(b.t0());
      double chord = StrictMath.hypot(q[0] - p[0], q[1] - p[1]);
      double ground = a.spot().distanceTo(b.spot());
      if (chord > TOO_NEAR && ground > TOO_NEAR) {
        double own = StrictMath.atan2(q[0] - p[0], q[1] - p[1]);
        double wanted = a.spot().bearingTo(b.spot()) - own;
        turn += Angles.wrap(wanted - turn);
        stretches.add(new Stretch(b.t0(), new Laying(turn, ground / chord, p[0], p[1], a.spot())));
      }
    }
    if (stretches.isEmpty()) {
      Known only = known.getFirst();
      double[] p = nominal.at(only.t0());
      return List.of(
          new Stretch(Double.POSITIVE_INFINITY, new Laying(turn, 1, p[0], p[1], only.spot())));
    }
    // Before the first and beyond the last known spot the pipe keeps its length.
    Laying first = stretches.getFirst().laying();
    List<Stretch> all = new ArrayList<>();
    all.add(
        new Stretch(
            known.getFirst().t0(),
            new Laying(first.turn(), 1, first.fromEast(), first.fromNorth(), first.to())));
    all.addAll(stretches);
    Known end = known.getLast();
    double[] p = nominal.at(end.t0());
    double last = stretches.getLast().laying().turn();
    all.add(new Stretch(Double.POSITIVE_INFINITY, new Laying(last, 1, p[0], p[1], end.spot())));
    return all;
  }

  private void lay(int limb, Nominal nominal, List<Stretch> stretches) {
    for (int i = 0; i < knots.count(limb); i++) {
      double t0 = knots.t0(limb, i);
      Laying laying =
          stretches.stream().filter(s -> t0 <= s.upTo()).findFirst().orElseThrow().laying();
      PlanPoint at = laying.put(nominal.east[i], nominal.north[i]);
      x[knots.unknown(limb, i, Knots.EAST)] = at.x();
      x[knots.unknown(limb, i, Knots.NORTH)] = at.y();
      x[knots.unknown(limb, i, Knots.BEARING)] = laying.turn() + nominal.bearing[i];
      if (layout.heights()) {
        x[knots.unknown(limb, i, Knots.PITCH)] = nominal.pitch[i];
        x[knots.unknown(limb, i, Knots.UP)] = nominal.up[i];
      }
    }
  }

  private List<Known> known(int limb) {
    List<Known> known = new ArrayList<>();
    Adjusted survey = model.survey();
    for (Pinned pin : model.pinned()) {
      if (pin.limb() == limb && survey != null && model.spotted(pin.mark())) {
        double t = pin.mark().on(limb, layout, x).t();
        known.add(new Known(t / (1 + x[layout.stretch(limb)]), survey.point(pin.mark().label())));
      }
    }
    known.sort(
        Comparator.comparingDouble(Known::t0)
            .thenComparingDouble(k -> k.spot().x())
            .thenComparingDouble(k -> k.spot().y()));
    return known;
  }

  /** Where a limb starts on which nothing is known: at the first spot known on any other. */
  private PlanPoint elsewhere(int limb) {
    for (int other = 0; other < layout.tree().limbs().size(); other++) {
      List<Known> known = other == limb ? List.of() : known(other);
      if (!known.isEmpty()) {
        return known.getFirst().spot();
      }
    }
    return new PlanPoint(0, 0);
  }

  /** The ground from its levels, and the pipe at the mean of what was read below it. */
  private void heights() {
    LevelAdjusted levels = model.levels();
    double mean = GroundEquations.meanGround(levels);
    for (int limb = 0; limb < layout.tree().limbs().size(); limb++) {
      int parent = layout.tree().limbs().get(limb).parent();
      double from = parent < 0 ? 0 : x[knots.unknown(parent, knots.count(parent) - 1, Knots.UP)];
      for (int i = 0; i < knots.count(limb); i++) {
        x[knots.unknown(limb, i, Knots.GROUND)] = mean;
        x[knots.unknown(limb, i, Knots.UP)] += from;
      }
    }
    double sum = 0;
    int n = 0;
    for (Pinned pin : model.pinned()) {
      Mark mark = pin.mark();
      int ground = knots.unknown(pin.limb(), pin.knot(), Knots.GROUND);
      double up = x[knots.unknown(pin.limb(), pin.knot(), Knots.UP)];
      if (mark.ground() && levels != null && model.levelled(mark, Level.Part.GROUND)) {
        x[ground] = levels.height(LevelsOfBook.name(mark.label(), Level.Part.GROUND));
      }
      Double below =
          switch (mark.depth()) {
            case Mark.DepthRead.ByReceiver read -> read.shown() - read.raised();
            case Mark.DepthRead.ByTape tape -> tape.below();
            case null -> mark.silent() == null ? null : mark.silent().value();
          };
      if (below != null) {
        sum += x[ground] - below - up;
        n++;
      }
      if (levels != null && model.levelled(mark, Level.Part.INVERT)) {
        sum += levels.height(LevelsOfBook.name(mark.label(), Level.Part.INVERT)) - up;
        n++;
      }
    }
    double lift = n == 0 ? mean : sum / n;
    for (int limb = 0; limb < layout.tree().limbs().size(); limb++) {
      for (int i = 0; i < knots.count(limb); i++) {
        x[knots.unknown(limb, i, Knots.UP)] += lift;
      }
    }
  }
}
