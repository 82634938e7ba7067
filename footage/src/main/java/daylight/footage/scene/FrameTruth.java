package daylight.footage.scene;

import java.util.Locale;

/**
 * What is true of one frame.
 *
 * @param frame its number, from 0
 * @param seconds from the first frame
 * @param reading of the counter, in metres, not rounded
 * @param text what is shown; empty where no counter is
 * @param moving whether the counter moves
 * @param region the smallest rectangle around the counter's ink
 */
public record FrameTruth(
    long frame, double seconds, double reading, String text, boolean moving, Region region) {
  /** The names of the columns of {@link #row}. */
  public static final String HEADER = "frame,seconds,metres,text,moving,left,top,width,height";

  /** This truth as a row of comma-separated values. */
  public String row() {
    return String.format(
        Locale.ROOT,
        "%d,%.6f,%.6f,\"%s\",%s,%d,%d,%d,%d",
        frame,
        seconds,
        reading,
        text.replace("\"", "\"\""),
        moving ? "yes" : "no",
        region.left(),
        region.top(),
        region.width(),
        region.height());
  }
}
