package daylight.line.sonde;

import java.util.List;

/** Position, depth and tilt over all tilts that are believed in, each with its weight. */
final class Mixture {
  private final double[] first = new double[3];
  private final double[][] second = new double[3][3];
  private double total;

  private Mixture() {}

  /**
   * @param weights of the steps, for what they stand for; how well each fits is taken here
   */
  static NullReading of(List<Nulls.Step> steps, List<Double> weights) {
    if (steps.isEmpty()) {
      return new NoDipole(NoDipole.Reason.OTHER_TILT, 0);
    }
    double least = steps.stream().mapToDouble(Nulls.Step::misfit).min().orElse(0);
    Mixture mixture = new Mixture();
    for (int i = 0; i < steps.size(); i++) {
      Nulls.Step step = steps.get(i);
      mixture.add(step.at(), weights.get(i) * StrictMath.exp((least - step.misfit()) / 2));
    }
    return mixture.fix(least);
  }

  private void add(AtTilt at, double belief) {
    double weight = belief * StrictMath.sqrt(at.xx() * at.dd() - at.xd() * at.xd());
    double[] value = {at.position(), at.depth(), at.tilt()};
    double[][] within = {{at.xx(), at.xd(), 0}, {at.xd(), at.dd(), 0}, {0, 0, 0}};
    total += weight;
    for (int i = 0; i < 3; i++) {
      first[i] += weight * value[i];
      for (int j = 0; j < 3; j++) {
        second[i][j] += weight * (within[i][j] + value[i] * value[j]);
      }
    }
  }

  private NullFix fix(double least) {
    double[] mean = new double[3];
    for (int i = 0; i < 3; i++) {
      mean[i] = first[i] / total;
    }
    double[][] spread = new double[3][3];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        spread[i][j] = second[i][j] / total - mean[i] * mean[j];
      }
    }
    return NullFix.of(mean, spread, least);
  }
}
