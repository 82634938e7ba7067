package daylight.archive.form;

/**
 * A position in a text.
 *
 * @param line counted from 1
 * @param column counted from 1, in characters
 */
public record Mark(int line, int column) {
  /** The whole file. */
  public static final Mark NOWHERE = new Mark(0, 0);
}
