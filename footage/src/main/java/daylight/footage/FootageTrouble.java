package daylight.footage;

import daylight.line.measure.ComplaintCode;
import daylight.line.measure.Gravity;
import java.util.Locale;

/** What can be wrong with a recording as a file; the book is answered without it. */
public enum FootageTrouble implements ComplaintCode {
  /** Not a regular file, or none at all. */
  NOT_A_FILE,
  /** The system does not let it be read: what it says. */
  UNREADABLE,
  /** Not a byte in it. */
  EMPTY_FILE,
  /** Its content is no video, whatever its name says. */
  NOT_VIDEO,
  /** A recording without pictures, sound only: the container. */
  NO_PICTURES,
  /** Begins as a recording but holds nothing that can be shown: the container. */
  TRUNCATED,
  /** Pictures written in a way that cannot be read: the codec. */
  UNSUPPORTED,
  /** Pictures larger than are read: width, height, the largest side read. */
  TOO_LARGE,
  /** Pictures or sound that an MP4 file cannot take as they are: what they are. */
  NOT_FOR_MP4,
  /** Sound that a copy cannot take along as it is: what it is, the ending of the copy. */
  SOUND_NOT_FOR,
  /** A photograph that is no picture, or none of a kind that is read. */
  NOT_A_PHOTO,
  /** Stops before the end it announces: seconds there, seconds announced. */
  TRUNCATED_TAIL(Gravity.NOTE),
  /** The name ends as for another container: the ending, the container. */
  WRONG_EXTENSION(Gravity.NOTE);

  private final Gravity gravity;

  FootageTrouble() {
    this(Gravity.DOUBT);
  }

  FootageTrouble(Gravity gravity) {
    this.gravity = gravity;
  }

  @Override
  public String key() {
    return "footage." + name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  @Override
  public Gravity gravity() {
    return gravity;
  }
}
