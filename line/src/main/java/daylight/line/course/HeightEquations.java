package daylight.line.course;

import daylight.line.book.Id;
import daylight.line.book.Level;
import daylight.line.book.Priors;
import daylight.line.book.Visit;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import daylight.line.normal.Gradient;
import daylight.line.survey.HeightWeight;
import daylight.line.survey.LevelAdjusted;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Depths hang from the ground, and the ground from its levels or from being about flat. */
final class HeightEquations {
  private static final Source LEVEL = new Source.OfPrior(Priors.Kind.LEVEL);

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
    new GroundEquations(model, equations, x).add();
    levels();
    receivers();
    tapes();
  }

  private int ground(Pinned pin) {
    return model.knots().unknown(pin.limb(), pin.knot(), Knots.GROUND);
  }

  private Shape.Spot spot(Pinned pin) {
    Walk.Reached at = pin.mark().on(pin.limb(), layout, x);
    return shape.from(pin.limb(), pin.knot(), at.t(), at.dt());
  }

  /** How far the error of its counter reading moves a mark up or down a sloping pipe, metres. */
  private double slipped(Pinned pin) {
    return pin.mark().position() instanceof Mark.Position.ByCable by
        ? StrictMath.sin(shape.pitch(pin.limb(), pin.knot()))
            * model.priors().sd(Priors.Kind.COUNTER_READING, by.cable())
        : 0;
  }

  /**
   * Levels bind heights of ground, invert and crown; what they err by together is shared unknowns.
   */
  private void levels() {
    LevelAdjusted levels = model.levels();
    Common common = model.heights();
    if (levels == null || common == null) {
      return;
    }
    List<Model.Levelled> levelled = model.levelled();
    double[] sds = new double[levelled.size()];
    var block =
        new Equations.Block(
            (weights, ledger) ->
                book(weights, ledger, levelled, sds, levels, model.gathered().surveyed()));
    for (int column = 0; column < common.columns(); column++) {
      int unknown = layout.named(Gathered.heightError(column));
      equations.add(
          new Equations.Row(Origin.NOBODY, Equations.one(unknown), -x[unknown], 1, null, null));
    }
    for (int i = 0; i < levelled.size(); i++) {
      Model.Levelled at = levelled.get(i);
      Gradient gradient = new Gradient();
      double modelled = height(at, gradient);
      double[] row = common.row(i, 1, 0);
      for (int column = 0; column < row.length; column++) {
        int unknown = layout.named(Gathered.heightError(column));
        modelled += row[column] * x[unknown];
        gradient.add(unknown, row[column]);
      }
      sds[i] = Math.sqrt(common.own()[i][0] + square(Model.LEVEL_MARK));
      equations.add(
          new Equations.Row(
              Origin.NOBODY, gradient, levels.height(at.name()) - modelled, sds[i], null, block));
    }
    if (!levelled.isEmpty()) {
      equations.add(block);
    }
  }

  private double height(Model.Levelled at, Gradient gradient) {
    if (at.part() == Level.Part.GROUND) {
      gradient.add(ground(at.pin()), 1);
      return x[ground(at.pin())];
    }
    Shape.Spot spot = spot(at.pin());
    gradient.add(spot.up());
    return spot.point().up() + at.above();
  }

  private static void book(
      List<Double> weights,
      Ledger ledger,
      List<Model.Levelled> levelled,
      double[] sds,
      LevelAdjusted levels,
      Surveyed surveyed) {
    List<HeightWeight> terms = new ArrayList<>();
    for (int i = 0; i < sds.length; i++) {
      double weight = weights.get(i) / sds[i];
      terms.add(new HeightWeight(levelled.get(i).name(), weight));
      ledger.add(LEVEL, square(weight * Model.LEVEL_MARK));
    }
    surveyed.levels(levels.sharesOf(terms), ledger);
  }

  /** The instruments of each visit, then each reading. */
  private void receivers() {
    TreeSet<String> read = new TreeSet<>();
    for (Pinned pin : model.pinned()) {
      if (pin.mark().depth() instanceof Mark.DepthRead.ByReceiver by) {
        read.add(pin.mark().visit());
        receiver(pin, by);
      }
      if (pin.mark().silent() != null || pin.mark().vote() != null) {
        read.add(pin.mark().visit());
        silent(pin);
      }
    }
    for (Visit visit : model.visits()) {
      if (read.contains(visit.label())) {
        instruments(visit);
      }
    }
  }

  private void instruments(Visit visit) {
    int scale = layout.named("receiver/" + visit.label());
    int above = layout.named("above/" + visit.label());
    equations.assume(
        Priors.Kind.RECEIVER_SCALE,
        scale,
        -x[scale],
        model.priors().sd(Priors.Kind.RECEIVER_SCALE, 0));
    Measured rides =
        model
            .priors()
            .recordedOrTypical(Priors.Kind.SONDE_ABOVE_INVERT, visit.kit().sondeAboveInvert());
    Origin origin =
        visit.kit().sondeAboveInvert() == null
            ? Origin.of(Priors.Kind.SONDE_ABOVE_INVERT)
            : Origin.of(visit.id(), Source.Sort.VISIT, Source.Part.ABOVE);
    equations.assume(origin, above, rides.value() - x[above], rides.sd());
  }

  /**
   * A receiver shows (1 + scale) × (ground + raised − invert − above) + distortion + noise, where
   * {@code above} is how high the transmitter rides and the distortion is shared by neighbours.
   */
  private void receiver(Pinned pin, Mark.DepthRead.ByReceiver shown) {
    int scale = layout.named("receiver/" + pin.mark().visit());
    int above = layout.named("above/" + pin.mark().visit());
    int bent = model.knots().unknown(pin.limb(), pin.knot(), Knots.BENT);
    Shape.Spot spot = spot(pin);
    double distance = x[ground(pin)] + shown.raised() - spot.point().up() - x[above];
    double grown = 1 + x[scale];
    Gradient d = new Gradient();
    d.add(spot.up(), -grown);
    d.add(ground(pin), grown);
    d.add(above, -grown);
    d.add(scale, distance);
    d.add(bent, shown.distortion());
    equations.observe(
        read(pin, Source.Part.DEPTH, shown.noise()),
        d,
        shown.shown() - grown * distance - shown.distortion() * x[bent],
        StrictMath.hypot(shown.noise(), slipped(pin))
            * model.setAside().depthFactor(pin.mark().id()),
        new Equations.About.DepthOf(pin));
  }

  /** Where a receiver falls silent depends on no scale of it; a lift check tells of the scale. */
  private void silent(Pinned pin) {
    Measured silent = pin.mark().silent();
    if (silent != null) {
      int above = layout.named("above/" + pin.mark().visit());
      Shape.Spot spot = spot(pin);
      Gradient d = new Gradient();
      d.add(ground(pin), 1);
      d.add(spot.up(), -1);
      d.add(above, -1);
      equations.observe(
          read(pin, Source.Part.SILENT, silent.sd()),
          d,
          silent.value() - (x[ground(pin)] - spot.point().up() - x[above]),
          StrictMath.hypot(silent.sd(), slipped(pin))
              * model.setAside().depthFactor(pin.mark().id()));
    }
    Measured vote = pin.mark().vote();
    if (vote != null) {
      int scale = layout.named("receiver/" + pin.mark().visit());
      equations.observe(
          Origin.of(pin.mark().id(), pin.mark().sort(), Source.Part.LIFT),
          Equations.one(scale),
          vote.value() - x[scale],
          vote.sd());
    }
  }

  /** A reading by itself, and how far its place may be off along a sloping pipe. */
  private Origin read(Pinned pin, Source.Part part, double sd) {
    Mark mark = pin.mark();
    return Origin.of(
        Origin.part(mark.id(), mark.sort(), part, sd),
        Origin.part(mark.id(), mark.sort(), Source.Part.CABLE, slipped(pin)));
  }

  private Origin taped(Pinned pin, Mark.DepthRead.ByTape tape) {
    List<Origin.Part> parts = new ArrayList<>(read(pin, Source.Part.DEPTH, tape.tapeSd()).parts());
    Id bored = tape.bored();
    if (bored != null) {
      parts.add(Origin.part(bored, Source.Sort.REACH, Source.Part.BORE, tape.boreSd()));
    }
    return Origin.of(parts.toArray(Origin.Part[]::new));
  }

  private void tapes() {
    for (Pinned pin : model.pinned()) {
      if (pin.mark().depth() instanceof Mark.DepthRead.ByTape tape) {
        Shape.Spot spot = spot(pin);
        Gradient d = new Gradient();
        d.add(spot.up(), -1);
        d.add(ground(pin), 1);
        equations.observe(
            taped(pin, tape),
            d,
            tape.below() - (x[ground(pin)] - spot.point().up() - tape.above()),
            StrictMath.hypot(tape.sd(), slipped(pin))
                * model.setAside().depthFactor(pin.mark().id()),
            new Equations.About.DepthOf(pin));
      }
    }
  }

  /** The bore at a mark, metres; null where nobody knows. */
  static @Nullable Double bore(Tree tree, int limb) {
    Reading bore = tree.limbs().get(limb).reach().bore();
    return bore == null ? null : bore.value();
  }

  private static double square(double v) {
    return v * v;
  }
}
