package daylight.archive.store;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * Where the entries of a list stand. One that stays between the same neighbours keeps its place, so
 * that a row put in between makes no revisions of all that follow.
 */
final class Places {
  private Places() {}

  /**
   * The same entries in the same order, with the places they had where that order allows it.
   *
   * @param places of the entries that were there before
   */
  static List<Leaf> kept(List<Leaf> leaves, Map<UUID, Double> places) {
    Map<List<Object>, List<Integer>> lists = new HashMap<>();
    for (int i = 0; i < leaves.size(); i++) {
      Leaf leaf = leaves.get(i);
      if (leaf.parent() != null && leaf.place() != BookTree.ALONE) {
        lists
            .computeIfAbsent(List.of(leaf.parent(), leaf.section()), k -> new ArrayList<>())
            .add(i);
      }
    }
    List<Leaf> kept = new ArrayList<>(leaves);
    for (List<Integer> list : lists.values()) {
      list.sort(Comparator.comparingDouble(i -> leaves.get(i).place()));
      double last = 0;
      for (int at = 0; at < list.size(); at++) {
        Leaf leaf = leaves.get(list.get(at));
        double before = places.getOrDefault(leaf.entry(), 0.0);
        double place = before > last ? before : between(last, next(leaves, list, at, last, places));
        kept.set(list.get(at), leaf.at(place));
        last = place;
      }
    }
    return kept;
  }

  /** The first place beyond this one that an entry further on has; infinite where none has. */
  private static double next(
      List<Leaf> leaves, List<Integer> list, int at, double last, Map<UUID, Double> places) {
    for (int i = at + 1; i < list.size(); i++) {
      double place = places.getOrDefault(leaves.get(list.get(i)).entry(), 0.0);
      if (place > last) {
        return place;
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  private static double between(double last, double next) {
    double middle = Double.isInfinite(next) ? last + 1 : last + (next - last) / 2;
    return middle > last && middle < next ? middle : last + 1;
  }
}
