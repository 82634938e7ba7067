package daylight.line.sonde;

import daylight.line.measure.Measured;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Depth, position and tilt from the nulls. Two nulls alone say nothing of the tilt and, with it,
 * little of the position: for a fixed tilt the marks give position and depth, so the tilt is gone
 * through step by step, each step weighted by what is believed of it and by how well the marks fit.
 * That carries the one-sided over-read of a tilt, which no linear law would.
 */
final class Nulls {
  /** Steps of tilt, out to so many standard deviations to either side. */
  private static final int STEPS = 200;

  private static final double REACH = 5;
  private static final int MOST_PASSES = 6;

  /** A misfit so much above the least leaves less than a millionth of belief. */
  private static final double NOT_BELIEVED = 30;

  /** No step comes nearer to upright: nulls there lie beyond any yard. */
  private static final double STEEPEST = StrictMath.toRadians(86);

  /** A mark this many standard deviations out of place is not a mark of one sonde. */
  private static final double BEYOND = 3;

  private static final int MOST_HALVINGS = 200;

  /** Three points that stand for a normal distribution exactly up to its fifth moment. */
  private static final double[] BESIDE_AT = {-StrictMath.sqrt(3), 0, StrictMath.sqrt(3)};

  private static final double[] BESIDE_WEIGHT = {1 / 6.0, 2 / 3.0, 1 / 6.0};

  private Nulls() {}

  /** The fit with what is believed of the tilt. */
  static NullReading with(NullMarks marks, Measured tilt) {
    NoDipole wrong = wrong(marks);
    if (wrong != null) {
      return wrong;
    }
    List<Step> steps = new ArrayList<>();
    List<Double> weights = new ArrayList<>();
    Measured beside = marks.beside();
    for (int i = 0; i < BESIDE_AT.length; i++) {
      double aside = beside == null ? 0 : beside.value() + BESIDE_AT[i] * beside.sd();
      for (Step step : steps(marks, tilt, aside)) {
        steps.add(step);
        weights.add(BESIDE_WEIGHT[i] * step.width());
      }
    }
    return Mixture.of(steps, weights);
  }

  /** Goes through the tilts, and again more finely where only few of them are to be believed. */
  private static List<Step> steps(NullMarks marks, Measured tilt, double beside) {
    double low = StrictMath.max(-STEEPEST, tilt.value() - REACH * tilt.sd());
    double high = StrictMath.min(STEEPEST, tilt.value() + REACH * tilt.sd());
    List<Step> steps = List.of();
    for (int pass = 0; pass < MOST_PASSES; pass++) {
      steps = through(marks, tilt, beside, low, high);
      double least = steps.stream().mapToDouble(Step::misfit).min().orElse(0);
      List<Step> likely =
          steps.stream().filter(step -> step.misfit() < least + NOT_BELIEVED).toList();
      if (likely.isEmpty() || likely.size() >= STEPS / 5) {
        break;
      }
      double width = (high - low) / STEPS;
      low = StrictMath.max(low, likely.getFirst().at().tilt() - width);
      high = StrictMath.min(high, likely.getLast().at().tilt() + width);
    }
    return steps;
  }

  private static List<Step> through(
      NullMarks marks, Measured tilt, double beside, double low, double high) {
    List<Step> steps = new ArrayList<>();
    for (int i = 0; i <= STEPS; i++) {
      double beta = low + (high - low) * i / STEPS;
      double start = depth(marks, beta, beside);
      if (start > 0) {
        AtTilt at = AtTilt.fit(marks, beta, beside, start);
        double off = (beta - tilt.value()) / tilt.sd();
        steps.add(new Step(at, at.misfit() + off * off, high - low));
      }
    }
    return steps;
  }

  /**
   * One tilt gone through.
   *
   * @param misfit of the marks and of the belief together
   * @param width a number in proportion to the angle that the step stands for
   */
  record Step(AtTilt at, double misfit, double width) {}

  /** What three marks say by themselves, nothing being believed of the tilt. */
  static NullReading alone(NullMarks marks) {
    Measured over = marks.over();
    if (over == null) {
      throw new IllegalArgumentException("over must be there: two nulls do not tell the tilt");
    }
    NoDipole wrong = wrong(marks);
    if (wrong != null) {
      return wrong;
    }
    double beside = marks.beside() == null ? 0 : marks.beside().value();
    double middle = (marks.first().value() + marks.second().value()) / 2;
    double share = (over.value() - middle) / marks.spacing().value();
    double low = -STEEPEST;
    double high = STEEPEST;
    for (int i = 0; i < MOST_HALVINGS; i++) {
      double tilt = (low + high) / 2;
      if (lean(marks, tilt, beside) < share) {
        low = tilt;
      } else {
        high = tilt;
      }
    }
    double tilt = (low + high) / 2;
    double depth = depth(marks, tilt, beside);
    double position = marks.first().value() - NullModel.behind(depth, tilt, beside);
    return ThreeMarks.spread(marks, over, new double[] {position, depth, tilt}, beside);
  }

  /**
   * How far the upright null of a sonde of that tilt lies from the middle of the others, as a share
   * of their spacing: it grows with the tilt from end to end.
   */
  private static double lean(NullMarks marks, double tilt, double beside) {
    double depth = depth(marks, tilt, beside);
    double behind = NullModel.behind(depth, tilt, beside);
    double ahead = NullModel.ahead(depth, tilt, beside);
    return (NullModel.over(depth, tilt, beside) - (behind + ahead) / 2) / (ahead - behind);
  }

  /** The depth at which a sonde of that tilt has nulls so far apart; 0 where none has. */
  private static double depth(NullMarks marks, double tilt, double beside) {
    double spacing = marks.spacing().value();
    double t = StrictMath.tan(tilt);
    double square = (4 * spacing * spacing - 8 * beside * beside) / (9 * t * t + 8);
    return square > 0 ? StrictMath.sqrt(square) : 0;
  }

  private static @Nullable NoDipole wrong(NullMarks marks) {
    Measured beside = marks.beside();
    if (beside != null) {
      double most = marks.spacing().value() / StrictMath.sqrt(2);
      double excess = StrictMath.abs(beside.value()) - most;
      if (excess >= 0) {
        return new NoDipole(NoDipole.Reason.TOO_FAR_BESIDE, excess);
      }
    }
    Measured over = marks.over();
    if (over != null) {
      for (Measured out : new Measured[] {marks.first().minus(over), over.minus(marks.second())}) {
        if (out.value() > BEYOND * out.sd()) {
          return new NoDipole(NoDipole.Reason.OVER_OUTSIDE, out.value());
        }
      }
    }
    return null;
  }
}
