package daylight.line.course;

import daylight.line.book.Priors;
import java.util.ArrayList;
import java.util.List;

/** The instruments of one simulated visit, with the errors that their readings share. */
final class Instruments {
  private final SplitMix64 random;
  private final Priors priors;
  private final double scale;
  private final double behind;
  private final Receiver receiver;

  Instruments(SplitMix64 random, Priors priors) {
    this.random = random;
    this.priors = priors;
    scale = 1 + priors.sd(Priors.Kind.COUNTER_SCALE, 0) * random.normal();
    behind = 0.4 + priors.sd(Priors.Kind.SONDE_BEHIND_LENS, 0) * random.normal();
    receiver = new Receiver();
  }

  /** How far the transmitter truly sits behind the lens, recorded as 0.4 m. */
  double behind() {
    return behind;
  }

  /** The cable of one more pass. */
  Cable cable() {
    return new Cable();
  }

  Receiver receiver() {
    return receiver;
  }

  /** The counter of one pass, pushing. */
  final class Cable {
    private final double zero = priors.sd(Priors.Kind.COUNTER_ZERO, 0) * random.normal();
    private final double slack = priors.of(Priors.Kind.SLACK).b() * Math.abs(random.normal());

    /** What it shows with the lens so far into the pipe; a counter shows nothing below zero. */
    double reads(double out) {
      double noise = priors.sd(Priors.Kind.COUNTER_READING, 0) * random.normal();
      return Math.max(0, zero + scale * (1 + slack) * out + noise);
    }
  }

  /** The receiver: its scale, and a distortion that falls off with distance between spots. */
  final class Receiver {
    private final double shownPerMetre =
        1 + priors.sd(Priors.Kind.RECEIVER_SCALE, 0) * random.normal();
    private final double above = 0.04 + 0.015 * random.normal();
    private final List<TruePipe.At> spots = new ArrayList<>();
    private final List<double[]> factor = new ArrayList<>();
    private final List<Double> drawn = new ArrayList<>();

    /** What it shows above an invert that lies so deep. */
    double reads(double depth, TruePipe.At at) {
      double distance = shownPerMetre * (depth - above);
      double bent = priors.sd(Priors.Kind.DEPTH_DISTORTION, distance) * distortion(at);
      return distance + bent + priors.sd(Priors.Kind.DEPTH_READING, distance) * random.normal();
    }

    /** The next of a standard normal field, given the ones before it: a Cholesky row at a time. */
    private double distortion(TruePipe.At at) {
      int n = spots.size();
      double[] row = new double[n + 1];
      double left = 1;
      for (int i = 0; i < n; i++) {
        double sum = correlation(spots.get(i), at);
        for (int k = 0; k < i; k++) {
          sum -= factor.get(i)[k] * row[k];
        }
        row[i] = sum / factor.get(i)[i];
        left -= row[i] * row[i];
      }
      row[n] = Math.sqrt(Math.max(1e-9, left));
      spots.add(at);
      factor.add(row);
      drawn.add(random.normal());
      double value = 0;
      for (int k = 0; k <= n; k++) {
        value += row[k] * drawn.get(k);
      }
      return value;
    }

    private double correlation(TruePipe.At a, TruePipe.At b) {
      double apart = StrictMath.hypot(a.east() - b.east(), a.north() - b.north());
      return StrictMath.exp(-apart / priors.of(Priors.Kind.DEPTH_DISTORTION).correlationLength());
    }
  }
}
