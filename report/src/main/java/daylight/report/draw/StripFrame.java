package daylight.report.draw;

/**
 * Lays a stretch of a strip on the sheet.
 *
 * @param cut from where to where it runs, metres
 * @param left edge of the pipe on the sheet
 * @param invert height of the inside bottom on the sheet
 */
record StripFrame(StripScale scale, StripScale.Cut cut, double left, double invert) {

  double x(double station) {
    return left + (station - cut.from()) * scale.points();
  }

  double right() {
    return x(cut.to());
  }

  /** A height above the inside bottom, metres. */
  double y(double height) {
    return invert - height * scale.across();
  }

  /** Whether a station lies on this band; where two bands meet it is on the first. */
  boolean holds(double station) {
    return station <= cut.to() && (station > cut.from() || cut.from() == 0);
  }

  boolean meets(double from, double to) {
    return from < cut.to() && to > cut.from();
  }

  /** A stretch as far as it lies on this band, as a box between two heights in metres. */
  Box box(double from, double to, double low, double high) {
    double a = x(Math.max(from, cut.from()));
    double b = x(Math.min(to, cut.to()));
    return new Box(a, y(high), b - a, y(low) - y(high));
  }

  /** A stretch as far as it lies on this band, as a box of rows of the sheet. */
  Box row(double from, double to, double top, double height) {
    double a = x(Math.max(from, cut.from()));
    double b = x(Math.min(to, cut.to()));
    return new Box(a, top, b - a, height);
  }
}
