package daylight.report.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * Things by where they lie on the sheet, in square cells, so that who asks for those near a box
 * need not look at all of them. What lies beyond the frame is kept in the cells at its edge.
 */
final class Nearby<T> {
  private static final double CELL = 24;

  private final Box frame;
  private final int columns;
  private final int rows;
  private final List<@Nullable List<Kept<T>>> cells;

  /** A thing with the first of the cells that it lies in. */
  private record Kept<T>(T thing, int column, int row) {}

  /** Cells, both ends counted. */
  private record Span(int left, int top, int right, int bottom) {}

  Nearby(Box frame) {
    this.frame = frame;
    this.columns = Math.max(1, (int) Math.ceil(frame.width() / CELL));
    this.rows = Math.max(1, (int) Math.ceil(frame.height() / CELL));
    this.cells = new ArrayList<>();
    for (int i = 0; i < columns * rows; i++) {
      cells.add(null);
    }
  }

  Nearby<T> copy() {
    Nearby<T> copy = new Nearby<>(frame);
    for (int i = 0; i < cells.size(); i++) {
      List<Kept<T>> cell = cells.get(i);
      copy.cells.set(i, cell == null ? null : new ArrayList<>(cell));
    }
    return copy;
  }

  /** Keeps a thing that lies within bounds. */
  void add(Box bounds, T thing) {
    Span span = span(bounds);
    Kept<T> kept = new Kept<>(thing, span.left(), span.top());
    for (int row = span.top(); row <= span.bottom(); row++) {
      for (int column = span.left(); column <= span.right(); column++) {
        List<Kept<T>> cell = cells.get(row * columns + column);
        if (cell == null) {
          cell = new ArrayList<>();
          cells.set(row * columns + column, cell);
        }
        cell.add(kept);
      }
    }
  }

  /** Whether one of those near a box is such. */
  boolean any(Box bounds, Predicate<T> such) {
    return count(bounds, such, 1) > 0;
  }

  /** How many of those near a box are such. */
  int count(Box bounds, Predicate<T> such) {
    return count(bounds, such, Integer.MAX_VALUE);
  }

  private int count(Box bounds, Predicate<T> such, int enough) {
    Span span = span(bounds);
    int count = 0;
    for (int row = span.top(); row <= span.bottom(); row++) {
      for (int column = span.left(); column <= span.right(); column++) {
        List<Kept<T>> cell = cells.get(row * columns + column);
        if (cell == null) {
          continue;
        }
        for (Kept<T> kept : cell) {
          // What lies in several of these cells is looked at in the first of them.
          boolean first =
              column == Math.max(kept.column(), span.left())
                  && row == Math.max(kept.row(), span.top());
          if (first && such.test(kept.thing()) && ++count >= enough) {
            return count;
          }
        }
      }
    }
    return count;
  }

  private Span span(Box bounds) {
    return new Span(
        cell(bounds.x() - frame.x(), columns),
        cell(bounds.y() - frame.y(), rows),
        cell(bounds.right() - frame.x(), columns),
        cell(bounds.bottom() - frame.y(), rows));
  }

  private static int cell(double along, int cells) {
    return Math.clamp((int) Math.floor(along / CELL), 0, cells - 1);
  }
}
