package daylight.line.course;

import daylight.line.normal.Covariance;
import daylight.line.normal.Factor;
import daylight.line.normal.Normal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Nonlinear least squares over all unknowns of a line at once, by Gauss–Newton steps that are
 * halved until they help.
 *
 * <p>Source of the method: Madsen, Nielsen and Tingleff, <em>Methods for Non-Linear Least Squares
 * Problems</em>, 2nd ed. (2004), section 3.1 (from memory). The normal equations are factored knot
 * by knot, see {@link daylight.line.normal}.
 */
final class Fit {
  private static final int MOST_STEPS = 60;

  /**
   * A step that would better the weighted sum of squares by less than this is the last one. Smaller
   * gains drown in rounding, where the knots lie close; the estimate is then within a thousandth of
   * a standard uncertainty, and its last step takes most of that away.
   */
  private static final double SETTLED = 1e-6;

  /** Costs that differ by less are equal. */
  private static final double ROUNDING = 1 + 1e-9;

  private static final double SMALLEST_SHARE = 1.0 / 1024;

  /** How often the knots follow the marks that slid along the pipe. */
  private static final int MOST_LAYINGS = 4;

  /** How often the pipe's falling short is put right by how unsure it then is. */
  private static final int MOST_WANDERINGS = 6;

  /** At most so many turns of free plane are tried either way. */
  private static final int MOST_TRIED = 4;

  /** A way whose cost is higher by this much is e³ ≈ 20 times less likely. */
  private static final double CLEARLY_WORSE = 6;

  private Fit() {}

  /**
   * A settled estimate.
   *
   * @param hands which way each turn of free plane goes; 0 where that is not known
   * @param equations the equations at these unknowns
   * @param cost weighted sum of squared misfits
   * @param settled whether the last step was small enough
   */
  @SuppressWarnings("ArrayRecordComponent") // never leaves this room
  record Fitted(
      Model model,
      double[] x,
      int[] hands,
      Factor factor,
      Covariance covariance,
      Equations equations,
      double cost,
      boolean settled) {}

  /**
   * The best of every way in which the turns of free plane may go; at most four are tried. A turn
   * that fits about as well the other way is left open to both sides.
   */
  static Fitted fit(Model model, double[] shared) {
    int[] hands = hands(model, shared);
    Model open = model.wandering(Wander.open());
    return wandering(fitted(settle(open, Start.values(open, shared, hands), hands)));
  }

  private static int[] hands(Model model, double[] shared) {
    int free = model.gathered().freeTurns().size();
    int tried = Math.min(free, MOST_TRIED);
    if (tried == 0) {
      return new int[free];
    }
    List<Descent> ways = new ArrayList<>();
    for (int way = 0; way < 1 << tried; way++) {
      int[] hands = new int[free];
      for (int i = 0; i < tried; i++) {
        hands[i] = (way >> i & 1) == 0 ? -1 : 1;
      }
      ways.add(settle(model, Start.values(model, shared, hands), hands));
    }
    Descent best = ways.stream().min(Comparator.comparingDouble(Descent::cost)).orElseThrow();
    return sure(ways, best);
  }

  /** The same line with other doubts, from where it lay. */
  static Fitted again(Fitted before, SetAside setAside) {
    return wandering(fitted(settle(before.model().doubting(setAside), before.x(), before.hands())));
  }

  /** Lets the pipe fall short of its length by as much as its direction is unsure. */
  private static Fitted wandering(Fitted first) {
    Fitted fitted = first;
    for (int i = 0; i < MOST_WANDERINGS; i++) {
      Wander wander = Wander.of(fitted.model().knots(), fitted);
      if (fitted.model().wander().agrees(wander)) {
        break;
      }
      fitted = fitted(settle(fitted.model().wandering(wander), fitted.x(), fitted.hands()));
    }
    return fitted;
  }

  /** The hands of the best way, none where another way with the other hand fits about as well. */
  private static int[] sure(List<Descent> ways, Descent best) {
    int[] sure = best.hands().clone();
    for (Descent other : ways) {
      for (int i = 0; i < sure.length; i++) {
        if (other.hands()[i] != best.hands()[i] && other.cost() < best.cost() + CLEARLY_WORSE) {
          sure[i] = 0;
        }
      }
    }
    return sure;
  }

  private static Fitted fitted(Descent best) {
    Equations equations = best.equations();
    Factor factor = equations.normal().factor(0).orElseThrow(Fit::hangsOnNothing);
    return new Fitted(
        best.model(),
        best.x(),
        best.hands(),
        factor,
        factor.covariance(),
        equations,
        best.cost(),
        best.settled());
  }

  private static IllegalStateException hangsOnNothing() {
    return new IllegalStateException("an unknown of the line hangs on nothing");
  }

  @SuppressWarnings("ArrayRecordComponent") // never leaves this room
  private record Descent(
      Model model, double[] x, int[] hands, Equations equations, boolean settled) {
    double cost() {
      return equations.cost();
    }
  }

  /** Descends, and lays the knots anew where marks slid away from theirs. */
  private static Descent settle(Model model, double[] start, int[] hands) {
    Descent descent = descend(model, start, hands);
    for (int i = 1; i < MOST_LAYINGS && !descent.model().sits(descent.x()); i++) {
      Knots old = descent.model().knots();
      Model next = descent.model().laidOut(descent.x());
      double[] x = Start.moved(new Shape(old, descent.x()), old, descent.x(), next.knots());
      descent = descend(next, x, hands);
    }
    return descent;
  }

  private static Descent descend(Model model, double[] start, int[] hands) {
    double[] x = start.clone();
    Equations equations = model.equations(x, hands, new Shape(model.knots(), x));
    for (int step = 0; step < MOST_STEPS; step++) {
      Normal normal = equations.normal();
      double[] move = normal.step(normal.factor(0).orElseThrow(Fit::hangsOnNothing));
      Shape reference = new Shape(model.knots(), x);
      if (normal.gain(move) < SETTLED) {
        x = Step.take(model.knots(), x, move, 1);
        return new Descent(model, x, hands, model.equations(x, hands, reference), true);
      }
      double[] better = null;
      for (double share = 1; better == null && share >= SMALLEST_SHARE; share /= 2) {
        double[] tried = Step.take(model.knots(), x, move, share);
        if (model.layout().hasLengths(tried)) {
          Equations there = model.equations(tried, hands, reference);
          // Directions are those of the step before on both sides, so that costs can be compared.
          if (there.cost() <= equations.cost() * ROUNDING) {
            better = tried;
            equations = there;
          }
        }
      }
      if (better == null) {
        break;
      }
      x = better;
    }
    return new Descent(model, x, hands, equations, false);
  }
}
