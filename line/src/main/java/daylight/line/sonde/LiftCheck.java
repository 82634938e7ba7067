package daylight.line.sonde;

import daylight.line.measure.Measured;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.special.Erf;

/**
 * Whether the depth shown grew by as much as the receiver was raised. A test of the receiver's
 * scale, and one vote for it among those of a visit; no single depth is ever multiplied by it.
 *
 * @param growth what the depth grew over what the receiver was raised; 1 where all is well. Its
 *     uncertainty is that of the readings' noise and of the lifts
 */
public record LiftCheck(Measured growth) {
  /** Beyond this share of chance the growth is called wrong. */
  public static final double LEVEL = 0.05;

  /** The power at which the detectable error is stated. */
  public static final double POWER = 0.95;

  private static final double Z_POWER = 1.644853627;

  /** What the check says. */
  public enum Verdict {
    /** It grew as it should, as far as this check can tell. */
    AGREES,
    /** It grew by more: the receiver reads too deep, or something else is measured. */
    TOO_MUCH,
    /** It grew by less. */
    TOO_LITTLE
  }

  /**
   * A straight line through what was shown over how high it was shown, by weighted least squares.
   *
   * @param shown with the receiver not raised; sd of its noise alone
   * @param lifts one or more, each with the noise of its own reading
   */
  public static LiftCheck of(Measured shown, List<Lifted> lifts) {
    if (lifts.isEmpty()) {
      throw new IllegalArgumentException("lifts must hold at least one, were none");
    }
    List<Measured> heights = new ArrayList<>();
    List<Measured> depths = new ArrayList<>(List.of(shown));
    for (Lifted lift : lifts) {
      heights.add(lift.by());
      double noise = StrictMath.hypot(lift.shown().sd(), lift.by().sd());
      depths.add(new Measured(lift.shown().value(), noise));
    }
    double w = 0;
    double wh = 0;
    double wd = 0;
    for (int i = 0; i < depths.size(); i++) {
      double weight = 1 / (depths.get(i).sd() * depths.get(i).sd());
      w += weight;
      wh += weight * height(heights, i);
      wd += weight * depths.get(i).value();
    }
    double hh = 0;
    double hd = 0;
    for (int i = 0; i < depths.size(); i++) {
      double weight = 1 / (depths.get(i).sd() * depths.get(i).sd());
      double off = height(heights, i) - wh / w;
      hh += weight * off * off;
      hd += weight * off * (depths.get(i).value() - wd / w);
    }
    return new LiftCheck(new Measured(hd / hh, 1 / StrictMath.sqrt(hh)));
  }

  private static double height(List<Measured> heights, int at) {
    return at == 0 ? 0 : heights.get(at - 1).value();
  }

  /** How many standard deviations the growth is off; positive where it grew too much. */
  public double statistic() {
    return (growth.value() - 1) / growth.sd();
  }

  /** The probability of being off as much or more when the receiver is right. */
  public double chance() {
    return Erf.erfc(StrictMath.abs(statistic()) / StrictMath.sqrt(2));
  }

  public Verdict verdict() {
    if (chance() >= LEVEL) {
      return Verdict.AGREES;
    }
    return statistic() > 0 ? Verdict.TOO_MUCH : Verdict.TOO_LITTLE;
  }

  /** The probability that this check would find a receiver wrong whose scale is off by so much. */
  public double power(double scaleError) {
    double off = StrictMath.abs(scaleError) / growth.sd();
    return above(Measured.Z95 - off) + above(Measured.Z95 + off);
  }

  /** The scale error, a ratio, that it would find with a probability of 95 %. */
  public double detectable() {
    return (Measured.Z95 + Z_POWER) * growth.sd();
  }

  /**
   * The vote: the scale error as this check sees it.
   *
   * @param distortion how much of the depth the ground may bend what is read here, as a ratio; it
   *     is the spot's own and no error of the receiver
   */
  public Measured vote(double distortion) {
    return new Measured(growth.value() - 1, StrictMath.hypot(growth.sd(), distortion));
  }

  private static double above(double z) {
    return Erf.erfc(z / StrictMath.sqrt(2)) / 2;
  }
}
