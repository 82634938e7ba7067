package daylight.footage.codec;

import daylight.footage.Remark;

/** What came of opening a recording. */
public sealed interface Opening {
  /** It can be looked at; whoever opened it closes it. */
  record Opened(Footage footage) implements Opening {}

  /** It cannot be looked at, and why. */
  record Refused(Remark why) implements Opening {}

  /** Nobody waits for it any longer. */
  record Stopped() implements Opening {}
}
