package daylight.line.course;

import daylight.line.normal.Covariance;
import daylight.line.normal.Gradient;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.special.Erf;
import org.jspecify.annotations.Nullable;

/**
 * Looks for what the rest contradicts: a spot that is off, a depth that is off, a bend nobody noted
 * or a slip of the counter between two marks.
 *
 * <p>With the whitened residuals v of what is tested and their covariance R, T = vᵀR⁻¹v is
 * chi-square with as many degrees as are tested, if nothing is wrong; with one gross error the test
 * of that error is the most powerful one. Source: Baarda, <em>A testing procedure for use in
 * geodetic networks</em> (1968), and Teunissen, <em>Testing Theory</em> (2000), both from memory. A
 * bend is tested the same way: as a gross error of "this pipe runs straight on here".
 */
final class Suspicion {
  /** Chance that a sound spot or depth of a line is suspected at all. */
  private static final double FAMILY = 0.01;

  /** Chance that a bend is suspected in a line without: to look once more costs less. */
  private static final double FAMILY_OF_BENDS = 0.05;

  /** One is not told from another that is less than ten times as likely. */
  private static final double AS_LIKELY = StrictMath.log(10);

  /**
   * Less redundancy than this checks nothing. What is supposed of one piece of pipe is checked by
   * little, and still shows a gross error; below this it is rounding.
   */
  private static final double CHECKED = 1e-6;

  /** A spot or depth must be checked this well before it is put aside. */
  private static final double WELL_CHECKED = 0.05;

  /**
   * One thing that may be wrong.
   *
   * @param about what
   * @param logChance natural logarithm of the chance of as much misfit if nothing is wrong
   * @param size how wrong it would be, metres or radians
   */
  private record Suspect(Equations.About about, double logChance, double size) {}

  /** What is put aside, how far off it was, and its label, or those before and after a bend. */
  record Found(Equations.About about, double size, String label, String beyond) {}

  /** The line without what was put aside. */
  record Cleared(Fit.Fitted fitted, List<Found> found) {}

  private Suspicion() {}

  /** Puts aside one suspect after another until the rest agrees. */
  static Cleared clear(Fit.Fitted fitted) {
    List<Found> found = new ArrayList<>();
    Fit.Fitted line = fitted;
    int most = Math.max(1, fitted.model().marks().size() / 3);
    while (found.size() < most && line.settled()) {
      Suspect worst = worst(line);
      if (worst == null) {
        break;
      }
      found.add(told(line.model(), worst));
      if (worst.about() instanceof Equations.About.WayTo) {
        // Which side of it the counter is right on, nobody can say: the course stays between both.
        break;
      }
      line = Fit.again(line, doubting(line.model(), worst.about()));
    }
    return new Cleared(line, found);
  }

  private static Found told(Model model, Suspect suspect) {
    return switch (suspect.about()) {
      case Equations.About.SpotOf(Pinned pin) ->
          new Found(suspect.about(), suspect.size(), pin.mark().label(), "");
      case Equations.About.DepthOf(Pinned pin) ->
          new Found(suspect.about(), suspect.size(), pin.mark().label(), "");
      case Equations.About.TurnTo(int limb, int knot) -> between(model, suspect, limb, knot);
      case Equations.About.WayTo(int limb, int knot) -> between(model, suspect, limb, knot);
    };
  }

  private static Found between(Model model, Suspect suspect, int limb, int knot) {
    SetAside.Loose stretch = stretch(model, limb, knot);
    return new Found(
        suspect.about(),
        suspect.size(),
        at(model, limb, stretch.from(), false),
        at(model, limb, stretch.to(), true));
  }

  /** The mark at an end of a stretch, else the node at that end of the limb. */
  private static String at(Model model, int limb, double t0, boolean far) {
    for (Pinned pin : model.spotted()) {
      if (pin.limb() == limb && model.knots().t0(limb, pin.knot()) == t0) {
        return pin.mark().label();
      }
    }
    Tree.Limb of = model.layout().tree().limbs().get(limb);
    return far ? of.far() : of.near();
  }

