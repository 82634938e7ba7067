package daylight.line.course;

import daylight.line.book.FieldBook;
import daylight.line.book.Level;
import daylight.line.book.Priors;
import daylight.line.book.Visit;
import daylight.line.survey.Adjusted;
import daylight.line.survey.LevelAdjusted;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** One line laid out on knots, ready to be put into equations. */
final class Model {
  /** Keeps the covariance of levels that hang on the datum itself positive definite, metres. */
  static final double LEVEL_MARK = 1e-3;

  /** A mark may slide this far along the pipe from its knot, metres, before it gets a new one. */
  private static final double NEAR = 0.1;

  private final Gathered gathered;
  private final double furthest;
  private final Knots knots;
  private final List<Pinned> pinned;
  private final int[] segments;
  private final Surfaces surfaces;
  private final SetAside setAside;
  private final Wander wander;

  /** A levelled height at its knot; the rest as in {@link Gathered.LevelledMark}. */
  record Levelled(Pinned pin, Level.Part part, String name, double above) {}

  /**
   * Lays out the knots where things are for these shared unknowns.
   *
   * @param furthest apart that two knots may be, metres
   */
  Model(Gathered gathered, double furthest, double[] x, SetAside setAside, Wander wander) {
    this.gathered = gathered;
    this.furthest = furthest;
    this.setAside = setAside;
    this.wander = wander;
    Layout layout = gathered.layout();
    List<Walk.Reached> places = new ArrayList<>();
    List<Knots.Wanted> wanted = new ArrayList<>();
    for (Mark mark : gathered.marks()) {
      Walk.Reached at = mark.place(layout, x);
      places.add(at);
      wanted.add(new Knots.Wanted(at.limb(), first(at, x)));
    }
    List<Knots.Wanted> bends = new ArrayList<>();
    for (Turn turn : gathered.turns()) {
      bends.add(new Knots.Wanted(turn.limb(), first(turn.at(x), x)));
    }
    knots = new Knots(layout, wanted, bends, furthest);
    pinned = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      int limb = places.get(i).limb();
      pinned.add(
          new Pinned(gathered.marks().get(i), limb, knots.nearest(limb, wanted.get(i).t0())));
    }
    segments = new int[bends.size()];
    for (int i = 0; i < segments.length; i++) {
      int limb = bends.get(i).limb();
      double t0 = Math.clamp(bends.get(i).t0(), 0, layout.length0(limb));
      segments[i] = knots.segment(limb, t0);
    }
    surfaces = new Surfaces(knots, pinned);
  }

  private Model(Model as, SetAside setAside, Wander wander) {
    gathered = as.gathered;
    furthest = as.furthest;
    knots = as.knots;
    pinned = as.pinned;
    segments = as.segments;
    surfaces = as.surfaces;
    this.setAside = setAside;
    this.wander = wander;
  }

  /** The same with other doubts. */
  Model doubting(SetAside other) {
    return new Model(this, other, wander);
  }

  /** The same whose pipes wander as much as that. */
  Model wandering(Wander other) {
    return new Model(this, setAside, other);
  }

  Wander wander() {
    return wander;
  }

  /** The same with its knots where things are for these unknowns. */
  Model laidOut(double[] x) {
    return new Model(gathered, furthest, x, setAside, wander);
  }

  private double first(Walk.Reached at, double[] x) {
    return at.t() / (1 + x[gathered.layout().stretch(at.limb())]);
  }

  /** The prior by which a limb wanders to the side. */
  Priors.Kind straight(int limb) {
    return rigid(limb) ? Priors.Kind.STRAIGHT_RIGID : Priors.Kind.STRAIGHT_FLEXIBLE;
  }

  /** The prior by which a limb wanders up and down. */
  Priors.Kind grade(int limb) {
    return rigid(limb) ? Priors.Kind.GRADE_RIGID : Priors.Kind.GRADE_FLEXIBLE;
  }

  private boolean rigid(int limb) {
    return layout().tree().limbs().get(limb).reach().material().rigid();
  }

  /** Whether every mark is about where its knot is for these unknowns. */
  boolean sits(double[] x) {
    Layout layout = layout();
    for (Pinned pin : pinned) {
      Walk.Reached at = pin.mark().place(layout, x);
      double t0 = Math.clamp(first(at, x), 0, layout.length0(at.limb()));
      double knot = knots.t0(pin.limb(), pin.knot());
      // A knot that gave way to a bend or to another mark is as near as there is.
      boolean best = at.limb() == pin.limb() && knots.nearest(at.limb(), t0) == pin.knot();
      if (at.limb() != pin.limb() || (Math.abs(t0 - knot) > NEAR && !best)) {
        return false;
      }
    }
    return true;
  }

  Gathered gathered() {
    return gathered;
  }

  Knots knots() {
    return knots;
  }

  Layout layout() {
    return gathered.layout();
  }

  SetAside setAside() {
    return setAside;
  }

  List<Pinned> pinned() {
    return pinned;
  }

  List<Pinned> spotted() {
    return pinned.stream().filter(pin -> gathered.spotted(pin.mark())).toList();
  }

  List<Levelled> levelled() {
    List<Levelled> list = new ArrayList<>();
    for (Gathered.LevelledMark at : gathered.levelled()) {
      for (Pinned pin : pinned) {
        if (pin.mark().equals(at.mark())) {
          list.add(new Levelled(pin, at.part(), at.name(), at.above()));
        }
      }
    }
    return list;
  }

  /** The segment, by the knot at its end, in which the bend of that index turns. */
  int segmentOf(int turn) {
    return segments[turn];
  }

  Surfaces surfaces() {
    return surfaces;
  }

  /** Every surface that lies above the line, in order of name. */
  Set<String> surfaceNames() {
    TreeSet<String> names = new TreeSet<>();
    for (Mark mark : gathered.marks()) {
      String surface = mark.surface();
      if (surface != null) {
        names.add(surface);
      }
    }
    if (names.isEmpty()) {
      names.add("");
    }
    return names;
  }

  /**
   * The equations at one vector of unknowns.
   *
   * @param hands for each turn of free plane, which way it is tried: −1 left, +1 right, 0 either
   * @param reference the course whose directions are taken for errors along it
   */
  Equations equations(double[] x, int[] hands, Shape reference) {
    Equations equations = new Equations(knots.pattern());
    Shape shape = new Shape(knots, x);
    new PipeEquations(this, equations, x, shape).add(hands);
    new CableEquations(this, equations, x).add();
    new SpotEquations(this, equations, x, shape, reference).add();
    if (layout().heights()) {
      new HeightEquations(this, equations, x, shape).add();
      new WaterEquations(this, equations, x, shape).add();
    }
    return equations;
  }

  FieldBook book() {
    return gathered.book();
  }

  Lengths lengths() {
    return gathered.lengths();
  }

  Walks walks() {
    return gathered.walks();
  }

  List<Mark> marks() {
    return gathered.marks();
  }

  List<Turn> turns() {
    return gathered.turns();
  }

  @Nullable Adjusted survey() {
    return gathered.survey();
  }

  @Nullable LevelAdjusted levels() {
    return gathered.levels();
  }

  @Nullable Common plan() {
    return gathered.plan();
  }

  @Nullable Common heights() {
    return gathered.heights();
  }

  Priors priors() {
    return gathered.priors();
  }

  boolean spotted(Mark mark) {
    return gathered.spotted(mark);
  }

  boolean levelled(Mark mark, Level.Part part) {
    return gathered.levelled(mark, part);
  }

  /** The visits of the book, each with what its instruments were. */
  List<Visit> visits() {
    return gathered.book().visits();
  }
}
