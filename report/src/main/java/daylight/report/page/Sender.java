package daylight.report.page;

import daylight.line.book.Letterhead;
import daylight.report.shots.Picture;
import org.jspecify.annotations.Nullable;

/**
 * Whose report it is.
 *
 * @param logo as it is printed; null for none
 */
public record Sender(Letterhead letterhead, @Nullable Picture logo) {
  /** A report from nobody in particular. */
  public static final Sender NOBODY = new Sender(Letterhead.NONE, null);
}