  private static SetAside doubting(Model model, Equations.About about) {
    SetAside before = model.setAside();
    return switch (about) {
      case Equations.About.SpotOf(Pinned pin) -> before.withSpot(pin.mark().id());
      case Equations.About.DepthOf(Pinned pin) -> before.withDepth(pin.mark().id());
      case Equations.About.TurnTo(int limb, int knot) -> before.with(stretch(model, limb, knot));
      case Equations.About.WayTo _ -> before;
    };
  }

  /** The stretch between the marks on either side, or the ends of the limb. */
  private static SetAside.Loose stretch(Model model, int limb, int knot) {
    double at = (model.knots().t0(limb, knot) + model.knots().t0(limb, knot - 1)) / 2;
    double from = 0;
    double to = model.layout().length0(limb);
    for (Pinned pin : model.spotted()) {
      double t0 = model.knots().t0(pin.limb(), pin.knot());
      if (pin.limb() == limb && t0 <= at) {
        from = Math.max(from, t0);
      } else if (pin.limb() == limb) {
        to = Math.min(to, t0);
      }
    }
    return new SetAside.Loose(limb, from, to);
  }

  private static @Nullable Suspect worst(Fit.Fitted line) {
    List<Suspect> suspects = suspects(line);
    long measured = suspects.stream().filter(s -> !between(s.about())).count();
    double limit = StrictMath.log(FAMILY / Math.max(1, measured));
    // Between two marks one bend looks like another: the stretches count, not the knots.
    double ofBends = StrictMath.log(FAMILY_OF_BENDS / (line.model().spotted().size() + 1));
    List<Suspect> told =
        suspects.stream()
            .filter(
                s ->
                    s.logChance() <= (between(s.about()) ? ofBends : limit)
                        && !already(line.model(), s.about()))
            .sorted(Comparator.comparingDouble(Suspect::logChance))
            .toList();
    // A spot off along the pipe looks like a slip of the counter; then it is not the spot's fault.
    return told.stream()
        .filter(s -> s.about() instanceof Equations.About.WayTo)
        .filter(s -> s.logChance() <= told.getFirst().logChance() + AS_LIKELY)
        .findFirst()
        .orElse(told.isEmpty() ? null : told.getFirst());
  }

  /** Whether a suspicion is of what lies between two marks. */
  private static boolean between(Equations.About about) {
    return about instanceof Equations.About.TurnTo || about instanceof Equations.About.WayTo;
  }

  private static boolean already(Model model, Equations.About about) {
    return switch (about) {
      case Equations.About.SpotOf(Pinned pin) ->
          model.setAside().spots().contains(pin.mark().id()) || !pin.mark().onCable();
      case Equations.About.DepthOf(Pinned pin) ->
          model.setAside().depths().contains(pin.mark().id());
      case Equations.About.TurnTo(int limb, int knot) -> {
        double from = model.knots().t0(limb, knot - 1);
        double length = model.knots().t0(limb, knot) - from;
        yield model.setAside().loose(limb, from, length) > 0;
      }
      case Equations.About.WayTo(int limb, int knot) -> {
        double from = model.knots().t0(limb, knot - 1);
        double length = model.knots().t0(limb, knot) - from;
        yield model.setAside().loose(limb, from, length) > 0;
      }
    };
  }

  private static List<Suspect> suspects(Fit.Fitted line) {
    List<Suspect> suspects = new ArrayList<>();
    List<Equations.Row> rows = line.equations().rows();
    for (int i = 0; i < rows.size(); i++) {
      Equations.Row row = rows.get(i);
      Suspect suspect =
          switch (row.about()) {
            case Equations.About.SpotOf about -> pair(line, about, row, rows.get(++i));
            case Equations.About.DepthOf about -> single(line, about, row, WELL_CHECKED);
            case Equations.About.TurnTo about -> single(line, about, row, CHECKED);
            case Equations.About.WayTo about -> single(line, about, row, CHECKED);
            case null -> null;
          };
      if (suspect != null) {
        suspects.add(suspect);
      }
    }
    return suspects;
  }

