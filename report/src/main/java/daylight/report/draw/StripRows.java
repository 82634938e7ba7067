package daylight.report.draw;

/**
 * The rows of one band from top to bottom, as heights on the sheet.
 *
 * @param pictures where pictures begin; the same as {@code above} where there are none
 * @param above where the room for labels above the pipe begins
 * @param crown the highest inside top of the pipe
 * @param invert the inside bottom
 * @param tracks where the room for labels below the pipe ends
 * @param passes how many passes have a row
 * @param locates whether anything was found from the ground
 */
record StripRows(
    double pictures,
    double above,
    double crown,
    double invert,
    double tracks,
    int passes,
    boolean locates) {
  /** Wall and whiskers. */
  static final double WALL = 3;

  /** From the wall out to the middle of a whisker. */
  static final double WHISKER = 3;

  /** From a whisker out to where its label hangs. */
  static final double PIN = 8;

  static final double PICTURES = 84;
  static final double TRACK = 12;
  private static final double LOCATES = 15;
  private static final double AXIS = 26;

  /**
   * Stacks a band.
   *
   * @param linesAbove of labels for which room is kept above the pipe
   * @param linesBelow of labels for which room is kept below it
   */
  static StripRows from(
      double top,
      boolean pictures,
      int linesAbove,
      double pipe,
      int linesBelow,
      int passes,
      boolean locates) {
    double above = top + (pictures ? PICTURES : 0);
    double crown = above + 12.0 * linesAbove + WALL + WHISKER + PIN + 4;
    double invert = crown + pipe;
    double tracks = invert + WALL + WHISKER + PIN + 4 + 12.0 * linesBelow;
    return new StripRows(top, above, crown, invert, tracks, passes, locates);
  }

  double sight() {
    return tracks + TRACK;
  }

  double pass(int index) {
    return tracks + TRACK * (2 + index);
  }

  double locateRow() {
    return tracks + TRACK * (2 + passes);
  }

  double axis() {
    return locateRow() + (locates ? LOCATES : 3);
  }

  double bottom() {
    return axis() + AXIS;
  }
}
