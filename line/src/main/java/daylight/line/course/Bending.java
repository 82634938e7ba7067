package daylight.line.course;

import daylight.line.book.Bend;
import daylight.line.book.Priors;
import daylight.line.normal.Gradient;
import java.util.ArrayList;
import java.util.List;

/** What the bends seen on the way from one knot to the next make of it. */
final class Bending {
  double turn;
  double turnVariance;
  double tip;
  double tipVariance;
  double across;
  final Gradient acrossBy = new Gradient();
  double acrossVariance;
  double above;
  final Gradient aboveBy = new Gradient();
  double aboveVariance;
  double along;

  /** The bends that turn it in plan, or may. */
  final Bent sideways = new Bent();

  /** Those that tip it, or may. */
  final Bent upright = new Bent();

  /** What several bends in one place are unsure by, each by itself, as variances. */
  static final class Bent {
    private final List<Origin.Part> turns = new ArrayList<>();
    private final List<Origin.Part> moves = new ArrayList<>();

    private void add(Turn bend, double turnSd, double readingSd, double foldSd) {
      turns.add(Origin.part(bend.id(), Source.Sort.BEND, Source.Part.ANGLE, turnSd));
      moves.add(Origin.part(bend.id(), Source.Sort.BEND, Source.Part.CABLE, readingSd));
      moves.add(Origin.part(bend.id(), Source.Sort.BEND, Source.Part.ANGLE, foldSd));
    }

    boolean isEmpty() {
      return turns.isEmpty();
    }

    /** Where the error of the turn comes from, with what the pipe wanders by itself. */
    Origin turning(Priors.Kind wander, double variance) {
      return with(turns, wander, variance);
    }

    /** Where the error of the way comes from, with what the pipe wanders by itself. */
    Origin moving(Priors.Kind wander, double variance) {
      return with(moves, wander, variance);
    }

    private static Origin with(List<Origin.Part> parts, Priors.Kind wander, double variance) {
      if (parts.isEmpty()) {
        return Origin.of(wander);
      }
      List<Origin.Part> all = new ArrayList<>(parts);
      all.add(new Origin.Part(new Source.OfPrior(wander), variance));
      return Origin.of(all.toArray(Origin.Part[]::new));
    }
  }

  private Bending() {}

  /** sin(Δ/2)/(Δ/2) and its derivative. */
  static double[] chord(double turn) {
    double half = turn / 2;
    if (Math.abs(half) < 1e-3) {
      return new double[] {1 - half * half / 6, -half / 6};
    }
    double s = StrictMath.sin(half) / half;
    return new double[] {s, (StrictMath.cos(half) - s) / half / 2};
  }

  /**
   * A bend by Δ that lies δ beyond the middle of its segment moves the far end by 2·sin(Δ/2)·δ
   * against its turn: δ hangs on the counter as the reading of the bend does.
   */
  static Bending of(Model model, double[] x, int limb, int i, int[] hands) {
    Bending bends = new Bending();
    List<Turn> turns = model.turns();
    double middle0 = (model.knots().t0(limb, i) + model.knots().t0(limb, i - 1)) / 2;
    int free = -1;
    for (int k = 0; k < turns.size(); k++) {
      Turn turn = turns.get(k);
      boolean open = turn.sense() == Bend.Sense.UNKNOWN;
      free += open ? 1 : 0;
      if (turn.limb() != limb || model.segmentOf(k) != i) {
        continue;
      }
      Walk.Reached at = turn.at(x);
      double beyond = at.t() - middle0 * (1 + x[model.layout().stretch(limb)]);
      double lever = 2 * StrictMath.sin(turn.angle() / 2);
      bends.along = Math.max(bends.along, slackOfBend(turn.angle()));
      switch (turn.sense()) {
        case UP, DOWN -> {
          int sign = turn.sense() == Bend.Sense.UP ? 1 : -1;
          bends.tip += sign * turn.angle();
          bends.tipVariance += square(turn.sd());
          bends.above -= sign * lever * beyond;
          shift(bends.aboveBy, at, model.layout().stretch(limb), middle0, -sign * lever);
          bends.aboveVariance += square(lever * turn.readingSd());
          bends.upright.add(turn, turn.sd(), lever * turn.readingSd(), 0);
        }
        case LEFT, RIGHT, UNKNOWN -> {
          int hand = open ? hands[free] : turn.sense() == Bend.Sense.RIGHT ? 1 : -1;
          // A plane that nobody knows and that is not tried either way may turn by all of it.
          double sd = hand == 0 ? turn.angle() : turn.sd();
          bends.turn += hand * turn.angle();
          bends.turnVariance += square(sd);
          bends.across -= hand * lever * beyond;
          shift(bends.acrossBy, at, model.layout().stretch(limb), middle0, -hand * lever);
          bends.acrossVariance +=
              square(lever * turn.readingSd()) + (hand == 0 ? square(lever * Knots.HALF_BEND) : 0);
          bends.sideways.add(
              turn, sd, lever * turn.readingSd(), hand == 0 ? lever * Knots.HALF_BEND : 0);
          if (open) {
            bends.tipVariance += square(turn.sd());
            bends.upright.add(turn, turn.sd(), 0, 0);
          }
        }
      }
    }
    return bends;
  }

  private static void shift(
      Gradient to, Walk.Reached at, int stretch, double middle0, double times) {
    to.add(at.dt(), times);
    to.add(stretch, -times * middle0);
  }

  /** Half the share of length between a sharp bend and an even one. */
  private static double slackOfBend(double angle) {
    return (chord(angle)[0] - StrictMath.cos(angle / 2)) / 2;
  }

  private static double square(double v) {
    return v * v;
  }
}
