package daylight.line.book;

import daylight.line.measure.Reading;

/** The place of a finding as it was noted. */
public sealed interface Where {
  /** At a counter reading. */
  record AtCable(Reading cable) implements Where {}

  /** From one counter reading to another. */
  record FromTo(Reading from, Reading to) implements Where {}

  /** At a moment of the footage, in seconds from its first frame; the track gives the distance. */
  record AtMoment(String media, double seconds) implements Where {}
}
