package daylight.line.course;

import daylight.line.book.Level;
import daylight.line.book.Priors;
import daylight.line.book.Reach;
import daylight.line.book.Visit;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import daylight.line.survey.HeightWeight;
import daylight.line.survey.LevelAdjusted;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.ejml.data.DMatrixRMaj;
import org.jspecify.annotations.Nullable;

/** Depths hang from the ground, and the ground from its levels or from being about flat. */
final class HeightEquations {
  /** The height of the first surface is the datum where nothing was levelled, metres. */
  private static final double DATUM = 1e-4;

  /** Keeps the covariance of levels that hang on the datum itself positive definite, metres. */
  private static final double MARK = 1e-3;

  /** Surfaces that are made flat: a floor, a slab, a pavement. */
  private static final Set<String> FLAT = Set.of("slab", "floor", "pavement", "drive", "paving");

  private final Model model;
  private final Equations equations;
  private final double[] x;
  private final Shape shape;
  private final Layout layout;

  HeightEquations(Model model, Equations equations, double[] x, Shape shape) {
    this.model = model;
    this.equations = equations;
    this.x = x;
    this.shape = shape;
    this.layout = model.layout();
  }

  void add() {
    surfaces();
    levels();
    receivers();
    tapes();
  }

  /** How far the ground at one spot may be from the plane of its surface, metres. */
  static Priors.Kind unevenness(String surface) {
    return FLAT.contains(surface.toLowerCase(Locale.ROOT))
        ? Priors.Kind.GROUND_SLAB
        : Priors.Kind.GROUND_YARD;
  }

  private void surfaces() {
    Map<String, Integer> surfaces = new TreeMap<>();
    for (Mark mark : model.marks()) {
      String surface = mark.surface();
      if (surface != null) {
        int plane = layout.named("surface/" + surface);
        surfaces.put(surface, plane);
        Priors.Kind kind = unevenness(surface);
        double[] d = new double[x.length];
        d[mark.ground()] = 1;
        d[plane] = -1;
        equations.suppose(kind.id(), d, x[plane] - x[mark.ground()], model.priors().sd(kind, 0));
      }
    }
    double mean = meanGround();
    boolean datum = model.levels() == null;
    for (int plane : surfaces.values()) {
      double sd = datum ? DATUM : model.priors().sd(Priors.Kind.GROUND_STEP, 0);
      equations.assume(Priors.Kind.GROUND_STEP.id(), plane, mean - x[plane], sd);
      datum = false;
    }
  }

  private double meanGround() {
    LevelAdjusted levels = model.levels();
    if (levels == null) {
      return 0;
    }
    return levels.heights().entrySet().stream()
        .filter(height -> height.getKey().endsWith("/ground"))
        .mapToDouble(Map.Entry::getValue)
        .average()
        .orElseGet(
            () -> levels.heights().values().stream().mapToDouble(h -> h).average().orElse(0));
  }

  @SuppressWarnings("ArrayRecordComponent") // never leaves this room
  private record Levelled(String name, double[] derivative, double misfit) {}

