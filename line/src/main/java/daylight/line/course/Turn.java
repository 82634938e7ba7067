package daylight.line.course;

import daylight.line.book.Bend;
import daylight.line.book.FieldBook;
import daylight.line.book.Finding;
import daylight.line.book.Id;
import daylight.line.book.Pass;
import daylight.line.book.Priors;
import daylight.line.book.Visit;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A bend that was seen on a limb of the tree, by one pass or by several.
 *
 * @param id of the first entry that notes it
 * @param limb the limb it is on
 * @param walk of the pass that saw it first
 * @param reading of that pass's counter there, metres
 * @param readingSd standard uncertainty of that reading, metres
 * @param angle how far it turns, radians, positive
 * @param sd standard uncertainty of the angle, radians
 * @param sense which way, looking away from the root; UNKNOWN where the plane is free
 * @param again where other passes saw it
 */
record Turn(
    Id id,
    int limb,
    Walk walk,
    double reading,
    double readingSd,
    double angle,
    double sd,
    Bend.Sense sense,
    List<Again> again) {
  /**
   * Two passes that note a bend within this much of each other saw the same one, metres; common
   * practice.
   */
  private static final double SAME_WITHIN = 1.0;

  /** However unsure the counters are, two bends further apart are two, metres; common practice. */
  private static final double NEVER_BEYOND = 3.0;

  /** Differences of so many standard uncertainties still are of one bend. */
  private static final double LIKELY = 3;

  Turn {
    again = List.copyOf(again);
  }

  /** The same bend seen by another pass. */
  record Again(Id id, Walk walk, double reading, double readingSd) {
    Walk.Reached at(int limb, double[] x) {
      return walk.on(limb, x, reading, Finding.Moving.PUSHING, -1);
    }
  }

  /** Where it is for these shared unknowns. */
  Walk.Reached at(double[] x) {
    return walk.on(limb, x, reading, Finding.Moving.PUSHING, -1);
  }

  /** Whether it turns in plan, or may. */
  boolean sideways() {
    return sense != Bend.Sense.UP && sense != Bend.Sense.DOWN;
  }

  /** The bends of every pass on the tree, each once; one pass sees no bend twice. */
  static List<Turn> of(
      FieldBook book, Lengths lengths, Walks walks, Priors priors, double[] start) {
    Matching matching = new Matching(start, lengths.met());
    List<Turn> turns = new ArrayList<>();
    for (Visit visit : book.visits()) {
      for (Pass pass : visit.passes()) {
        Walk walk = walks.find(visit.label(), pass.label());
        if (walk != null && Altered.holds(book, visit, pass)) {
          List<Turn> seen = new ArrayList<>();
          for (Bend bend : pass.bends()) {
            seen.add(turn(bend, pass, walk, priors, start));
          }
          matching.join(turns, seen);
        }
      }
    }
    return turns;
  }

  /**
   * Which bends of two passes are one.
   *
   * @param start the shared unknowns as first guessed
   * @param met of each limb whether only what two passes both found tells its length
   */
  @SuppressWarnings("ArrayRecordComponent") // never leaves this room
  private record Matching(double[] start, boolean[] met) {

    /** Adds the bends of a pass to those of the passes before it. */
    void join(List<Turn> turns, List<Turn> seen) {
      List<Turn> before = List.copyOf(turns);
      for (Turn turn : seen) {
        Turn same = nearest(turn, before);
        // One is the other only if each is nearest to the other.
        if (same != null && turn.equals(nearest(same, seen))) {
          turns.set(turns.indexOf(same), same.seenAgain(turn));
        } else if (before.stream()
            .noneMatch(other -> agree(other, turn) && away(other, turn) <= SAME_WITHIN)) {
          turns.add(turn);
        }
      }
    }

    /** The nearest of the bends that may be this one; null for none. */
    private @Nullable Turn nearest(Turn to, List<Turn> turns) {
      Turn nearest = null;
      for (Turn turn : turns) {
        if (maybe(to, turn) && (nearest == null || away(to, turn) < away(to, nearest))) {
          nearest = turn;
        }
      }
      return nearest;
    }

    private double away(Turn a, Turn b) {
      return a.limb == b.limb
          ? Math.abs(a.at(start).t() - b.at(start).t())
          : Double.POSITIVE_INFINITY;
    }

    /** Whether both turn the same way, as far as anybody knows. */
    private static boolean agree(Turn a, Turn b) {
      return a.sense == b.sense || a.sense == Bend.Sense.UNKNOWN || b.sense == Bend.Sense.UNKNOWN;
    }

    /** Whether the counters and what was seen allow that two passes saw one bend. */
    private boolean maybe(Turn a, Turn b) {
      double sure = StrictMath.hypot(a.unsure(), b.unsure());
      double near =
          met[a.limb] ? NEVER_BEYOND : Math.clamp(LIKELY * sure, SAME_WITHIN, NEVER_BEYOND);
      return away(a, b) <= near
          && agree(a, b)
          && Math.abs(a.angle - b.angle) <= LIKELY * StrictMath.hypot(a.sd, b.sd);
    }
  }

  /** How far off its counter may be there, metres. */
  private double unsure() {
    double out = walk.counter().sinceEntry(reading);
    double scale = StrictMath.hypot(walk.counter().scale().sd(), walk.counter().slack().sd()) * out;
    return Math.sqrt(
        readingSd * readingSd + scale * scale + walk.counter().zeroSd() * walk.counter().zeroSd());
  }

  /**
   * This bend and what another pass saw of it: the angle is the mean by weight, and as unsure as
   * the better of both, for what is judged by eye is judged alike twice.
   */
  private Turn seenAgain(Turn other) {
    double weight = 1 / (sd * sd);
    double more = 1 / (other.sd * other.sd);
    List<Again> all = new ArrayList<>(again);
    all.add(new Again(other.id, other.walk, other.reading, other.readingSd));
    return new Turn(
        id,
        limb,
        walk,
        reading,
        readingSd,
        (weight * angle + more * other.angle) / (weight + more),
        Math.min(sd, other.sd),
        sense == Bend.Sense.UNKNOWN ? other.sense : sense,
        all);
  }

  private static Turn turn(Bend bend, Pass pass, Walk walk, Priors priors, double[] start) {
    double reading = bend.cable().value();
    Walk.Reached at = walk.at(start, reading, Finding.Moving.PUSHING, -1);
    @Nullable Double stated = bend.angle().sd();
    double sd = stated != null ? stated : priors.sd(Priors.Kind.BEND_ANGLE, bend.angle().value());
    return new Turn(
        bend.id(),
        at.limb(),
        walk,
        reading,
        priors.sd(Priors.Kind.COUNTER_READING, bend.cable()),
        bend.angle().value(),
        sd,
        sense(bend, pass, at.away()),
        List.of());
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
}
