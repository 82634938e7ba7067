package daylight.line.flow;

import daylight.line.measure.Filled;
import java.util.ArrayList;
import java.util.List;

/**
 * How high water stands in and above a tree of pipes that carries a steady flow, from the outlet
 * up. Where more comes than a pipe carries when full, it runs under pressure: its head falls by
 * friction alone, and what is above the pipe's own fall adds up upstream. Friction of the full
 * section, no losses at junctions; where the surface is free, uniform flow. Heights in metres.
 */
public final class Backwater {
  /** The outlet of {@link Piece#below}. */
  public static final int OUT = -1;

  private Backwater() {}

  /**
   * A short piece of pipe; pieces follow each other upstream.
   *
   * @param top inside bottom at its upper end
   * @param bottom inside bottom at its lower end
   * @param length along the pipe
   * @param bore inside diameter
   * @param roughness by which law, and its figure
   * @param flow through it, cubic metres per second
   * @param below the piece it runs into, by its place in the list: an earlier one; {@link #OUT} for
   *     the outlet
   */
  public record Piece(
      double top,
      double bottom,
      double length,
      double bore,
      Roughness roughness,
      double flow,
      int below) {
    /** The top of the pipe at its upper end. */
    public double crown() {
      return top + bore;
    }
  }

  /**
   * The water at the upper end of a piece.
   *
   * @param head height to which the water would rise in a riser there
   * @param aboveCrown how much that is above the top of the pipe; 0 or less where it runs with a
   *     free surface
   */
  public record Level(double head, double aboveCrown) {}

  /**
   * The water at the upper end of each piece.
   *
   * @param pieces what is downstream comes first
   * @param outlet height of the water into which the outlet lets out; anything lower than the pipe
   *     there where it falls free
   */
  public static List<Level> of(List<Piece> pieces, double outlet, double viscosity) {
    List<Level> levels = new ArrayList<>();
    for (Piece piece : pieces) {
      if (piece.below() >= levels.size()) {
        throw new IllegalArgumentException("a piece runs into one that comes later: " + piece);
      }
      double below = piece.below() == OUT ? outlet : levels.get(piece.below()).head();
      double head = head(piece, below, viscosity);
      levels.add(new Level(head, head - piece.crown()));
    }
    return levels;
  }

  private static double head(Piece piece, double below, double viscosity) {
    if (!(piece.flow() > 0)) {
      return Math.max(below, piece.top());
    }
    double speed = piece.flow() / Filled.full(piece.bore()).area();
    Roughness wall = piece.roughness();
    double friction = wall.law().slope(wall.figure().value(), speed, piece.bore() / 4, viscosity);
    double slope = (piece.top() - piece.bottom()) / piece.length();
    if (friction > slope) {
      // The pipe cannot carry it with a free surface: it is full from its lower end on.
      double crown = piece.bottom() + piece.bore();
      return Math.max(below, crown) + friction * piece.length();
    }
    double free = piece.top() + uniform(piece, slope, viscosity);
    boolean drowned = below >= piece.bottom() + piece.bore();
    return drowned ? Math.max(free, below + friction * piece.length()) : Math.max(free, below);
  }

  private static double uniform(Piece piece, double slope, double viscosity) {
    double low = 0;
    double high = piece.bore();
    Roughness wall = piece.roughness();
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      Filled water = new Filled(piece.bore(), middle);
      double flow =
          water.area() * wall.law().speed(wall.figure().value(), slope, water.radius(), viscosity);
      if (flow < piece.flow()) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }
}
