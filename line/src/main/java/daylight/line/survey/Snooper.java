package daylight.line.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;
import org.hipparchus.special.Erf;
import org.jspecify.annotations.Nullable;

/**
 * Adjusts and looks for blunders (data snooping, Baarda 1968): the worst reading beyond the
 * family's threshold is named; if no other reading explains the misfit as well it is set aside and
 * the rest adjusted again, at most three times.
 */
final class Snooper {
  private static final int SET_ASIDE_AT_MOST = 3;

  /** A reading this many standard deviations off a state is plainly wrong there. */
  private static final double GROSS = 20;

  /** Two readings whose statistics correlate above this are not told apart. */
  private static final double INSEPARABLE = 0.9;

  private final Snooping snooping;

  Snooper(Snooping snooping) {
    this.snooping = snooping;
  }

  /** Empty when the iteration does not settle. */
  Optional<Solution> adjust(List<Equation> all, double[] start) {
    List<Equation> equations = all;
    List<Suspect> suspects = new ArrayList<>();
    double[] state = start;
    @Nullable Solved first = null;
    while (true) {
      Optional<double[]> settled = LeastSquares.settle(equations, state);
      if (settled.isEmpty()) {
        int gross = suspects.size() < SET_ASIDE_AT_MOST ? gross(equations, state) : -1;
        if (gross < 0) {
          return first == null || snooping.setsAside()
              ? Optional.empty()
              : Optional.of(solution(first, named(suspects)));
        }
        suspects.add(gross(equations, state, gross));
        equations = without(equations, gross);
        continue;
      }
      state = settled.get();
      Solved solved = new Solved(equations, state);
      first = first == null ? solved : first;
      int worst = worst(equations, solved.diagnosis);
      boolean another = worst >= 0 && suspects.size() < SET_ASIDE_AT_MOST;
      if (another) {
        suspects.add(suspect(equations, solved.diagnosis, worst));
      }
      if (!another || !suspects.getLast().setAside()) {
        List<Suspect> measured = measured(all, solved, suspects);
        return Optional.of(
            snooping.setsAside() ? solution(solved, measured) : solution(first, named(measured)));
      }
      equations = without(equations, worst);
    }
  }

  /** The equations that a state does not plainly contradict. */
  static List<Equation> fitting(List<Equation> all, double[] state) {
    List<Equation> fitting = all;
    for (int i = 0; i < SET_ASIDE_AT_MOST; i++) {
      int gross = gross(fitting, state);
      if (gross < 0) {
        return fitting;
      }
      fitting = without(fitting, gross);
    }
    return fitting;
  }

  /** The reading that a state contradicts most, if it does so plainly, or −1. */
  private static int gross(List<Equation> equations, double[] state) {
    double[] misfit = Linearised.of(equations, state).misfit();
    int worst = -1;
    double beyond = GROSS;
    for (int i = 0; i < misfit.length; i++) {
      if (Math.abs(misfit[i]) > beyond) {
        worst = i;
        beyond = Math.abs(misfit[i]);
      }
    }
    return worst;
  }

  /** A reading so far off that nothing settles with it. */
  private static Suspect gross(List<Equation> equations, double[] state, int worst) {
    Equation equation = equations.get(worst);
    double sd = equation.block().sd(equation.row());
    double off = equation.misfit(state, new double[state.length]);
    return new Suspect(
        new Suspect.Misread(
            equation.entry(), equation.quantity(), equation.observed(), -off, sd, off / sd),
        List.of(),
        true);
  }

  /**
   * How far off a reading is that was set aside is measured against the result without it; while it
   * was in, a gross one bent the network beyond what a linear estimate tells.
   */
  private static List<Suspect> measured(
      List<Equation> all, Solved without, List<Suspect> suspects) {
    return suspects.stream()
        .map(s -> s.setAside() && s.rivals().isEmpty() ? measured(all, without, s) : s)
        .toList();
  }

  private static Suspect measured(List<Equation> all, Solved without, Suspect suspect) {
    for (Equation equation : all) {
      if (equation.entry().equals(suspect.entry())
          && equation.quantity() == suspect.quantity()
          && equation.observed() == suspect.named().read()
          && equation.block().size() == 1) {
        double[] gradient = new double[without.state.length];
        double off = equation.misfit(without.state, gradient);
        double sd = equation.block().sd(0);
        double variance = sd * sd + without.variance(gradient);
        return new Suspect(
            new Suspect.Misread(
                suspect.entry(),
                suspect.quantity(),
                equation.observed(),
                -off,
                StrictMath.sqrt(variance),
                suspect.statistic()),
            List.of(),
            true);
      }
    }
    return suspect;
  }

