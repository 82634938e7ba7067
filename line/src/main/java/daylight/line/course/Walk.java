package daylight.line.course;

import daylight.line.book.Finding;
import daylight.line.book.Pass;
import daylight.line.counter.Counter;
import daylight.line.normal.Gradient;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One pass on the tree of a line: which limb the camera was in at a counter reading, and how that
 * place hangs on the unknowns (scale, slack, zero, lengths of the limbs before it).
 */
final class Walk {
  private final Layout layout;
  private final Counter counter;
  private final List<Leg> legs;
  private final int scale;
  private final int slack;
  private final int zero;

  private record Leg(int limb, boolean away) {}

  /**
   * Where the camera was.
   *
   * @param t distance from the root's side of the limb, metres
   * @param dt its derivative by every unknown
   * @param away whether the push went away from the root there
   */
  record Reached(int limb, double t, Gradient dt, boolean away) {}

  private Walk(Layout layout, Counter counter, List<Leg> legs, String visit, String pass) {
    this.layout = layout;
    this.counter = counter;
    this.legs = List.copyOf(legs);
    scale = layout.named("scale/" + visit);
    slack = layout.named("slack/" + visit + "/" + pass);
    zero = layout.named("zero/" + visit + "/" + pass);
  }

  /** The walk of a pass on a tree; null when its reaches do not follow each other there. */
  static @Nullable Walk of(Layout layout, Counter counter, String visit, Pass pass) {
    List<Leg> legs = legs(layout.tree(), pass);
    return legs.isEmpty() ? null : new Walk(layout, counter, legs, visit, pass.label());
  }

  /** Whether the reaches of a pass follow each other on a tree. */
  static boolean fits(Tree tree, Pass pass) {
    return !legs(tree, pass).isEmpty();
  }

  private static List<Leg> legs(Tree tree, Pass pass) {
    List<Leg> legs = new ArrayList<>();
    String at = pass.entry();
    for (Pass.Leg step : pass.walk()) {
      int limb = tree.indexOf(step.reach());
      if (limb < 0) {
        return List.of();
      }
      Tree.Limb found = tree.limbs().get(limb);
      boolean away = found.near().equals(at);
      if (!away && !found.far().equals(at)) {
        return List.of();
      }
      legs.add(new Leg(limb, away));
      at = away ? found.far() : found.near();
    }
    return legs;
  }

  int scale() {
    return scale;
  }

  int slack() {
    return slack;
  }

  int zero() {
    return zero;
  }

  Counter counter() {
    return counter;
  }

  /** Whether the walk goes away from the root in a limb of it. */
  boolean away(int limb) {
    return legs.stream().filter(leg -> leg.limb() == limb).findFirst().orElseThrow().away();
  }

  /** The limbs of the walk, in its order. */
  List<Integer> limbs() {
    return legs.stream().map(Leg::limb).toList();
  }

  /**
   * Where something was that showed at a counter reading.
   *
   * @param x the shared unknowns, whatever follows them
   * @param behind the unknown that stands for how far it trails the lens; −1 for the lens itself
   */
  Reached at(double[] x, double reading, Finding.Moving moving, int behind) {
    Gradient d = new Gradient();
    double out = out(x, reading, moving, behind, d);
    return placed(x, out, d, leg(x, out));
  }

  /** The same, on that limb of the walk whether or not the reading still falls on it. */
  Reached on(int limb, double[] x, double reading, Finding.Moving moving, int behind) {
    Gradient d = new Gradient();
    double out = out(x, reading, moving, behind, d);
    return placed(x, out, d, limbs().indexOf(limb));
  }

  /** Metres of pipe from the entry. */
  private double out(double[] x, double reading, Finding.Moving moving, int behind, Gradient d) {
    double grown = grown(x, moving);
    double out = (counter.sinceEntry(reading) - x[zero]) / grown;
    d.add(zero, -1 / grown);
    d.add(scale, -out / (1 + x[scale]));
    if (Counter.slackens(moving)) {
      d.add(slack, -out / (1 + x[slack]));
    }
    if (behind >= 0) {
      out -= x[behind];
      d.add(behind, -1);
    }
    return out;
  }

  /** The distance along the pipe from the entry to a node of the walk; null when not on it. */
  @Nullable Double toNode(double[] x, String node, Gradient gradient) {
    Tree tree = layout.tree();
    double sum = 0;
    Leg first = legs.getFirst();
    Tree.Limb limb = tree.limbs().get(first.limb());
    if ((first.away() ? limb.near() : limb.far()).equals(node)) {
      return 0.0;
    }
    for (Leg leg : legs) {
      sum += layout.length(x, leg.limb());
      gradient.add(layout.stretch(leg.limb()), layout.length0(leg.limb()));
      limb = tree.limbs().get(leg.limb());
      if ((leg.away() ? limb.far() : limb.near()).equals(node)) {
        return sum;
      }
    }
    return null;
  }

  /** Counter metres per metre of pipe for a reading. */
  double grown(double[] x, Finding.Moving moving) {
    return (1 + x[scale]) * (Counter.slackens(moving) ? 1 + x[slack] : 1);
  }

  /** The leg that so many metres of pipe from the entry are on. */
  private int leg(double[] x, double out) {
    double before = 0;
    int n = 0;
    while (n < legs.size() - 1 && out > before + layout.length(x, legs.get(n).limb())) {
      before += layout.length(x, legs.get(n).limb());
      n++;
    }
    return n;
  }

  private Reached placed(double[] x, double out, Gradient d, int n) {
    double before = 0;
    for (int i = 0; i < n; i++) {
      int limb = legs.get(i).limb();
      before += layout.length(x, limb);
      d.add(layout.stretch(limb), -layout.length0(limb));
    }
    Leg leg = legs.get(n);
    double a = out - before;
    if (leg.away()) {
      return new Reached(leg.limb(), a, d, true);
    }
    Gradient back = new Gradient();
    back.add(d, -1);
    back.add(layout.stretch(leg.limb()), layout.length0(leg.limb()));
    return new Reached(leg.limb(), layout.length(x, leg.limb()) - a, back, false);
  }
}
