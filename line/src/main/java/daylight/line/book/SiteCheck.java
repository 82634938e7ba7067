package daylight.line.book;

import daylight.line.measure.Argument;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** The pipes of a site are trees between known nodes; its boundaries run along known landmarks. */
final class SiteCheck {
  private final FaultList faults;
  private final Names names;

  SiteCheck(FaultList faults, Names names) {
    this.faults = faults;
    this.names = names;
  }

  void check(Site site) {
    site.boundaries().forEach(this::boundary);
    site.reaches().forEach(this::reach);
    trees(site);
    Surroundings around = site.surroundings();
    around.roofs().forEach(roof -> node(roof, roof.node()));
    around.fixtures().forEach(fixture -> node(fixture, fixture.node()));
    around.pumps().forEach(pump -> node(pump, pump.node()));
  }

  private void node(Entry entry, String label) {
    faults.known(BookFault.UNKNOWN_NODE, entry, "node", label, names.nodes());
  }

  private void boundary(Boundary boundary) {
    if (boundary.points().size() < 2) {
      Argument count = new Argument.Count(boundary.points().size());
      faults.add(BookFault.BOUNDARY_TOO_SHORT, boundary, "points", count);
    }
    for (int i = 0; i < boundary.points().size(); i++) {
      String label = boundary.points().get(i);
      String field = "points[" + i + "]";
      faults.known(BookFault.UNKNOWN_LANDMARK, boundary, field, label, names.landmarks());
    }
  }

  private void reach(Reach reach) {
    faults.known(BookFault.UNKNOWN_NODE, reach, "from", reach.from(), names.nodes());
    faults.known(BookFault.UNKNOWN_NODE, reach, "to", reach.to(), names.nodes());
    faults.positive(reach, "bore", reach.bore());
    faults.positive(reach, "length", reach.length());
    if (reach.from().equals(reach.to())) {
      faults.add(BookFault.REACH_TO_ITSELF, reach, "to", new Argument.Label(reach.to()));
    }
  }

  private void trees(Site site) {
    Map<String, Map<String, String>> parents = new HashMap<>();
    Map<String, Reach> firsts = new LinkedHashMap<>();
    for (Reach reach : site.reaches()) {
      Map<String, String> parent = parents.computeIfAbsent(reach.line(), line -> new HashMap<>());
      firsts.putIfAbsent(reach.line(), reach);
      String from = root(parent, reach.from());
      String to = root(parent, reach.to());
      if (!from.equals(to)) {
        parent.put(from, to);
      } else if (!reach.from().equals(reach.to())) {
        faults.add(BookFault.LOOP, reach, "to", new Argument.Text(reach.line()));
      }
    }
    Set<String> told = new HashSet<>();
    for (Reach reach : site.reaches()) {
      Map<String, String> parent = parents.getOrDefault(reach.line(), Map.of());
      Reach first = firsts.getOrDefault(reach.line(), reach);
      String root = root(parent, reach.from());
      if (!root.equals(root(parent, first.from())) && told.add(reach.line() + "/" + root)) {
        faults.add(BookFault.NOT_CONNECTED, reach, "line", new Argument.Text(reach.line()));
      }
    }
  }

  private static String root(Map<String, String> parents, String node) {
    String at = node;
    for (String up = parents.get(at); up != null; up = parents.get(at)) {
      at = up;
    }
    return at;
  }
}
