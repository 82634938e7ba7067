package daylight.line.flow;

import daylight.line.measure.Measured;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A figure, how sure it is, and what that hangs on.
 *
 * @param value with its standard uncertainty
 * @param shares of its variance, the largest first; they add up to 1
 */
public record Propagated(Measured value, List<Share> shares) {
  public Propagated {
    shares = List.copyOf(shares);
  }

  /**
   * A share of a variance.
   *
   * @param what by what kind of input
   * @param of whose: a label; empty where there is only one
   * @param share from 0 to 1
   */
  public record Share(FlowInput what, String of, double share) {}

  /** The input that decides: the one with the largest share. */
  public Share decides() {
    return shares.getFirst();
  }

  /** A figure that was measured as it is. */
  public static Propagated measured(FlowInput what, String of, Measured value) {
    return new Propagated(value, List.of(new Share(what, of, 1)));
  }

  /** The sum of figures that share no error. */
  public static Propagated sum(List<Propagated> parts) {
    double value = 0;
    double variance = 0;
    for (Propagated part : parts) {
      value += part.value().value();
      variance += part.value().sd() * part.value().sd();
    }
    List<Share> shares = new ArrayList<>();
    for (Propagated part : parts) {
      double own = part.value().sd() * part.value().sd() / variance;
      part.shares().forEach(s -> shares.add(new Share(s.what(), s.of(), s.share() * own)));
    }
    shares.sort(Comparator.comparingDouble(Share::share).reversed());
    return new Propagated(new Measured(value, StrictMath.sqrt(variance)), shares);
  }
}
