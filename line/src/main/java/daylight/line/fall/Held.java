package daylight.line.fall;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What holds water that was seen, as far as can be told.
 *
 * @param shares every cause with its probability, the likeliest first; they make one together
 * @param byGrade the probability that water stands there by the grade alone, by all that is known
 *     of the heights but the water itself; null where heights are not known
 * @param signs what it was weighed by besides
 * @param tests what would tell the causes apart that are left, the quickest first
 */
public record Held(
    List<Share> shares, @Nullable Double byGrade, List<WaterSign> signs, List<WaterTest> tests) {
  /** From this probability on a cause counts as found. */
  static final double FOUND = 0.8;

  /** A cause less likely than this is not worth telling. */
  public static final double WORTH = 0.1;

  public Held {
    shares = List.copyOf(shares);
    signs = List.copyOf(signs);
    tests = List.copyOf(tests);
  }

  /** One cause. */
  public record Share(WaterCause cause, double probability) {}

  /** The cause that was found; empty where that is open. */
  public Optional<Share> found() {
    return Optional.of(shares.getFirst()).filter(share -> share.probability() >= FOUND);
  }

  /** The probability of a cause. */
  public double of(WaterCause cause) {
    return shares.stream()
        .filter(share -> share.cause() == cause)
        .mapToDouble(Share::probability)
        .sum();
  }
}
