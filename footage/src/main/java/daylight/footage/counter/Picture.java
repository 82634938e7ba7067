package daylight.footage.counter;

import daylight.footage.codec.Luma;
import daylight.footage.codec.Tint;
import org.jspecify.annotations.Nullable;

/** A frame as it is looked at: by its brightness, or by what stands out from a colour too. */
@FunctionalInterface
interface Picture {
  /** Copies a rectangle, row by row, each pixel from 0 to 255 without sign. */
  void copy(int left, int top, int across, int down, byte[] into);

  /** A frame by its brightness where no tint is given. */
  static Picture of(Luma luma, @Nullable Tint against) {
    return against == null
        ? luma::copy
        : (left, top, across, down, into) ->
            luma.copyAgainst(against, left, top, across, down, into);
  }
}
