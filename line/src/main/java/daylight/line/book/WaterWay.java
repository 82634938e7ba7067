package daylight.line.book;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.Set;

/**
 * Through which reaches water goes. A reach of which nobody knows which way its water goes is gone
 * through either way.
 */
public final class WaterWay {
  private WaterWay() {}

  /** The labels of the reaches that water let in at a node goes through, as it comes to them. */
  public static Set<String> below(Site site, String node) {
    return walk(site, node, true);
  }

  /** The labels of the nodes from which water comes to a reach, its upper end among them. */
  public static Set<String> above(Site site, Reach reach) {
    Set<String> nodes = new LinkedHashSet<>();
    nodes.add(reach.upstream());
    for (String label : walk(site, reach.upstream(), false)) {
      site.findReach(label).ifPresent(up -> nodes.add(up.upstream()));
    }
    return nodes;
  }

  private static Set<String> walk(Site site, String node, boolean down) {
    Set<String> through = new LinkedHashSet<>();
    Deque<String> ahead = new ArrayDeque<>(Set.of(node));
    while (!ahead.isEmpty()) {
      String at = ahead.remove();
      for (Reach reach : site.reaches()) {
        boolean unknown = reach.water() instanceof Reach.Water.Unknown;
        String near = down ? reach.upstream() : reach.downstream();
        String far = down ? reach.downstream() : reach.upstream();
        if (near.equals(at) && through.add(reach.label())) {
          ahead.add(far);
        } else if (unknown && far.equals(at) && through.add(reach.label())) {
          ahead.add(near);
        }
      }
    }
    return through;
  }
}
