package daylight.archive.store;

/** What became of a content that arrives piece by piece. */
public sealed interface Arrival {
  /** All of it is there, and on the disk. */
  record Whole() implements Arrival {}

  /**
   * A part is there; it goes on from here.
   *
   * @param bytes how many, from the first on
   */
  record Partly(long bytes) implements Arrival {}

  /** What arrived is not what was announced; all of it was thrown away. */
  record Other() implements Arrival {}

  /** Somebody else is sending the same content. */
  record Busy() implements Arrival {}
}
