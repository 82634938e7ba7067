package daylight.app;

import daylight.footage.Watch;
import daylight.line.measure.Key;
import java.util.Locale;

/** Who waits while something takes its time. */
public interface Progress {
  /** Nobody is told. */
  Progress NONE = (step, what) -> Watch.NOBODY;

  /**
   * Something begins.
   *
   * @param what the file concerned, as the person named it
   * @return who is told how it goes on
   */
  Watch begin(Step step, String what);

  /** What takes its time. */
  enum Step implements Key {
    /** The footage {0} of an invented property is being made. */
    FILMING,
    /** The footage {0} is being read. */
    READING,
    /** The counter in the footage {0} is being read. */
    COUNTER,
    /** Pictures of what was found are being taken from the footage {0}. */
    PICTURES;

    @Override
    public String key() {
      return "app.step." + name().toLowerCase(Locale.ROOT);
    }
  }
}
