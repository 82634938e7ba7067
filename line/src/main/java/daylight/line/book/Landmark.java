package daylight.line.book;

import org.jspecify.annotations.Nullable;

/**
 * A point that measurements are tied to and that a crew can find again.
 *
 * @param what it in words, "north-east corner of the shop"; null when not recorded
 * @param kind what sort of thing it is
 * @param base whether it is one of the two that fix the site grid: the first is its origin, and
 *     grid north runs toward the second; where none is marked, the first two of the book serve
 */
public record Landmark(Id id, @Nullable String what, Kind kind, boolean base) implements Entry {
  /** The sort of thing a landmark is. */
  public enum Kind {
    CORNER,
    POST,
    TREE,
    WELL,
    COVER,
    OTHER
  }
}
