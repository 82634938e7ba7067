package daylight.line.sonde;

import daylight.line.measure.Measured;
import org.jspecify.annotations.Nullable;

/**
 * A depth reading and what lay between receiver and ground, and what the sonde lies in. Metres.
 *
 * @param shown from the receiver's foot down to the sonde
 * @param receiverHeight of the foot above what it stood over; null where it stood on it
 * @param looseCover snow or mulch between that and the surface; null for none
 * @param paving thickness of the paving, which is part of the surface; null for none
 * @param ride height of the sonde's axis above the inside bottom of the pipe
 * @param bore inside diameter; null where it is not known
 */
public record DepthShown(
    Measured shown,
    @Nullable Measured receiverHeight,
    @Nullable Measured looseCover,
    @Nullable Measured paving,
    Measured ride,
    @Nullable Measured bore) {
  public DepthShown {
    notNegative("receiverHeight", receiverHeight);
    notNegative("looseCover", looseCover);
    notNegative("paving", paving);
    notNegative("ride", ride);
    notNegative("bore", bore);
    if (bore != null && ride.value() > bore.value()) {
      throw new IllegalArgumentException(
          "ride must be within the bore of " + bore.value() + " m, was " + ride.value() + " m");
    }
  }

  private static void notNegative(String name, @Nullable Measured length) {
    if (length != null && !(length.value() >= 0)) {
      throw new IllegalArgumentException(
          name + " must not be negative, was " + length.value() + " m");
    }
  }
}