  private void levels() {
    LevelAdjusted levels = model.levels();
    if (levels == null) {
      return;
    }
    List<Levelled> list = new ArrayList<>();
    for (Mark mark : model.marks()) {
      if (mark.ground() >= 0 && model.levelled(mark, Level.Part.GROUND)) {
        double[] d = new double[x.length];
        d[mark.ground()] = 1;
        list.add(levelled(mark, Level.Part.GROUND, d, x[mark.ground()]));
      }
      if (model.levelled(mark, Level.Part.INVERT)) {
        double[] d = new double[x.length];
        list.add(levelled(mark, Level.Part.INVERT, d, invert(mark, d)));
      }
      Double bore = bore(mark);
      if (bore != null && model.levelled(mark, Level.Part.CROWN)) {
        double[] d = new double[x.length];
        list.add(levelled(mark, Level.Part.CROWN, d, invert(mark, d) + bore));
      }
    }
    int n = list.size();
    DMatrixRMaj covariance = new DMatrixRMaj(n, n);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        covariance.set(i, j, levels.covariance(list.get(i).name(), list.get(j).name()));
      }
      covariance.add(i, i, MARK * MARK);
    }
    equations.observe(
        new Equations.Block(
            list.stream().map(Levelled::derivative).toArray(double[][]::new),
            list.stream().mapToDouble(Levelled::misfit).toArray(),
            covariance,
            (weights, ledger) -> {
              List<HeightWeight> terms = new ArrayList<>();
              for (int i = 0; i < weights.length; i++) {
                terms.add(new HeightWeight(list.get(i).name(), weights[i]));
                ledger.add(Priors.Kind.LEVEL.id(), true, weights[i] * weights[i] * MARK * MARK);
              }
              ledger.add(levels.sharesOf(terms));
            }));
  }

  private Levelled levelled(Mark mark, Level.Part part, double[] d, double modelled) {
    LevelAdjusted levels = model.levels();
    if (levels == null) {
      throw new IllegalStateException("asked only where something was levelled");
    }
    String name = LevelsOfBook.name(mark.label(), part);
    return new Levelled(name, d, levels.height(name) - modelled);
  }

  /** The height of the invert at a mark; its derivatives are added to a row. */
  private double invert(Mark mark, double[] du) {
    Walk.Reached at = mark.place(layout, x);
    shape.differentiate(at.limb(), at.t(), at.dt(), new double[x.length], new double[x.length], du);
    return shape.at(at.limb(), at.t()).up();
  }

  private @Nullable Double bore(Mark mark) {
    Reach reach = layout.tree().limbs().get(mark.place(layout, x).limb()).reach();
    Reading bore = reach.bore();
    return bore == null ? null : bore.value();
  }

  /**
   * A receiver shows (1 + scale) × (ground + raised − invert − above) + distortion + noise, where
   * {@code above} is how high the transmitter rides. Neighbours share distortion: its covariance
   * falls off as e to the minus distance over the correlation length.
   */
  private void receivers() {
    for (Visit visit : model.visits()) {
      List<Mark> read =
          model.marks().stream()
              .filter(m -> m.visit().equals(visit.label()))
              .filter(m -> m.depth() instanceof Mark.DepthRead.ByReceiver)
              .toList();
      if (!read.isEmpty()) {
        int scale = layout.named("receiver/" + visit.label());
        int above = layout.named("above/" + visit.label());
        equations.assume(
            Priors.Kind.RECEIVER_SCALE.id(),
            scale,
            -x[scale],
            model.priors().sd(Priors.Kind.RECEIVER_SCALE, 0));
        Measured rides =
            model
                .priors()
                .recordedOrTypical(Priors.Kind.SONDE_ABOVE_INVERT, visit.kit().sondeAboveInvert());
        equations.assume(
            Priors.Kind.SONDE_ABOVE_INVERT.id(), above, rides.value() - x[above], rides.sd());
        receivers(read, scale, above);
      }
    }
  }

  private void receivers(List<Mark> read, int scale, int above) {
    int n = read.size();
    double[][] derivatives = new double[n][];
    double[] misfits = new double[n];
    Mark.DepthRead.ByReceiver[] shown = new Mark.DepthRead.ByReceiver[n];
    Shape.Point[] points = new Shape.Point[n];
    for (int i = 0; i < n; i++) {
      Mark mark = read.get(i);
      if (!(mark.depth() instanceof Mark.DepthRead.ByReceiver by)) {
        throw new IllegalStateException("only receiver readings come here");
      }
      shown[i] = by;
      double[] du = new double[x.length];
      double invert = invert(mark, du);
      Walk.Reached at = mark.place(layout, x);
      points[i] = shape.at(at.limb(), at.t());
      double distance = x[mark.ground()] + shown[i].raised() - invert - x[above];
      double[] d = new double[x.length];
      for (int k = 0; k < d.length; k++) {
        d[k] = -(1 + x[scale]) * du[k];
      }
      d[mark.ground()] += 1 + x[scale];
      d[above] -= 1 + x[scale];
      d[scale] += distance;
      derivatives[i] = d;
      misfits[i] = shown[i].shown() - (1 + x[scale]) * distance;
    }
    DMatrixRMaj shared = new DMatrixRMaj(n, n);
    double length = model.priors().of(Priors.Kind.DEPTH_DISTORTION).correlationLength();
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        double apart =
            StrictMath.hypot(
                points[i].east() - points[j].east(), points[i].north() - points[j].north());
        double fade = length > 0 ? StrictMath.exp(-apart / length) : i == j ? 1 : 0;
        shared.set(i, j, shown[i].distortion() * shown[j].distortion() * fade);
      }
    }
    DMatrixRMaj covariance = shared.copy();
    for (int i = 0; i < n; i++) {
      covariance.add(i, i, shown[i].noise() * shown[i].noise());
    }
    equations.observe(
        new Equations.Block(
            derivatives,
            misfits,
            covariance,
            (weights, ledger) -> {
              double distorted = 0;
              for (int i = 0; i < n; i++) {
                double own = weights[i] * shown[i].noise();
                ledger.add(read.get(i).label(), false, own * own);
                for (int j = 0; j < n; j++) {
                  distorted += weights[i] * shared.get(i, j) * weights[j];
                }
              }
              ledger.add(Priors.Kind.DEPTH_DISTORTION.id(), true, distorted);
            }));
  }

  private void tapes() {
    for (Mark mark : model.marks()) {
      if (mark.depth() instanceof Mark.DepthRead.ByTape(double below, double above, double sd)) {
        double[] du = new double[x.length];
        double invert = invert(mark, du);
        double[] d = new double[x.length];
        for (int k = 0; k < d.length; k++) {
          d[k] = -du[k];
        }
        d[mark.ground()] += 1;
        equations.observe(mark.label(), d, below - (x[mark.ground()] - invert - above), sd);
      }
    }
  }
}
