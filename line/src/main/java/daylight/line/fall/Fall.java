package daylight.line.fall;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How the line falls, stretch by stretch.
 *
 * @param stretches by line, in the direction of the water
 * @param water where water stood or was seen
 * @param ponding where it would stand by the grade alone
 */
public record Fall(List<FallStretch> stretches, List<WaterSeen> water, Ponding ponding) {
  public Fall {
    stretches = List.copyOf(stretches);
    water = List.copyOf(water);
  }

  /** The whole fall of a reach; null when heights are not known there. */
  public @Nullable FallStretch whole(String reach) {
    return stretches.stream()
        .filter(s -> s.whole() && s.from().reach().equals(reach))
        .findFirst()
        .orElse(null);
  }
}
