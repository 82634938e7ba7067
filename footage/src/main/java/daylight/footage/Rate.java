package daylight.footage;

/**
 * Frames per second as the fraction it is: 30000/1001 is not 29.97.
 *
 * @param frames so many frames
 * @param seconds in so many seconds
 */
public record Rate(int frames, int seconds) {
  public Rate {
    if (frames <= 0 || seconds <= 0) {
      throw new IllegalArgumentException(
          "a rate is more than nothing, was " + frames + "/" + seconds);
    }
  }

  /** Whole frames per second. */
  public static Rate of(int framesPerSecond) {
    return new Rate(framesPerSecond, 1);
  }

  /** Frames per second. */
  public double perSecond() {
    return (double) frames / seconds;
  }

  /** When a frame is shown, seconds from the first, which is number 0. */
  public double secondsOf(long frame) {
    return (double) frame * seconds / frames;
  }
}
