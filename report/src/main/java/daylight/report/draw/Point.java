package daylight.report.draw;

/** A point on the sheet, right and down. */
record Point(double x, double y) {}
