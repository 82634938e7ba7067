package daylight.line.course;

import daylight.line.book.FieldBook;
import daylight.line.book.Pass;
import daylight.line.book.Reach;
import daylight.line.book.Visit;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A tree of limbs that grow from a root node: where a camera entered it first, else its first
 * reach's upstream node. A line is one tree, or several where its reaches do not all hang together.
 *
 * @param line the label of the line
 * @param root the label of the root node
 * @param limbs a parent always before its children
 */
record Tree(String line, String root, List<Limb> limbs) {
  Tree {
    limbs = List.copyOf(limbs);
  }

  /**
   * One reach as it grows from the root.
   *
   * @param parent index of the limb it grows from; −1 at the root
   * @param near the label of its node on the root's side
   * @param far the label of its other node
   * @param downstream whether it grows with the water
   */
  record Limb(Reach reach, int parent, String near, String far, boolean downstream) {}

  /** The trees of a line, in the order of their first reaches. */
  static List<Tree> grow(FieldBook book, String line) {
    List<Reach> rest =
        new ArrayList<>(book.site().reaches().stream().filter(r -> r.line().equals(line)).toList());
    List<Tree> trees = new ArrayList<>();
    while (!rest.isEmpty()) {
      String root = entry(book, rest).orElse(rest.getFirst().upstream());
      Tree tree = grow(line, root, rest);
      trees.add(tree);
      rest.removeIf(reach -> tree.indexOf(reach.label()) >= 0);
    }
    return trees;
  }

  private static Tree grow(String line, String root, List<Reach> reaches) {
    List<Limb> limbs = new ArrayList<>();
    Set<String> grown = new HashSet<>();
    Deque<Integer> tips = new ArrayDeque<>();
    tips.add(-1);
    while (!tips.isEmpty()) {
      int tip = tips.remove();
      String node = tip < 0 ? root : limbs.get(tip).far();
      for (Reach reach : reaches) {
        boolean touches = reach.from().equals(node) || reach.to().equals(node);
        if (touches && grown.add(reach.label())) {
          String far = reach.from().equals(node) ? reach.to() : reach.from();
          limbs.add(new Limb(reach, tip, node, far, reach.upstream().equals(node)));
          tips.add(limbs.size() - 1);
        }
      }
    }
    return new Tree(line, root, limbs);
  }

  private static Optional<String> entry(FieldBook book, List<Reach> reaches) {
    for (Visit visit : book.visits()) {
      for (Pass pass : visit.passes()) {
        for (Reach reach : reaches) {
          if (reach.from().equals(pass.entry()) || reach.to().equals(pass.entry())) {
            return Optional.of(pass.entry());
          }
        }
      }
    }
    return Optional.empty();
  }

  /** The index of the limb of a reach; −1 when the reach is not of this tree. */
  int indexOf(String reach) {
    for (int i = 0; i < limbs.size(); i++) {
      if (limbs.get(i).reach().label().equals(reach)) {
        return i;
      }
    }
    return -1;
  }

  /** Whether the water comes down a limb and down its parent both, to where they join. */
  boolean meets(int limb) {
    int parent = limbs.get(limb).parent();
    return parent >= 0 && limbs.get(parent).downstream() && !limbs.get(limb).downstream();
  }

  /** The limbs from the root to this one, this one last. */
  List<Integer> path(int limb) {
    List<Integer> path = new ArrayList<>();
    for (int i = limb; i >= 0; i = limbs.get(i).parent()) {
      path.addFirst(i);
    }
    return path;
  }
}
