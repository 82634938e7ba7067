package daylight.archive;

import daylight.archive.form.Fields;
import daylight.archive.form.FormTrouble;
import daylight.line.measure.Argument;

/** Places in a picture and sizes there, in its pixels as it is shown. */
final class Pixels {
  /** No picture is wider or higher. */
  private static final double MOST = 100_000;

  private Pixels() {}

  /** From the left or the upper edge. */
  static double along(Fields row, String key) {
    return read(row, key, 0);
  }

  /** How wide or high something is: one at least. */
  static double size(Fields row, String key) {
    return read(row, key, 1);
  }

  /** Zero where it complained. */
  private static double read(Fields row, String key, double least) {
    Double pixels = row.number(key, least, MOST);
    if (!row.has(key)) {
      row.complain(FormTrouble.MISSING, key, new Argument.Text(key));
    }
    return pixels == null ? 0 : pixels;
  }
}
