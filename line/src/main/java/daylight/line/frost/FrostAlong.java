package daylight.line.frost;

import daylight.line.book.Place;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Frost along the pipes.
 *
 * @param frost how deep it goes
 * @param spots the pipe's crown against it, place by place; none where the depth is not known
 * @param wet where water stands or would stand
 * @param unknown the labels of reaches whose depth is not known
 */
public record FrostAlong(
    FrostDepth.Reaches frost, List<Spot> spots, List<Wet> wet, List<String> unknown) {
  public FrostAlong {
    spots = List.copyOf(spots);
    wet = List.copyOf(wet);
    unknown = List.copyOf(unknown);
  }

  /**
   * The crown of the pipe at one place.
   *
   * @param margin its cover against the frost
   */
  public record Spot(Place place, Margin margin) {}

  /**
   * Water at one place.
   *
   * @param finding the label of the finding by which it was seen; empty for water that would stand
   *     there by the grade
   * @param there the probability that water stands there of itself
   * @param ground what the winter does to it
   */
  public record Wet(Place place, String finding, double there, Underground ground) {
    /** The probability that water stands there and frost gets to it. */
    public double reached() {
      return there * ground.margin().reached();
    }

    /** The probability that water stands there and is all ice at the winter's end. */
    public double solid() {
      return there * ground.solid();
    }
  }

  /** Where frost is likeliest to get to the pipe; empty where no depth is known. */
  public Optional<Spot> worst() {
    return spots.stream().max(Comparator.comparingDouble(spot -> spot.margin().reached()));
  }

  /** The water that frost is likeliest to get to; empty where none stands. */
  public Optional<Wet> worstWet() {
    return wet.stream().max(Comparator.comparingDouble(Wet::reached));
  }
}