  /** The same suspects where nothing is set aside. */
  private static List<Suspect> named(List<Suspect> suspects) {
    return suspects.stream().map(s -> new Suspect(s.named(), s.rivals(), false)).toList();
  }

  /** A settled adjustment of some equations. */
  private static final class Solved {
    private final List<Equation> equations;
    private final double[] state;
    private final Linearised linearised;
    private final Factored factored;
    private final Diagnosis diagnosis;

    Solved(List<Equation> equations, double[] state) {
      this.equations = equations;
      this.state = state;
      this.linearised = Linearised.of(equations, state);
      this.factored = Factored.of(linearised.design());
      this.diagnosis = new Diagnosis(equations, linearised, factored);
    }

    /** The variance of a linear function of the unknowns. */
    private double variance(double[] weights) {
      DMatrixRMaj covariance = factored.covariance();
      double variance = 0;
      for (int i = 0; i < weights.length; i++) {
        for (int j = 0; weights[i] != 0 && j < weights.length; j++) {
          variance += weights[i] * weights[j] * covariance.get(i, j);
        }
      }
      return variance;
    }
  }

  private Solution solution(Solved solved, List<Suspect> suspects) {
    List<Equation> equations = solved.equations;
    var residuals =
        IntStream.range(0, equations.size())
            .mapToObj(i -> solved.diagnosis.residual(i, snooping.noncentrality()))
            .toList();
    int dof = equations.size() - solved.factored.rank();
    var fit = new Fit(residuals, dof, solved.linearised.sumOfSquares(), suspects);
    return new Solution(solved.state, equations, solved.factored, fit);
  }

  /** The checked reading with the largest statistic beyond the threshold, or −1. */
  private int worst(List<Equation> equations, Diagnosis diagnosis) {
    int[] checked = IntStream.range(0, equations.size()).filter(diagnosis::checked).toArray();
    int worst = -1;
    double beyond = checked.length == 0 ? 0 : threshold(snooping.familyRate(), checked.length);
    for (int i : checked) {
      double size = Math.abs(diagnosis.statistic(i));
      if (size > beyond) {
        worst = i;
        beyond = size;
      }
    }
    return worst;
  }

  /**
   * The bound on |w| that m standard normal statistics all keep with probability 1 − rate: each is
   * tested at 1 − (1−rate)^(1/m) (Šidák 1967), which is on the safe side for correlated ones.
   */
  static double threshold(double rate, int m) {
    double each = -StrictMath.expm1(StrictMath.log1p(-rate) / m);
    return StrictMath.sqrt(2) * Erf.erfcInv(each);
  }

  private static Suspect suspect(List<Equation> equations, Diagnosis diagnosis, int worst) {
    String entry = equations.get(worst).entry();
    List<Suspect.Misread> rivals =
        IntStream.range(0, equations.size())
            .filter(i -> i != worst && diagnosis.checked(i))
            .filter(i -> diagnosis.alikeness(worst, i) > INSEPARABLE)
            .mapToObj(i -> misread(equations, diagnosis, i))
            .sorted(Comparator.comparing(Suspect.Misread::entry))
            .toList();
    boolean alone = rivals.stream().allMatch(rival -> rival.entry().equals(entry));
    return new Suspect(misread(equations, diagnosis, worst), rivals, alone);
  }

  private static Suspect.Misread misread(List<Equation> equations, Diagnosis diagnosis, int i) {
    Equation equation = equations.get(i);
    return new Suspect.Misread(
        equation.entry(),
        equation.quantity(),
        equation.observed(),
        diagnosis.blunder(i),
        diagnosis.blunderSd(i),
        diagnosis.statistic(i));
  }

  /** Readings that were correlated with the one left out keep their own joint covariance. */
  private static List<Equation> without(List<Equation> equations, int out) {
    Equation gone = equations.get(out);
    var rest = new ArrayList<>(equations);
    rest.remove(out);
    if (gone.block().size() > 1) {
      Block smaller = gone.block().without(gone.row());
      int first = out - gone.row();
      for (int row = 0; row < smaller.size(); row++) {
        rest.set(first + row, rest.get(first + row).in(smaller, row));
      }
    }
    return rest;
  }
}
