package daylight.line.course;

import daylight.line.normal.Gradient;

/**
 * The surface of still water is level: bottom + depth = level of the pond, at every place where its
 * depth is known.
 */
final class WaterEquations {
  /** A level that nothing need determine is as unsure as this, metres. */
  private static final double ANYWHERE = 1e6;

  private final Model model;
  private final Equations equations;
  private final double[] x;
  private final Shape shape;

  WaterEquations(Model model, Equations equations, double[] x, Shape shape) {
    this.model = model;
    this.equations = equations;
    this.x = x;
    this.shape = shape;
  }

  void add() {
    for (Pond pond : model.gathered().ponds()) {
      int level = model.layout().named(pond.name());
      equations.assume(Origin.NOBODY, level, -x[level], ANYWHERE);
      for (Pond.Sounding sounding : pond.soundings()) {
        sounded(level, sounding);
      }
    }
  }

  private void sounded(int level, Pond.Sounding sounding) {
    Walk.Reached at = sounding.at(x);
    Shape.Spot spot = shape.spot(at.limb(), at.t(), at.dt());
    Gradient gradient = new Gradient();
    gradient.add(level, 1);
    gradient.add(spot.up(), -1);
    double grade = model.priors().of(model.grade(at.limb())).a();
    double slope = shape.tangent(at.limb(), at.t())[2];
    double slid = slope * sounding.readingSd();
    double sag = shape.sag(at.limb(), at.t(), grade);
    double sd = Math.sqrt(square(sounding.sd()) + square(slid) + sag);
    Origin origin =
        Origin.of(
            Origin.part(sounding.id(), Source.Sort.FINDING, Source.Part.DEPTH, sounding.sd()),
            Origin.part(sounding.id(), Source.Sort.FINDING, Source.Part.CABLE, slid),
            Origin.part(model.grade(at.limb()), Math.sqrt(sag)));
    equations.observe(origin, gradient, sounding.depth() - (x[level] - spot.point().up()), sd);
  }

  /** The level of every pond where the bottom lies as first guessed. */
  static void start(Model model, double[] x) {
    Shape shape = new Shape(model.knots(), x);
    for (Pond pond : model.gathered().ponds()) {
      double sum = 0;
      for (Pond.Sounding sounding : pond.soundings()) {
        Walk.Reached at = sounding.at(x);
        sum += shape.at(at.limb(), at.t()).up() + sounding.depth();
      }
      x[model.layout().named(pond.name())] = sum / pond.soundings().size();
    }
  }

  private static double square(double v) {
    return v * v;
  }
}
