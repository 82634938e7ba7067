package daylight.line.counter;

/** What became of looking for a distance in a track. Samples go by their number, from 0. */
public sealed interface Sought {
  /**
   * The counter showed it.
   *
   * @param sample in the middle of the time it did, or the nearest to where it went through
   * @param time which of the times this is, from 1; 0 for a rest that only lies nearest
   * @param times how often the counter stood at it or went through it
   */
  record At(int sample, int time, int times) implements Sought {}

  /**
   * It lies outside all that the counter showed.
   *
   * @param least the sample of the smallest reading
   * @param most the sample of the greatest reading
   */
  record Beyond(int least, int most) implements Sought {}

  /**
   * It was passed while the counter could not be read: the samples that are known on either side.
   */
  record Unread(int before, int after) implements Sought {}

  /** The counter was set from one side of it to the other: the sample that shows so first. */
  record SetPast(int sample) implements Sought {}

  /** The camera never rested. */
  record NoRest() implements Sought {}

  /** Not one reading is known. */
  record NothingKnown() implements Sought {}

  /** Which of the times that the counter showed a distance. */
  enum Which {
    /** The first. */
    FIRST,
    /** The last. */
    LAST,
    /** The rest of the camera that lies nearest, the longest of several. */
    REST
  }
}
