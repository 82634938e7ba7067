package daylight.line.book;

import daylight.line.measure.Reading;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The transmitter found from above. Where the spot lies in plan is told by the {@link Tie}s that
 * name this locate's label.
 *
 * @param pass the label of the pass during which it was made; null when there is only one
 * @param cable counter reading at that moment, which is the lens's and not the transmitter's; null
 *     when only the time was noted
 * @param moving which way the cable moved last
 * @param depth what the receiver showed, in metres; null when it was not read
 * @param receiverHeight how high the receiver was held above the ground, in metres; null means it
 *     stood on the ground
 * @param surface the name of the surface it stood on (yard, slab, drive); surfaces of one name are
 *     taken to be one
 * @param cover loose cover between receiver and that surface (snow, mulch), in metres; null for
 *     none
 * @param signal how good the signal was
 * @param lifts readings taken with the receiver raised
 * @param offOn what came of switching the transmitter off and on to prove that it was the source
 * @param time when; null when not recorded
 * @param remark free words; null when none
 * @param nulls where the receiver fell silent about the spot; null when that was not sought
 */
public record Locate(
    Id id,
    @Nullable String pass,
    @Nullable Reading cable,
    Finding.Moving moving,
    @Nullable Reading depth,
    @Nullable Reading receiverHeight,
    String surface,
    @Nullable Reading cover,
    Signal signal,
    List<Lift> lifts,
    OffOn offOn,
    @Nullable Instant time,
    @Nullable String remark,
    @Nullable Nulls nulls)
    implements Entry {
  public Locate {
    lifts = List.copyOf(lifts);
  }

  /** A locate at which nobody sought where the receiver falls silent. */
  public Locate(
      Id id,
      @Nullable String pass,
      @Nullable Reading cable,
      Finding.Moving moving,
      @Nullable Reading depth,
      @Nullable Reading receiverHeight,
      String surface,
      @Nullable Reading cover,
      Signal signal,
      List<Lift> lifts,
      OffOn offOn,
      @Nullable Instant time,
      @Nullable String remark) {
    this(
        id,
        pass,
        cable,
        moving,
        depth,
        receiverHeight,
        surface,
        cover,
        signal,
        lifts,
        offOn,
        time,
        remark,
        null);
  }

  /** What came of switching the transmitter off and on again. */
  public enum OffOn {
    /** Nobody tried. */
    NO,
    /** The signal went and came with it: it was the source. */
    YES,
    /** The signal stayed when it was off: something else was the source. */
    STAYED
  }

  /**
   * Where the receiver fell silent, walked along the pipe through the spot; distances along the
   * ground from the spot in metres. What lies on the other side than its name says is negative.
   *
   * @param before back toward where the cable goes in, with the antenna along the pipe
   * @param after onward, with the antenna along the pipe
   * @param over onward to where the upright antenna fell silent between those two
   * @param uprightBefore back to where the upright antenna fell silent, when it did so on both
   *     sides of the spot
   * @param uprightAfter onward to the same
   */
  public record Nulls(
      @Nullable Reading before,
      @Nullable Reading after,
      @Nullable Reading over,
      @Nullable Reading uprightBefore,
      @Nullable Reading uprightAfter) {}

  /** How good the signal was, in the crew's judgement. */
  public enum Signal {
    GOOD,
    FAIR,
    POOR
  }

  /** With the receiver raised by {@code by}, it showed {@code depth}; both in metres. */
  public record Lift(Reading by, Reading depth) {}
}
