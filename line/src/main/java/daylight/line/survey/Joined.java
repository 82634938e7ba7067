package daylight.line.survey;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Brings the equations of correlated readings together and gives them their joint covariance. */
final class Joined {
  private final List<Correlated> groups;

  /** By component: which group it is of, and its place there. */
  private final Map<Correlated.Component, Integer> group = new HashMap<>();

  Joined(List<Correlated> groups) {
    this.groups = groups;
    for (int g = 0; g < groups.size(); g++) {
      for (Correlated.Component component : groups.get(g).components()) {
        group.put(component, g);
      }
    }
  }

  private static Correlated.Component component(Equation equation) {
    return new Correlated.Component(equation.entry(), equation.quantity());
  }

  /** The same equations, those of a group after the first of it. */
  List<Equation> of(List<Equation> equations) {
    if (groups.isEmpty()) {
      return equations;
    }
    Map<Integer, List<Equation>> members = new HashMap<>();
    for (Equation equation : equations) {
      Integer of = group.get(component(equation));
      if (of != null) {
        members.computeIfAbsent(of, _ -> new ArrayList<>()).add(equation);
      }
    }
    List<Equation> joined = new ArrayList<>();
    for (Equation equation : equations) {
      Integer of = group.get(component(equation));
      if (of == null) {
        joined.add(equation);
      } else {
        List<Equation> together = members.remove(of);
        joined.addAll(together == null ? List.of() : blocked(groups.get(of), together));
      }
    }
    return joined;
  }

  private static List<Equation> blocked(Correlated group, List<Equation> members) {
    List<Integer> places =
        members.stream().map(e -> group.components().indexOf(component(e))).toList();
    Block block = group.block(places);
    List<Equation> blocked = new ArrayList<>();
    for (int row = 0; row < members.size(); row++) {
      blocked.add(members.get(row).in(block, row));
    }
    return blocked;
  }
}
