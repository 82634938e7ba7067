package daylight.line.book;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A line on the ground on which something depends.
 *
 * @param points labels of landmarks along it, in order, at least two
 * @param left whose ground, or what, is on the left when walking along the points; null when
 *     unknown
 * @param right the same on the right
 */
public record Boundary(
    Id id, Kind kind, List<String> points, @Nullable String left, @Nullable String right)
    implements Entry {
  public Boundary {
    points = List.copyOf(points);
  }

  /** What sort of line it is. */
  public enum Kind {
    PROPERTY_LINE,
    EASEMENT,
    FOUNDATION,
    ROAD,
    WATER,
    OTHER
  }
}
