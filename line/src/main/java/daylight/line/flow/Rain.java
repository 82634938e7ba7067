package daylight.line.flow;

import daylight.line.measure.Measured;
import java.util.List;

/**
 * What rain brings, by the rational method: runoff coefficient × intensity × area (from memory). It
 * holds for areas so small that the whole of them drains at once, as roofs and yards are.
 */
public final class Rain {
  private Rain() {}

  /**
   * A roof or a paved area.
   *
   * @param label what it is called
   * @param area seen from above, square metres
   * @param runoff the share of the rain that runs off
   */
  public record Catch(String label, Measured area, Measured runoff) {
    public Catch {
      if (!(area.value() > 0)) {
        throw new IllegalArgumentException("area must be positive, was " + area.value());
      }
      if (!(runoff.value() > 0 && runoff.value() <= 1)) {
        throw new IllegalArgumentException("runoff must be 0 to 1, was " + runoff.value());
      }
    }
  }

  /**
   * Cubic metres per second off several areas under the same rain.
   *
   * @param areas at least one
   * @param intensity metres per second
   */
  public static Propagated of(List<Catch> areas, Measured intensity) {
    Propagation inputs = new Propagation().with(FlowInput.RAIN, intensity);
    for (Catch area : areas) {
      inputs.with(FlowInput.ROOF, area.label(), area.area());
      inputs.with(FlowInput.RUNOFF, area.label(), area.runoff());
    }
    return inputs.of(
        x -> {
          double wet = 0;
          for (int i = 1; i < x.length; i += 2) {
            wet += x[i] * x[i + 1];
          }
          return x[0] * wet;
        });
  }
}
