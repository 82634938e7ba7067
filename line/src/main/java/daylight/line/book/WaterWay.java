package daylight.line.book;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Where water goes, as the book says. A reach of which nobody knows which way its water goes may be
 * gone through either way.
 */
public final class WaterWay {
  private final Set<String> reaches = new LinkedHashSet<>();
  private final Set<String> nodes = new LinkedHashSet<>();

  private WaterWay(Site site, String node, Predicate<Reach> down, Predicate<Reach> up) {
    Deque<String> ahead = new ArrayDeque<>(Set.of(node));
    nodes.add(node);
    while (!ahead.isEmpty()) {
      String at = ahead.remove();
      for (Reach reach : site.reaches()) {
        if (reach.upstream().equals(at) && down.test(reach)) {
          go(reach, reach.downstream(), ahead);
        }
        if (reach.downstream().equals(at) && up.test(reach)) {
          go(reach, reach.upstream(), ahead);
        }
      }
    }
  }

  private void go(Reach reach, String to, Deque<String> ahead) {
    reaches.add(reach.label());
    if (nodes.add(to)) {
      ahead.add(to);
    }
  }

  private static boolean unknown(Reach reach) {
    return reach.water() instanceof Reach.Water.Unknown;
  }

  private static boolean pumped(Reach reach) {
    return reach.use() == Reach.Use.PUMPED;
  }

  /** The labels of the reaches that water let in at a node may go through, as it comes to them. */
  public static Set<String> below(Site site, String node) {
    return new WaterWay(site, node, reach -> true, WaterWay::unknown).reaches;
  }

  /** The labels of the nodes from which water may come to a reach, its upper end among them. */
  public static Set<String> above(Site site, Reach reach) {
    return new WaterWay(site, reach.upstream(), WaterWay::unknown, any -> true).nodes;
  }

  /**
   * The labels of the nodes from which water may run to a node with no pump between, and its own.
   */
  public static Set<String> runsTo(Site site, String node) {
    return new WaterWay(
            site, node, reach -> unknown(reach) && !pumped(reach), reach -> !pumped(reach))
        .nodes;
  }

  /** Whether water put in at one node may come to another. */
  public static boolean leads(Site site, String from, String to) {
    return new WaterWay(site, from, reach -> true, WaterWay::unknown).nodes.contains(to);
  }

  /** Whether it must, if the book is right. */
  public static boolean leadsSurely(Site site, String from, String to) {
    return new WaterWay(site, from, reach -> !unknown(reach), reach -> false).nodes.contains(to);
  }

  /** Whether air may go from one node to another. */
  public static boolean hangTogether(Site site, String one, String other) {
    return new WaterWay(site, one, reach -> true, reach -> true).nodes.contains(other);
  }
}
