package daylight.line.course;

import daylight.line.normal.Covariance;
import daylight.line.normal.Factor;
import daylight.line.normal.Normal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Nonlinear least squares over all unknowns of a line at once, by damped Gauss–Newton steps.
 *
 * <p>Source of the method: Madsen, Nielsen and Tingleff, <em>Methods for Non-Linear Least Squares
 * Problems</em>, 2nd ed. (2004), algorithm 3.16 (from memory). The normal equations are factored
 * knot by knot, see {@link daylight.line.normal}.
 */
final class Fit {
  private static final int MOST_STEPS = 60;
  private static final double SETTLED = 1e-9;

  /** How often the knots follow the marks that slid along the pipe. */
  private static final int MOST_LAYINGS = 4;

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
    int free = model.gathered().freeTurns().size();
    int tried = Math.min(free, MOST_TRIED);
    List<Descent> ways = new ArrayList<>();
    for (int way = 0; way < 1 << tried; way++) {
      int[] hands = new int[free];
      for (int i = 0; i < tried; i++) {
        hands[i] = (way >> i & 1) == 0 ? -1 : 1;
      }
      ways.add(settle(model, Start.values(model, shared, hands), hands));
    }
    Descent best = ways.stream().min(Comparator.comparingDouble(Descent::cost)).orElseThrow();
    int[] sure = sure(ways, best);
    return fitted(Arrays.equals(sure, best.hands()) ? best : settle(best.model(), best.x(), sure));
  }

  /** The same line with other doubts, from where it lay. */
  static Fitted again(Fitted before, Doubted doubted) {
    return fitted(settle(before.model().doubting(doubted), before.x(), before.hands()));
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
      Model model, double[] x, int[] hands, Equations equations, double cost, boolean settled) {}

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
    double damping = 1e-6;
    Equations equations = at(model, x, hands);
    for (int step = 0; step < MOST_STEPS; step++) {
      double[] move = move(equations.normal(), damping);
      double[] next = x.clone();
      double largest = 0;
      for (int k = 0; k < next.length; k++) {
        next[k] += move[k];
        largest = Math.max(largest, Math.abs(move[k]));
      }
      double nextCost =
          model.layout().hasLengths(next)
              ? model.equations(next, hands, new Shape(model.knots(), x)).cost()
              : Double.POSITIVE_INFINITY;
      if (nextCost <= equations.cost()) {
        x = next;
        equations = at(model, x, hands);
        damping = Math.max(1e-12, damping / 10);
      } else {
        damping = Math.min(1e9, damping * 10);
      }
      if (largest < SETTLED) {
        return new Descent(model, x, hands, equations, equations.cost(), true);
      }
    }
    return new Descent(model, x, hands, equations, equations.cost(), false);
  }

  private static Equations at(Model model, double[] x, int[] hands) {
    return model.equations(x, hands, new Shape(model.knots(), x));
  }

  private static double[] move(Normal normal, double damping) {
    return normal.step(normal.factor(damping).orElseThrow(Fit::hangsOnNothing));
  }
}
