package daylight.report.exchange;

import daylight.line.survey.PlanPoint;
import java.util.ArrayList;
import java.util.List;

/**
 * What is written on a drawing, so that no text lies on another, nor on the drain. Each stands to
 * the right of its thing; where the room is taken, as many rows higher or lower as it needs, with a
 * line that leads to it. Nobody knows which typeface a drawing is opened with: a letter is taken
 * for nearly as wide as it is high. Distances are metres on the ground.
 */
final class Lettering {
  private static final double WIDE = 0.9;
  private static final double ROW = 1.5;
  private static final double RIGHT = 1;
  private static final double UP = 0.6;

  /** So much around a point, in heights of a letter, is left to it. */
  private static final double SEEN = 0.5;

  /** From so many rows off it is no longer plain what a text belongs to. */
  private static final int NEAR = 1;

  private final double letters;
  private final List<PlanPoint> free = new ArrayList<>();
  private final List<Placed> placed = new ArrayList<>();

  /**
   * @param thing what it is written beside
   * @param at the lower left of the text
   * @param led whether a line leads from one to the other
   */
  record Placed(String layer, PlanPoint thing, PlanPoint at, String text, boolean led) {}

  /**
   * @param letters how high they are
   */
  Lettering(double letters) {
    this.letters = letters;
  }

  /** What is placed from now on leaves this point to be seen. */
  void leave(PlanPoint point) {
    free.add(point);
  }

  /** Places a text beside a thing; what was placed before stays. */
  void add(String layer, PlanPoint thing, String text) {
    int row = 0;
    PlanPoint at = at(thing, row);
    while (taken(at, text)) {
      // One up, one down, two up, two down: of finitely many texts one row is free.
      row = row > 0 ? -row : 1 - row;
      at = at(thing, row);
    }
    placed.add(new Placed(layer, thing, at, text, Math.abs(row) > NEAR));
  }

  /** All of them, in the order in which they were placed. */
  List<Placed> placed() {
    return List.copyOf(placed);
  }

  /** The lowest line that anything stands on; that given where all stand higher. */
  double lowest(double ground) {
    return placed.stream().mapToDouble(one -> one.at().y()).reduce(ground, Math::min);
  }

  /** How wide a text is taken to be. */
  double width(String text) {
    return WIDE * letters * text.length();
  }

  private PlanPoint at(PlanPoint thing, int row) {
    return new PlanPoint(
        thing.x() + RIGHT * letters, thing.y() + UP * letters + row * ROW * letters);
  }

  private boolean taken(PlanPoint at, String text) {
    for (PlanPoint point : free) {
      boolean within = point.x() > at.x() - SEEN * letters && point.x() < at.x() + width(text);
      if (within
          && point.y() > at.y() - SEEN * letters
          && point.y() < at.y() + (1 + SEEN) * letters) {
        return true;
      }
    }
    for (Placed one : placed) {
      boolean beside =
          at.x() >= one.at().x() + width(one.text()) || one.at().x() >= at.x() + width(text);
      if (!beside && Math.abs(at.y() - one.at().y()) < ROW * letters * (1 - 1e-9)) {
        return true;
      }
    }
    return false;
  }
}
