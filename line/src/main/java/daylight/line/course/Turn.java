package daylight.line.course;

import daylight.line.book.Bend;
import daylight.line.book.FieldBook;
import daylight.line.book.Finding;
import daylight.line.book.Pass;
import daylight.line.book.Priors;
import daylight.line.book.Visit;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A bend that was seen on a limb of the tree.
 *
 * @param label of the first entry that notes it
 * @param limb the limb it is on
 * @param walk of the pass that saw it
 * @param reading of the counter there, metres
 * @param readingSd standard uncertainty of that reading, metres
 * @param angle how far it turns, radians, positive
 * @param sd standard uncertainty of the angle, radians
 * @param sense which way, looking away from the root; UNKNOWN where the plane is free
 */
record Turn(
    String label,
    int limb,
    Walk walk,
    double reading,
    double readingSd,
    double angle,
    double sd,
    Bend.Sense sense) {
  /**
   * Two passes that note a bend within this much of each other saw the same one, metres; common
   * practice.
   */
  private static final double SAME_WITHIN = 1.0;

  /** Where it is for these shared unknowns. */
  Walk.Reached at(double[] x) {
    return walk.on(limb, x, reading, Finding.Moving.PUSHING, -1);
  }

  /** Whether it turns in plan, or may. */
  boolean sideways() {
    return sense != Bend.Sense.UP && sense != Bend.Sense.DOWN;
  }

  /** The bends of every pass on the tree, each once; one pass sees no bend twice. */
  static List<Turn> of(FieldBook book, Walks walks, Priors priors, double[] start) {
    List<Turn> turns = new ArrayList<>();
    for (Visit visit : book.visits()) {
      for (Pass pass : visit.passes()) {
        Walk walk = walks.find(visit.label(), pass.label());
        if (walk != null && Altered.holds(book, visit, pass)) {
          List<Turn> before = List.copyOf(turns);
          for (Bend bend : pass.bends()) {
            Turn turn = turn(bend, pass, walk, priors, start);
            if (before.stream().noneMatch(t -> t.sameAs(turn, start))) {
              turns.add(turn);
            }
          }
        }
      }
    }
    return turns;
  }

  private static Turn turn(Bend bend, Pass pass, Walk walk, Priors priors, double[] start) {
    double reading = bend.cable().value();
    Walk.Reached at = walk.at(start, reading, Finding.Moving.PUSHING, -1);
    @Nullable Double stated = bend.angle().sd();
    double sd = stated != null ? stated : priors.sd(Priors.Kind.BEND_ANGLE, bend.angle().value());
    return new Turn(
        bend.label(),
        at.limb(),
        walk,
        reading,
        priors.sd(Priors.Kind.COUNTER_READING, bend.cable()),
        bend.angle().value(),
        sd,
        sense(bend, pass, at.away()));
  }

  /**
   * Left and right mean something only while the head stays upright; seen on the way toward the
   * root they swap, up and down do not.
   */
  private static Bend.Sense sense(Bend bend, Pass pass, boolean away) {
    if (pass.head() != Pass.Head.SELF_RIGHTING) {
      return Bend.Sense.UNKNOWN;
    }
    return switch (bend.sense()) {
      case LEFT -> away ? Bend.Sense.LEFT : Bend.Sense.RIGHT;
      case RIGHT -> away ? Bend.Sense.RIGHT : Bend.Sense.LEFT;
      case UP, DOWN, UNKNOWN -> bend.sense();
    };
  }

  private boolean sameAs(Turn other, double[] start) {
    return limb == other.limb && Math.abs(at(start).t() - other.at(start).t()) <= SAME_WITHIN;
  }
}
