package daylight.line.sonde;

import daylight.line.measure.Measured;
import org.jspecify.annotations.Nullable;

/**
 * Where the receiver, walked along the pipe with its antenna along the pipe, fell silent: once
 * before the sonde and once beyond it. All are distances along the walk in metres from any zero,
 * positive the way that was walked.
 *
 * @param first the null met first
 * @param second the null met second, beyond the first
 * @param over where the upright antenna fell silent between them; null when it was not sought
 * @param beside how far the walk ran beside the line over the pipe; null for right over it
 */
public record NullMarks(
    Measured first, Measured second, @Nullable Measured over, @Nullable Measured beside) {
  public NullMarks {
    if (!(first.value() < second.value())) {
      throw new IllegalArgumentException(
          "second must lie beyond first, were "
              + second.value()
              + " m and "
              + first.value()
              + " m");
    }
  }

  /** Two nulls right over the pipe. */
  public static NullMarks of(Measured first, Measured second) {
    return new NullMarks(first, second, null, null);
  }

  /** From null to null, in metres. */
  public Measured spacing() {
    return second.minus(first);
  }
}
