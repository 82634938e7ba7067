package daylight.line.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.special.Erf;
import org.jspecify.annotations.Nullable;

/**
 * Adjusts and looks for blunders (data snooping, Baarda 1968): the worst reading beyond the
 * family's threshold is named; if no other reading explains the misfit as well it is set aside and
 * the rest adjusted again, at most three times.
 */
final class Snooper {
  private static final int SET_ASIDE_AT_MOST = 3;

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
        return first == null || snooping.setsAside()
            ? Optional.empty()
            : Optional.of(solution(first, named(suspects)));
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
        return Optional.of(
            snooping.setsAside() ? solution(solved, suspects) : solution(first, named(suspects)));
      }
      equations = without(equations, worst);
    }
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
