package daylight.line.flow;

import daylight.line.measure.Filled;
import daylight.line.measure.Measured;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a pump presses water through.
 *
 * @param lift how much higher the water is to go than it stands in the pit, metres: from half way
 *     between the levels at which the pump starts and stops to the highest point of the pipe, or to
 *     the surface into which it lets out
 * @param pieces of pipe, one after the other; at least one
 */
public record Discharge(Measured lift, List<Piece> pieces) {
  public Discharge {
    pieces = List.copyOf(pieces);
    if (pieces.isEmpty()) {
      throw new IllegalArgumentException("a pump needs a pipe");
    }
  }

  /**
   * One piece.
   *
   * @param length along the pipe, metres
   * @param bore inside diameter, metres
   * @param roughness of its wall; Manning's n will not do
   * @param fittings the sum of their loss coefficients, by the speed in this pipe; null for none
   */
  public record Piece(
      Measured length, Measured bore, Roughness roughness, @Nullable Measured fittings) {
    public Piece {
      if (!(bore.value() > 0) || !(length.value() > 0)) {
        throw new IllegalArgumentException(
            "bore and length must be positive, were " + bore.value() + ", " + length.value());
      }
      if (roughness.law() == FrictionLaw.MANNING) {
        throw new IllegalArgumentException("Manning's n is for gravity flow");
      }
    }
  }

  /** Cubic metres in the pipe: what runs back when the pump stops, if nothing holds it. */
  public double volume() {
    return pieces.stream()
        .mapToDouble(p -> p.length().value() * Filled.full(p.bore().value()).area())
        .sum();
  }
}