  private static @Nullable Suspect single(
      Fit.Fitted line, Equations.About about, Equations.Row row, double least) {
    double redundancy = redundancy(line.covariance(), row);
    if (redundancy < least) {
      return null;
    }
    double v = row.misfit() / row.sd();
    return new Suspect(about, logTail1(v * v / redundancy), v / redundancy * row.sd());
  }

  /** The variance of a whitened residual: its redundancy, from 0 to 1. */
  static double redundancy(Covariance covariance, Equations.Row row) {
    return 1 - together(covariance, row, row);
  }

  /** By how much two whitened observations follow each other in the estimate. */
  private static double together(Covariance covariance, Equations.Row a, Equations.Row b) {
    return covariance.of(a.gradient(), b.gradient()) / (a.sd() * b.sd());
  }

  private static @Nullable Suspect pair(
      Fit.Fitted line, Equations.About about, Equations.Row east, Equations.Row rest) {
    Checked checked = Checked.of(line.covariance(), east, rest);
    if (checked.best() < WELL_CHECKED) {
      return null;
    }
    double t = 0;
    double[] off = new double[2];
    int degrees = 0;
    for (int k = 0; k < 2; k++) {
      if (checked.share()[k] >= WELL_CHECKED) {
        double along = checked.along(k, east.misfit() / east.sd(), rest.misfit() / rest.sd());
        t += along * along / checked.share()[k];
        off[0] += along / checked.share()[k] * checked.axis()[k][0];
        off[1] += along / checked.share()[k] * checked.axis()[k][1];
        degrees++;
      }
    }
    double chance = degrees == 2 ? -t / 2 : logTail1(t);
    return new Suspect(about, chance, length(off, east, rest));
  }

  /** A whitened pair back in metres on the ground. */
  private static double length(double[] off, Equations.Row east, Equations.Row rest) {
    double e = off[0] * east.sd();
    Gradient plain = rest.gradient();
    double lean = lean(east.gradient(), plain);
    double n = off[1] * rest.sd() + lean * e;
    return StrictMath.hypot(e, n);
  }

  /** How much of the east was taken off the north to whiten it. */
  private static double lean(Gradient east, Gradient rest) {
    int first = east.unknown(0);
    for (int i = 0; i < rest.count(); i++) {
      if (rest.unknown(i) == first) {
        return -rest.value(i) / east.value(0);
      }
    }
    return 0;
  }

  /**
   * How well the rest checks a spot.
   *
   * @param share redundancy along two directions of the whitened plane, from 0 to 1
   * @param axis those directions
   */
  @SuppressWarnings("ArrayRecordComponent") // never leaves this room
  record Checked(double[] share, double[][] axis) {
    static Checked of(Covariance covariance, Equations.Row east, Equations.Row rest) {
      double a = redundancy(covariance, east);
      double b = -together(covariance, east, rest);
      double d = redundancy(covariance, rest);
      double turn = StrictMath.atan2(2 * b, a - d) / 2;
      double c = StrictMath.cos(turn);
      double s = StrictMath.sin(turn);
      double mean = (a + d) / 2;
      double half = StrictMath.hypot((a - d) / 2, b);
      return new Checked(new double[] {mean + half, mean - half}, new double[][] {{c, s}, {-s, c}});
    }

    double best() {
      return share[0];
    }

    double along(int k, double v1, double v2) {
      return axis[k][0] * v1 + axis[k][1] * v2;
    }
  }

  /** Logarithm of the chance that chi-square with one degree exceeds t. */
  private static double logTail1(double t) {
    return t < 100
        ? StrictMath.log(Erf.erfc(Math.sqrt(t / 2)))
        : -t / 2 - StrictMath.log(Math.PI * t / 2) / 2;
  }
}
