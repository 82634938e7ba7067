package daylight.line.flow;

import daylight.line.measure.Measured;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Carries uncertainty from inputs that share no error to a figure computed from them: each input is
 * moved a little to either side, and the squares of what that does add up (Ghilani, ch. 6, from
 * memory). Good as long as the figure is nearly straight within an input's uncertainty.
 */
final class Propagation {
  /** How far an input is moved, in its standard uncertainties. */
  private static final double STEP = 0.1;

  private final List<FlowInput> what = new ArrayList<>();
  private final List<String> of = new ArrayList<>();
  private final List<Measured> values = new ArrayList<>();

  /** Adds an input; it stands at the next place of the array. */
  Propagation with(FlowInput input, Measured value) {
    return with(input, "", value);
  }

  /** Adds an input with the label of what it is of. */
  Propagation with(FlowInput input, String label, Measured value) {
    what.add(input);
    of.add(label);
    values.add(value);
    return this;
  }

  /** The figure of those inputs. A figure that none of them moves is refused. */
  Propagated of(ToDoubleFunction<double[]> figure) {
    double[] at = values.stream().mapToDouble(Measured::value).toArray();
    double value = figure.applyAsDouble(at);
    double[] moved = new double[at.length];
    double variance = 0;
    for (int i = 0; i < at.length; i++) {
      double step = STEP * values.get(i).sd();
      double up = figure.applyAsDouble(with(at, i, at[i] + step));
      double down = figure.applyAsDouble(with(at, i, at[i] - step));
      moved[i] = (up - down) / (2 * STEP);
      variance += moved[i] * moved[i];
    }
    List<Propagated.Share> shares = new ArrayList<>();
    for (int i = 0; i < at.length; i++) {
      double share = moved[i] * moved[i] / variance;
      shares.add(new Propagated.Share(what.get(i), of.get(i), share));
    }
    shares.sort(Comparator.comparingDouble(Propagated.Share::share).reversed());
    return new Propagated(new Measured(value, StrictMath.sqrt(variance)), shares);
  }

  private static double[] with(double[] at, int place, double value) {
    double[] moved = at.clone();
    moved[place] = value;
    return moved;
  }
}
