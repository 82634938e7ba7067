package daylight.line.course;

import daylight.line.normal.Covariance;
import daylight.line.normal.Factor;
import daylight.line.normal.Normal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Nonlinear least squares over all unknowns of a line at once, by Gauss–Newton steps that are
 * halved until they help.
 *
 * <p>Source of the method: Madsen, Nielsen and Tingleff, <em>Methods for Non-Linear Least Squares
 * Problems</em>, 2nd ed. (2004), section 3.1 (from memory). The normal equations are factored knot
 * by knot, see {@link daylight.line.normal}.
 */
final class Fit {
  private static final int MOST_STEPS = 30;

  /** A step that would better the weighted sum of squares by less than this is the last one. */
  private static final double SETTLED = 1e-11;

  /**
   * Where knots lie close, gains drown in rounding before they are that small. From here on, what
   * does not halve from step to step is taken for rounding: the estimate is within a thousandth of
   * a standard uncertainty.
   */
  private static final double ROUNDED = 1e-6;

  /** On the way there less will do: a tenth of a standard uncertainty. */
  private static final double ROUGHLY = 1e-2;

  /** Where no share of a step helps, a promised gain this small is rounding too. */
  private static final double NEARLY_SETTLED = 1e-4;

  /** Costs that differ by less are equal. */
  private static final double ROUNDING = 1 + 1e-9;

  private static final double SMALLEST_SHARE = 1.0 / 64;

  /** How often the knots follow the marks that slid along the pipe. */
  private static final int MOST_LAYINGS = 3;

  /** How often the pipe's falling short is put right by how unsure it then is. */
  private static final int MOST_WANDERINGS = 8;

  private static final double[] HELD = {0, 1e-12, 1e-10, 1e-8, 1e-6};

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
    return wandering(fitted(settle(open, Start.values(open, shared, hands), hands, ROUGHLY)));
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
      ways.add(settle(model, Start.values(model, shared, hands), hands, ROUGHLY));
    }
    Descent best = ways.stream().min(Comparator.comparingDouble(Descent::cost)).orElseThrow();
    return sure(ways, best);
  }

  /** The same line with other doubts, from where it lay. */
  static Fitted again(Fitted before, SetAside setAside) {
    return wandering(
        fitted(settle(before.model().doubting(setAside), before.x(), before.hands(), ROUGHLY)));
  }

  /** Lets the pipe fall short of its length by as much as its direction is unsure. */
  private static Fitted wandering(Fitted first) {
    Fitted fitted = first;
    for (int i = 0; i < MOST_WANDERINGS; i++) {
      // What contradicts itself does not settle; then more of it helps nobody.
      if (!fitted.settled() || fitted.model().wander().agrees(fitted)) {
        break;
      }
      Model wandering = fitted.model().wandering(Wander.of(fitted));
      fitted = fitted(settle(wandering, fitted.x(), fitted.hands(), ROUGHLY));
    }
    return fitted(settle(fitted.model(), fitted.x(), fitted.hands(), SETTLED));
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
    // Where the last step was next to nothing, so is what it changes of the covariance.
    Factor factor = best.settled() ? best.factor() : factor(equations.normal());
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

  /**
   * The factor of the normal equations. On a pipe of a kilometre that hangs on two spots rounding
   * may leave a hair less than nothing; then every unknown is held by a hair.
   */
  private static Factor factor(Normal normal) {
    for (double held : HELD) {
      Optional<Factor> factor = normal.factor(held);
      if (factor.isPresent()) {
        return factor.get();
      }
    }
    throw new IllegalStateException("an unknown of the line hangs on nothing");
  }

  /**
   * Where a descent ended.
   *
   * @param equations the equations there
   * @param factor of the normal equations before the last step
   */
  @SuppressWarnings("ArrayRecordComponent") // never leaves this room
  private record Descent(
      Model model, double[] x, int[] hands, Equations equations, Factor factor, boolean settled) {
    double cost() {
      return equations.cost();
    }
  }

  /** Descends, and lays the knots anew where marks slid away from theirs. */
  private static Descent settle(Model model, double[] start, int[] hands, double enough) {
    Descent descent = descend(model, start, hands, enough);
    for (int i = 1; i < MOST_LAYINGS && !descent.model().sits(descent.x()); i++) {
      Knots old = descent.model().knots();
      Model next = descent.model().laidOut(descent.x());
      double[] x = Start.moved(new Shape(old, descent.x()), old, descent.x(), next.knots());
      descent = descend(next, x, hands, enough);
    }
    return descent;
  }

  private static Descent descend(Model model, double[] start, int[] hands, double enough) {
    double[] x = start;
    Equations equations = at(model, x, hands);
    double before = Double.POSITIVE_INFINITY;
    for (int step = 1; ; step++) {
      Normal normal = equations.normal();
      Factor factor = factor(normal);
      double[] move = normal.step(factor);
      double gain = normal.gain(move);
      boolean settled = gain < enough || (gain < ROUNDED && gain > before / 2);
      before = gain;
      double share = settled ? 1 : share(model, x, hands, move, equations.cost());
      if (share == 0) {
        boolean nearly = gain < Math.max(enough, NEARLY_SETTLED);
        return new Descent(model, x, hands, equations, factor, nearly);
      }
      x = Step.take(model.knots(), x, move, share);
      equations = at(model, x, hands);
      if (settled || step == MOST_STEPS) {
        return new Descent(model, x, hands, equations, factor, settled);
      }
    }
  }

  private static Equations at(Model model, double[] x, int[] hands) {
    return model.equations(x, hands, new Shape(model.knots(), x));
  }

  /** The largest share of a step, halved again and again, that fits better; 0 for none. */
  private static double share(Model model, double[] x, int[] hands, double[] move, double cost) {
    Shape reference = new Shape(model.knots(), x);
    for (double share = 1; share >= SMALLEST_SHARE; share /= 2) {
      double[] tried = Step.take(model.knots(), x, move, share);
      if (model.layout().hasLengths(tried)
          && model.equations(tried, hands, reference).cost() <= cost * ROUNDING) {
        return share;
      }
    }
    return 0;
  }
}
