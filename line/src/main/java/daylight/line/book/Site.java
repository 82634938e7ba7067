package daylight.line.book;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One property: what stands on it and what runs under it.
 *
 * @param name what people call the place
 * @param address where it is; null when not recorded
 * @param zone the time zone in which local times of the book are meant
 * @param invented true for a scenario that was made up; every output then says so
 * @param landmarks points that measurements are tied to
 * @param boundaries lines on the ground: property lines, easements, foundations, roads
 * @param nodes access points, junctions, outlets and ends
 * @param reaches the pipes between them: a tree for each line
 * @param surroundings climate, soil, roofs, fixtures and pumps
 */
public record Site(
    Id id,
    String name,
    @Nullable String address,
    ZoneId zone,
    boolean invented,
    List<Landmark> landmarks,
    List<Boundary> boundaries,
    List<Node> nodes,
    List<Reach> reaches,
    Surroundings surroundings)
    implements Entry {
  public Site {
    landmarks = List.copyOf(landmarks);
    boundaries = List.copyOf(boundaries);
    nodes = List.copyOf(nodes);
    reaches = List.copyOf(reaches);
  }

  /** The node of that label. */
  public Optional<Node> findNode(String label) {
    return nodes.stream().filter(node -> node.label().equals(label)).findFirst();
  }

  /** The reach of that label. */
  public Optional<Reach> findReach(String label) {
    return reaches.stream().filter(reach -> reach.label().equals(label)).findFirst();
  }
}
