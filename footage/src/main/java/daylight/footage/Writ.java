package daylight.footage;

/** What became of a file that was to be written. */
public sealed interface Writ {
  /** It is there. */
  record Written() implements Writ {}

  /** The one who waited did not want it any more; there is no file. */
  record Stopped() implements Writ {}

  /** The recording does not lend itself to it, and why; there is no file. */
  record Refused(Remark why) implements Writ {}
}
