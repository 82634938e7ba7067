package daylight.report.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Finds room for labels, one after the other, the most important first. Each goes to the cheapest
 * of a fixed fan of spots around its anchor: near is cheap, covering a drawn stroke is dear,
 * touching another label, a mark or a leader is out of the question. The same calls give the same
 * spots.
 */
final class Labeller {
  private static final double[] REACHES = {0, 5, 12, 22, 34, 48, 64, 84, 108, 136};
  private static final int DIRECTIONS = 16;

  /** What a label keeps free about itself, points. */
  static final double GAP = 1.5;

  private static final double LEADER_FROM = 4;
  private static final double PER_STROKE = 14;

  private final Box frame;
  private final List<Box> taken = new ArrayList<>();
  private final List<Stroke> strokes = new ArrayList<>();
  private final List<Stroke> leaders = new ArrayList<>();

  Labeller(Box frame) {
    this.frame = frame;
  }

  /**
   * Where a label goes.
   *
   * @param box the room it takes
   * @param leader from the anchor to the label; null when it stands right beside it
   * @param cost of it, in points of distance
   */
  record Spot(Box box, @Nullable Stroke leader, double cost) {}

  /** The same marks and strokes, without any label placed since. */
  Labeller copy() {
    Labeller copy = new Labeller(frame);
    copy.taken.addAll(taken);
    copy.strokes.addAll(strokes);
    copy.leaders.addAll(leaders);
    return copy;
  }

  /** No label goes here. */
  void keepClear(Box box) {
    taken.add(box);
  }

  /** No label covers this without need. */
  void avoid(Stroke stroke) {
    strokes.add(stroke);
  }

  /**
   * Takes room for a label.
   *
   * @param clearance of the mark at the anchor
   * @return empty when there is none
   */
  Optional<Spot> place(double x, double y, double clearance, double width, double height) {
    return place(x, y, clearance, width, height, null);
  }

  /**
   * The same.
   *
   * @param own room that was kept clear for this label; null for none
   */
  Optional<Spot> place(
      double x, double y, double clearance, double width, double height, @Nullable Box own) {
    Spot best = null;
    double least = Double.POSITIVE_INFINITY;
    for (double reach : REACHES) {
      if (reach >= least) {
        break;
      }
      for (int direction = 0; direction < DIRECTIONS; direction++) {
        Spot spot = spot(x, y, clearance + GAP + reach, direction, width, height, reach);
        double near = reach + (direction == 0 ? 0 : 0.5);
        if (near >= least || !frame.holds(spot.box())) {
          continue;
        }
        double cost = near + cost(spot);
        if (cost < least && free(spot, own)) {
          least = cost;
          best = new Spot(spot.box(), spot.leader(), cost);
        }
      }
    }
    if (best != null) {
      taken.add(best.box());
      if (best.leader() != null) {
        leaders.add(best.leader());
      }
    }
    return Optional.ofNullable(best);
  }

  private static Spot spot(
      double x, double y, double from, int direction, double width, double height, double reach) {
    double turn = 2 * Math.PI * direction / DIRECTIONS;
    double dx = StrictMath.cos(turn);
    double dy = StrictMath.sin(turn);
    double middleX = x + dx * (from + width / 2);
    double middleY = y + dy * (from + height / 2);
    Box box = new Box(middleX - width / 2, middleY - height / 2, width, height);
    double endX = Math.clamp(x, box.x(), box.right());
    double endY = Math.clamp(y, box.y(), box.bottom());
    boolean near = reach <= LEADER_FROM;
    return new Spot(box, near ? null : new Stroke(x, y, endX, endY), 0);
  }

  private double cost(Spot spot) {
    double cost = 0;
    for (Stroke stroke : strokes) {
      cost += spot.box().crossedBy(stroke) ? PER_STROKE : 0;
    }
    if (spot.leader() != null) {
      for (Stroke stroke : strokes) {
        cost += spot.leader().crosses(stroke) ? PER_STROKE / 4 : 0;
      }
    }
    return cost;
  }

  /** Plain loops: this is asked some hundred times for each label. */
  private boolean free(Spot spot, @Nullable Box own) {
    Box room = spot.box().grown(GAP);
    Stroke leader = spot.leader();
    for (Box box : taken) {
      boolean touched = room.overlaps(box) || (leader != null && passesThrough(leader, box));
      if (touched && !same(box, own)) {
        return false;
      }
    }
    for (Stroke other : leaders) {
      if (room.crossedBy(other) || (leader != null && leader.crosses(other))) {
        return false;
      }
    }
    return true;
  }

  private static boolean same(Box one, @Nullable Box other) {
    return other != null && one.x() == other.x() && one.equals(other);
  }

  /** A leader may start inside its own mark, but not run through somebody else's label. */
  private static boolean passesThrough(Stroke leader, Box box) {
    boolean own =
        box.x() <= leader.x1()
            && leader.x1() <= box.right()
            && box.y() <= leader.y1()
            && leader.y1() <= box.bottom();
    return !own && box.crossedBy(leader);
  }
}
