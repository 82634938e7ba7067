package daylight.line.course;

import daylight.line.book.Bend;
import daylight.line.book.FieldBook;
import daylight.line.book.Node;
import daylight.line.book.Pass;
import daylight.line.counter.Tracks;
import java.util.function.Consumer;

/**
 * A small property without any error, for tests of behaviour: a straight pipe of 100 mm that runs
 * due west from N1, 2 m out from the wall and 3 m along it, to N2, 20 m further. Its invert lies 1
 * m deep and falls 2 %. The transmitter sits at the lens, so a locate at cable c is at 2 + c out.
 */
final class Flat {
  static final double LENGTH = 20;
  static final double ALONG = 3;
  static final double OUT = 2;

  private Flat() {}

  /** Landmarks, nodes and one reach. */
  static Draft ground() {
    return new Draft()
        .landmark("A", true)
        .landmark("B", true)
        .tape("A", "B", 10)
        .node("N1", Node.Kind.ACCESS)
        .node("N2", Node.Kind.OUTLET)
        .kit(0.0, 0.0);
  }

  /** A push from N1 to the end, seen clearly all the way. */
  static Push push() {
    return new Push("P1", "N1", "R1")
        .end(LENGTH, Pass.Why.OUTLET_REACHED, "N2")
        .sight(0, LENGTH, Pass.Clarity.CLEAR);
  }

  /** Depth of the invert at a distance. */
  static double depth(double at) {
    return 1 + 0.02 * at;
  }

  /** A locate right above the pipe that reads right. */
  static void locate(Draft draft, String label, double at) {
    draft.locate(label, "P1", at, depth(at)).along(label, ALONG, OUT + at);
  }

  /** The whole property with locates at these distances and whatever else is added. */
  static FieldBook book(Push push, Consumer<Draft> more, double... at) {
    Draft draft = ground().reach("R1", "N1", "N2").pass(push);
    for (int i = 0; i < at.length; i++) {
      locate(draft, "L" + (i + 1), at[i]);
    }
    more.accept(draft);
    return draft.book();
  }

  static FieldBook book(Push push, double... at) {
    return book(push, draft -> {}, at);
  }

  static Line line(FieldBook book) {
    return Estimator.estimate(book, Tracks.NONE, TestPriors.shipped());
  }

  static Station nearest(Line line, String reach, double distance) {
    return ((Run.Path.Found) line.findRun(reach).orElseThrow().path()).nearest(distance);
  }

  static Bend.Sense swapped(Bend.Sense sense) {
    return switch (sense) {
      case LEFT -> Bend.Sense.RIGHT;
      case RIGHT -> Bend.Sense.LEFT;
      case UP, DOWN, UNKNOWN -> sense;
    };
  }
}
