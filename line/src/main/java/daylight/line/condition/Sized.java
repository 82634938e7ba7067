package daylight.line.condition;

import daylight.line.measure.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * Which size of a finding decides.
 *
 * @param quantity its name in the catalogue
 * @param dimension what it is a size of
 * @param of what a share is a share of; null for other dimensions
 * @param or the name of a height above the inside bottom from which, with the bore, a share that
 *     nobody noted is worked out; null where there is none
 */
public record Sized(
    String quantity, Dimension dimension, @Nullable ShareOf of, @Nullable String or) {
  public Sized {
    if ((dimension == Dimension.SHARE) != (of != null)) {
      throw new IllegalArgumentException(quantity + ": a share, and only a share, is of something");
    }
    if (or != null && of == null) {
      throw new IllegalArgumentException(quantity + ": only a share follows from a height");
    }
  }
}
