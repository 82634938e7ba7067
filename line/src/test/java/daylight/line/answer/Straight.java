package daylight.line.answer;

import daylight.line.book.FieldBook;
import daylight.line.book.Level;
import daylight.line.book.Material;
import daylight.line.book.Node;
import daylight.line.book.Pass;
import daylight.line.book.Reach;
import daylight.line.counter.Tracks;
import daylight.line.course.Draft;
import daylight.line.course.Estimator;
import daylight.line.course.Line;
import daylight.line.course.Push;
import daylight.line.course.TestPriors;
import java.util.function.Consumer;

/** A straight pipe beside a wall, and what is answered of it. */
final class Straight {
  static final double LENGTH = 20;

  private Straight() {}

  static Push push() {
    return new Push("P1", "N1", "R1")
        .end(LENGTH, Pass.Why.OUTLET_REACHED, "N2")
        .sight(0, LENGTH, Pass.Clarity.CLEAR);
  }

  /**
   * A pipe straight out from the wall, 1 m deep at N1, whose inverts were levelled at both ends.
   */
  static FieldBook book(Push push, double drop, Consumer<Draft> more) {
    Draft draft = bare(push, Draft.pipe("R1", "N1", "N2", "main", Material.PVC, 0.1));
    for (double at : new double[] {2, 8, 14, 19}) {
      String label = "L" + (int) at;
      draft.locate(label, "P1", at, 1 + drop * at / LENGTH).along(label, 3, 2 + at);
    }
    draft.height("N1", Level.Part.INVERT, 99).height("N2", Level.Part.INVERT, 99 - drop);
    more.accept(draft);
    return draft.book();
  }

  static Draft bare(Push push, Reach reach) {
    return new Draft()
        .landmark("A", true)
        .landmark("B", true)
        .tape("A", "B", 10)
        .node("N1", Node.Kind.ACCESS)
        .node("N2", Node.Kind.OUTLET)
        .kit(0.0, 0.0)
        .reach(reach)
        .pass(push);
  }

  static FieldBook book(Push push) {
    return book(push, 0.5, draft -> {});
  }

  static Line line(FieldBook book) {
    return Estimator.estimate(book, Tracks.NONE, TestPriors.shipped());
  }

  static Answers judge(FieldBook book) {
    return Judge.judge(book, line(book), TestRules.rules());
  }

  static Answer answer(FieldBook book, Question question) {
    return judge(book).lines().getFirst().to(question);
  }
}
