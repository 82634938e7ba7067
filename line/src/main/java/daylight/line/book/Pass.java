package daylight.line.book;

import daylight.line.measure.Reading;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One push from one access point: an ordered walk over reaches. Every distance of a pass is a
 * reading of its counter.
 *
 * @param entry the label of the node where the camera went in
 * @param walk the reaches it went through, in order
 * @param zero how the counter was zeroed
 * @param head how the head stands in the pipe, which decides whether clock positions mean anything
 * @param end how far it came and why it went no further; null when not recorded
 * @param sight stretches of sight; what no stretch covers was not judged
 * @param findings what was seen
 * @param bends turns of the pipe that were seen
 * @param counterChecks places where a tape was held against the counter
 * @param resets places where the counter jumped ahead; where it was set back, what followed is a
 *     pass of its own whose zero is less by as much
 * @param anchors moments of the footage whose counter reading somebody typed
 * @param corrections stretches of the footage whose reading a person put right
 * @param after the label of the cleaning or repair that came just before it; null if none
 * @param start when it began; null when not recorded
 * @param remark free words; null when none
 */
public record Pass(
    Id id,
    String entry,
    List<Leg> walk,
    Zero zero,
    Head head,
    @Nullable End end,
    List<Sight> sight,
    List<Finding> findings,
    List<Bend> bends,
    List<CounterCheck> counterChecks,
    List<Reset> resets,
    List<Anchor> anchors,
    List<Correction> corrections,
    @Nullable String after,
    @Nullable Instant start,
    @Nullable String remark)
    implements Entry {
  public Pass {
    walk = List.copyOf(walk);
    sight = List.copyOf(sight);
    findings = List.copyOf(findings);
    bends = List.copyOf(bends);
    counterChecks = List.copyOf(counterChecks);
    resets = List.copyOf(resets);
    anchors = List.copyOf(anchors);
    corrections = List.copyOf(corrections);
  }

  /**
   * One reach of the walk.
   *
   * @param reach its label
   * @param seen true when the turn into it was seen, false when it was assumed
   */
  public record Leg(String reach, boolean seen) {}

  /** How the counter was zeroed. */
  public sealed interface Zero {
    /** It read this much with the lens at the mouth of the entry. */
    record Reads(Reading counter) implements Zero {}

    /** Nobody knows, and why. */
    record Unknown(String reason) implements Zero {}
  }

  /** How the head stands. */
  public enum Head {
    SELF_RIGHTING,
    SET,
    UNKNOWN
  }

  /**
   * Where the push stopped and why.
   *
   * @param cable counter reading there
   * @param node the label of the node that was reached; null when it ended on the way
   */
  public record End(Reading cable, Why why, @Nullable String node) {}

  /** Why a push went no further. */
  public enum Why {
    OBSTRUCTION,
    FRICTION,
    END_OF_CABLE,
    BEND,
    TRAP,
    UNDER_WATER,
    MAIN_REACHED,
    OUTLET_REACHED,
    HEAD_STUCK,
    ENOUGH,
    UNKNOWN
  }

  /** How well the pipe could be seen between two counter readings. */
  public record Sight(Reading from, Reading to, Clarity clarity) {}

  /** How well the pipe could be seen. */
  public enum Clarity {
    CLEAR,
    POOR,
    BLIND
  }

  /** A tape held against the counter: it showed {@code counter} when {@code taped} was out. */
  public record CounterCheck(Id id, Reading counter, Reading taped) implements Entry {}

  /** The counter jumped from one reading to a greater one without the camera moving. */
  public record Reset(Id id, Reading before, Reading after) implements Entry {}

  /** At {@code seconds} from the first frame of {@code media}, the counter showed this. */
  public record Anchor(Id id, String media, double seconds, Reading counter) implements Entry {}

  /** Between two moments of the footage the reading found by machine is wrong or missing. */
  public record Correction(
      Id id, String media, double fromSeconds, double toSeconds, @Nullable Reading counter)
      implements Entry {}
}
