package daylight.app.cli;

/**
 * What the program leaves with, so that scripts can tell; documented in the help and the README.
 */
final class ExitCode {
  /** Done. */
  static final int DONE = 0;

  /** Done, and something is missing or contradicts itself ({@code leaving}, {@code figure}). */
  static final int SOMETHING_OPEN = 1;

  /** The book, or a file of data, must be mended first; nothing was written. */
  static final int BOOK_REFUSED = 2;

  /** The results could not be written; nothing was changed. */
  static final int NOT_WRITTEN = 3;

  /** The command was not understood. */
  static final int USAGE = 64;

  /** It could not begin to serve. */
  static final int NOT_STARTED = 69;

  /** A fault of the program's own. */
  static final int FAULT = 70;

  private ExitCode() {}
}
