package daylight.report.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;

/**
 * What a plan shows of the ground: all of it, or only what lies in a box on the sheet.
 *
 * @param box null where everything is shown
 */
record Window(@Nullable Box box) {
  static final Window ALL = new Window(null);

  /** How far from the edge a sign is whole, points. */
  private static final double SIGN = Symbols.RADIUS;

  /** Whether a sign drawn about a point is shown whole. */
  boolean holds(Point at) {
    return box == null || box.holds(Box.around(at.x(), at.y(), SIGN));
  }

  /** The parts of a path that are shown, in order. */
  List<List<Point>> pieces(List<Point> path) {
    if (box == null) {
      return List.of(path);
    }
    List<List<Point>> pieces = new ArrayList<>();
    List<Point> piece = new ArrayList<>();
    for (int i = 1; i < path.size(); i++) {
      Stroke shown = clipped(box, path.get(i - 1), path.get(i));
      if (shown == null) {
        continue;
      }
      Point from = new Point(shown.x1(), shown.y1());
      if (piece.isEmpty() || !piece.getLast().equals(from)) {
        piece = new ArrayList<>(List.of(from));
        pieces.add(piece);
      }
      piece.add(new Point(shown.x2(), shown.y2()));
    }
    return pieces;
  }

  /** The stroke inside a box; null where it misses it (Liang and Barsky, from memory). */
  private static @Nullable Stroke clipped(Box box, Point a, Point b) {
    double dx = b.x() - a.x();
    double dy = b.y() - a.y();
    double[] p = {-dx, dx, -dy, dy};
    double[] q = {a.x() - box.x(), box.right() - a.x(), a.y() - box.y(), box.bottom() - a.y()};
    double enter = 0;
    double leave = 1;
    for (int i = 0; i < 4; i++) {
      if (p[i] < 0) {
        enter = Math.max(enter, q[i] / p[i]);
      } else if (p[i] > 0) {
        leave = Math.min(leave, q[i] / p[i]);
      } else if (q[i] < 0) {
        return null;
      }
    }
    if (enter >= leave) {
      return null;
    }
    Point from = enter == 0 ? a : new Point(a.x() + enter * dx, a.y() + enter * dy);
    Point to = leave == 1 ? b : new Point(a.x() + leave * dx, a.y() + leave * dy);
    return new Stroke(from.x(), from.y(), to.x(), to.y());
  }

  /** The part of an area that is shown, edge by edge (Sutherland and Hodgman, from memory). */
  List<Point> area(List<Point> corners) {
    if (box == null) {
      return corners;
    }
    Box b = box;
    List<Point> area = corners;
    area = cut(area, p -> p.x() - b.x());
    area = cut(area, p -> b.right() - p.x());
    area = cut(area, p -> p.y() - b.y());
    return cut(area, p -> b.bottom() - p.y());
  }

  private interface Edge {
    /** How far inside a point lies. */
    double inside(Point point);
  }

  private static List<Point> cut(List<Point> area, Edge edge) {
    BiFunction<Point, Point, Point> crossing =
        (a, b) -> {
          double t = edge.inside(a) / (edge.inside(a) - edge.inside(b));
          return new Point(a.x() + t * (b.x() - a.x()), a.y() + t * (b.y() - a.y()));
        };
    List<Point> kept = new ArrayList<>();
    for (int i = 0; i < area.size(); i++) {
      Point from = area.get(i);
      Point to = area.get((i + 1) % area.size());
      boolean fromIn = edge.inside(from) >= 0;
      boolean toIn = edge.inside(to) >= 0;
      if (fromIn) {
        kept.add(from);
      }
      if (fromIn != toIn) {
        kept.add(crossing.apply(from, to));
      }
    }
    return kept;
  }
}
