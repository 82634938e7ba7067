package daylight.line.course;

import daylight.line.book.Priors;
import java.util.ArrayList;
import java.util.List;

/** The instruments of one generated visit, with the errors that their readings share. */
final class Tools {
  /** Step of the white noise that is filtered to a distortion, metres. */
  private static final double GRAIN = 0.1;

  private final SplitMix64 random;
  private final Nature nature;
  private final Errors errors;
  private final Priors priors;
  private final double scale;
  private final double behind;
  private final double shownPerMetre;
  private final double above;
  private final double[] main;
  private final double[] branch;
  private final List<Spot> spots = new ArrayList<>();
  private final List<double[]> factor = new ArrayList<>();
  private final List<Double> drawn = new ArrayList<>();

  /**
   * A place on the tree of pipes.
   *
   * @param leaves how far from the entry its pipe leaves the main; 0 on the main
   * @param distance from there
   */
  record Spot(double leaves, double distance) {
    /** Along the pipes. */
    double awayFrom(Spot other) {
      if (leaves == other.leaves) {
        return Math.abs(distance - other.distance);
      }
      Spot onMain = leaves == 0 ? this : other;
      Spot onBranch = leaves == 0 ? other : this;
      return Math.abs(onMain.distance - onBranch.leaves) + onBranch.distance;
    }
  }

  Tools(SplitMix64 random, Nature nature, Errors errors, Priors priors, double longest) {
    this.random = random;
    this.nature = nature;
    this.errors = errors;
    this.priors = priors;
    scale = 1 + errors.kept(priors.sd(Priors.Kind.COUNTER_SCALE, 0));
    behind = 0.4 + errors.kept(priors.sd(Priors.Kind.SONDE_BEHIND_LENS, 0));
    shownPerMetre = 1 + errors.kept(priors.sd(Priors.Kind.RECEIVER_SCALE, 0));
    Priors.Typical rides = usual(priors);
    above = rides.value() + errors.kept(rides.sd());
    main = noise(longest);
    branch = noise(longest);
  }

  private static Priors.Typical usual(Priors priors) {
    return Known.known(priors.of(Priors.Kind.SONDE_ABOVE_INVERT).typical());
  }

  private double[] noise(double longest) {
    int n = nature == Nature.SUPPOSED ? 0 : (int) ((longest + 8 * reach()) / GRAIN);
    double[] noise = new double[n];
    for (int i = 0; i < n; i++) {
      noise[i] = random.normal();
    }
    return noise;
  }

  /** The length over which distortion is shared, metres. */
  private double reach() {
    return priors.of(Priors.Kind.DEPTH_DISTORTION).correlationLength();
  }

  /** How far the transmitter truly sits behind the lens, recorded as 0.4 m. */
  double behind() {
    return behind;
  }

  Cable cable(double length) {
    return new Cable(length);
  }

  /** The counter of one pass, pushing. */
  final class Cable {
    private final double zero = errors.kept(priors.sd(Priors.Kind.COUNTER_ZERO, 0));
    private final double slack = errors.oneSided(priors.of(Priors.Kind.SLACK).b());
    private final double length;

    private Cable(double length) {
      this.length = length;
    }

    /** What it shows with the lens so far into the pipe; a counter shows nothing below zero. */
    double reads(double out) {
      double share = nature == Nature.SUPPOSED ? slack : slack * out / length;
      double noise = errors.of(priors.sd(Priors.Kind.COUNTER_READING, 0));
      return Math.max(0, zero + scale * (1 + share) * out + noise);
    }
  }

  /**
   * What the receiver shows.
   *
   * @param below how far the invert lies below the receiver, metres
   */
  double depth(double below, Spot spot) {
    double distance = shownPerMetre * (below - above);
    double bent = errors.none() ? 0 : distortion(spot);
    return distance
        + priors.sd(Priors.Kind.DEPTH_DISTORTION, distance) * bent
        + errors.of(priors.sd(Priors.Kind.DEPTH_READING, distance));
  }

  /** Of depth readings there, in units of its standard deviation. */
  double distortion(Spot spot) {
    return nature == Nature.SUPPOSED ? fading(spot) : filtered(spot);
  }

  /** The next of a field that fades as e^(−distance/length): a Cholesky row at a time. */
  private double fading(Spot spot) {
    int n = spots.size();
    double[] row = new double[n + 1];
    double left = 1;
    for (int i = 0; i < n; i++) {
      double sum = StrictMath.exp(-spots.get(i).awayFrom(spot) / reach());
      for (int k = 0; k < i; k++) {
        sum -= factor.get(i)[k] * row[k];
      }
      row[i] = sum / factor.get(i)[i];
      left -= row[i] * row[i];
    }
    row[n] = Math.sqrt(Math.max(1e-9, left));
    spots.add(spot);
    factor.add(row);
    drawn.add(random.normal());
    double value = 0;
    for (int k = 0; k <= n; k++) {
      value += row[k] * drawn.get(k);
    }
    return value;
  }

  /** The mean of white noise over a window; as long as the fading one when added up. */
  private double filtered(Spot spot) {
    double[] noise = spot.leaves() == 0 ? main : branch;
    int half = (int) Math.round(reach() / GRAIN);
    int at = (int) Math.round((spot.distance() + 2 * reach()) / GRAIN);
    double sum = 0;
    for (int i = at - half; i < at + half; i++) {
      sum += noise[i];
    }
    return sum / Math.sqrt(2 * half);
  }
}
