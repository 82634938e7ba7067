package daylight.line.sonde;

import daylight.line.measure.Measured;
import daylight.line.measure.Statement;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What one locate says by everything that was read at it.
 *
 * @param locate its label
 * @param depths of the sonde below the surface, by each way there was
 * @param onward how far the sonde lies on from the spot, the way the cable was pushed, in metres;
 *     null where the silent places do not say
 * @param tilt in radians, positive with the nose up the way the cable was pushed; null where the
 *     upright antenna's silent place was not noted
 * @param lift the lift check; null when there was none
 * @param vote of the lift check for the receiver's scale error, a ratio; null when there was none
 * @param suspicions the traps that the readings look like
 */
public record LocateReading(
    String locate,
    List<DepthBy> depths,
    @Nullable Measured onward,
    @Nullable Measured tilt,
    @Nullable LiftCheck lift,
    @Nullable Measured vote,
    List<Suspicion> suspicions) {
  public LocateReading {
    depths = List.copyOf(depths);
    suspicions = List.copyOf(suspicions);
  }

  /** How a depth was come by. */
  public enum Way {
    /** The receiver showed it. */
    SHOWN,
    /** From where the antenna along the pipe fell silent. */
    NULLS,
    /** From where the upright antenna fell silent about an upright sonde. */
    UPRIGHT_NULLS
  }

  /**
   * A depth of the sonde below the surface, in metres.
   *
   * @param depth with everything it rests on: noise, scale and distortion where the receiver showed
   *     it, marks, tilt and the antenna's place where silent places tell it
   */
  public record DepthBy(Way way, Measured depth) {}

  /** The traps as statements, in the order they were found. */
  public List<Statement> doubts() {
    return suspicions.stream().map(Suspicion::statement).toList();
  }
}
