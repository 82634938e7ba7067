package daylight.report.draw;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Finds room for labels, one after the other, the most important first. Each goes to the cheapest
 * of a fixed fan of spots around its anchor: near is cheap, covering a drawn stroke is dear,
 * touching another label, a mark, a leader or a wall is out of the question. The same calls give
 * the same spots.
 */
final class Labeller {
  private static final double[] REACHES = {0, 5, 12, 22, 34, 48, 64, 84, 108, 136};

  /** How far what must have its words goes for them, past marks that a leader else goes around. */
  private static final double[] FAR = {22, 34, 48, 64, 84, 108, 136, 170, 210, 260, 320, 400};

  private static final int DIRECTIONS = 16;

  /** What a label keeps free about itself, points. */
  static final double GAP = 1.5;

  /**
   * What a label keeps free to either side of another on its line, so that they are not read on.
   */
  private static final double WORD_GAP = 4;

  /** What a label keeps free between itself and the middle of a wall, points. */
  private static final double WALL_GAP = 3;

  private static final double LEADER_FROM = 4;
  private static final double PER_STROKE = 14;

  private final Box frame;
  private final Nearby<Box> taken;
  private final Nearby<Box> labels;
  private final Nearby<Stroke> strokes;
  private final Nearby<Stroke> walls;
  private final Nearby<Stroke> leaders;

  Labeller(Box frame) {
    this(
        frame,
        new Nearby<>(frame),
        new Nearby<>(frame),
        new Nearby<>(frame),
        new Nearby<>(frame),
        new Nearby<>(frame));
  }

  private Labeller(
      Box frame,
      Nearby<Box> taken,
      Nearby<Box> labels,
      Nearby<Stroke> strokes,
      Nearby<Stroke> walls,
      Nearby<Stroke> leaders) {
    this.frame = frame;
    this.taken = taken;
    this.labels = labels;
    this.strokes = strokes;
    this.walls = walls;
    this.leaders = leaders;
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
    return new Labeller(frame, taken.copy(), labels.copy(), strokes, walls, leaders.copy());
  }

  /** No label goes here. */
  void keepClear(Box box) {
    taken.add(box, box);
  }

  /** No label covers this without need. */
  void avoid(Stroke stroke) {
    strokes.add(stroke.bounds(), stroke);
  }

  /** No label covers this at all; leaders may cross it. */
  void wall(Stroke stroke) {
    walls.add(stroke.bounds(), stroke);
    avoid(stroke);
  }

  /**
   * Takes room for a label.
   *
   * @param clearance of the mark at the anchor
   * @return empty when there is none
   */
  Optional<Spot> place(double x, double y, double clearance, double width, double height) {
    return place(x, y, clearance, width, height, null, Double.POSITIVE_INFINITY);
  }

  /**
   * The same.
   *
   * @param own room that was kept clear for this label; null for none
   * @param furthest from the anchor, points
   */
  Optional<Spot> place(
      double x,
      double y,
      double clearance,
      double width,
      double height,
      @Nullable Box own,
      double furthest) {
    return place(x, y, clearance, width, height, own, furthest, false);
  }

  /** The same for what must have its words: its leader may run over marks, as nothing else may. */
  Optional<Spot> placeOverMarks(double x, double y, double clearance, double width, double height) {
    return place(x, y, clearance, width, height, null, Double.POSITIVE_INFINITY, true);
  }

  private Optional<Spot> place(
      double x,
      double y,
      double clearance,
      double width,
      double height,
      @Nullable Box own,
      double furthest,
      boolean over) {
    Spot best = null;
    double least = Double.POSITIVE_INFINITY;
    for (double reach : over ? FAR : REACHES) {
      if (reach >= least || reach > furthest) {
        break;
      }
      for (int direction = 0; direction < DIRECTIONS; direction++) {
        Spot spot = spot(x, y, clearance + GAP + reach, direction, width, height, reach);
        double near = reach + (direction == 0 ? 0 : 0.5);
        if (near >= least || !frame.holds(spot.box())) {
          continue;
        }
        double cost = near + cost(spot);
        if (cost < least && free(spot, own, over)) {
          least = cost;
          best = new Spot(spot.box(), spot.leader(), cost);
        }
      }
    }
    if (best != null) {
      keepClear(best.box());
      labels.add(best.box(), best.box());
      if (best.leader() != null) {
        leaders.add(best.leader().bounds(), best.leader());
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
    Box box = spot.box();
    double cost = PER_STROKE * strokes.count(box, box::crossedBy);
    Stroke leader = spot.leader();
    return leader == null
        ? cost
        : cost + PER_STROKE / 4 * strokes.count(leader.bounds(), leader::crosses);
  }

  private boolean free(Spot spot, @Nullable Box own, boolean over) {
    Box room = spot.box().grown(GAP);
    Box off = spot.box().grown(WALL_GAP);
    Box box = spot.box();
    Box line = new Box(box.x() - WORD_GAP, box.y(), box.width() + 2 * WORD_GAP, box.height());
    if (taken.any(room, mark -> room.overlaps(mark) && !same(mark, own))
        || labels.any(line, line::overlaps)
        || leaders.any(room, room::crossedBy)
        || walls.any(off, off::crossedBy)) {
      return false;
    }
    Stroke leader = spot.leader();
    return leader == null
        || ((over
                || !taken.any(
                    leader.bounds(), mark -> passesThrough(leader, mark) && !same(mark, own)))
            && !leaders.any(leader.bounds(), leader::crosses));
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
