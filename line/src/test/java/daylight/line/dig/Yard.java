package daylight.line.dig;

import daylight.line.book.Boundary;
import daylight.line.book.FieldBook;
import daylight.line.book.Landmark;
import daylight.line.book.Node;
import daylight.line.book.Papers;
import daylight.line.book.Pass;
import daylight.line.book.Place;
import daylight.line.book.Reach;
import daylight.line.book.Site;
import daylight.line.book.Visit;
import daylight.line.counter.Tracks;
import daylight.line.course.Draft;
import daylight.line.course.Estimator;
import daylight.line.course.Line;
import daylight.line.course.Push;
import daylight.line.course.TestPriors;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * An invented yard west of a wall from A to B, with a pipe straight out from it, its inside bottom
 * 1 m deep and more toward the far end.
 */
final class Yard {
  static final LocalDate DAY = LocalDate.of(2026, 4, 20);
  static final DigLimits LIMITS = DigLimits.usual(1.219, 1.524);
  static final double LENGTH = 20;

  private Yard() {}

  static FieldBook book(Consumer<Draft> more) {
    return book(1, more);
  }

  static FieldBook book(double deep, Consumer<Draft> more) {
    Draft draft =
        new Draft()
            .landmark("A", true)
            .landmark("B", true)
            .tape("A", "B", 10)
            .node("N1", Node.Kind.ACCESS)
            .node("N2", Node.Kind.OUTLET)
            .kit(0.0, 0.0)
            .reach("R1", "N1", "N2")
            .pass(
                new Push("P1", "N1", "R1")
                    .end(LENGTH, Pass.Why.OUTLET_REACHED, "N2")
                    .sight(0, LENGTH, Pass.Clarity.CLEAR)
                    .seen("roots", 9, Map.of()));
    for (double at : new double[] {2, 8, 14, 19}) {
      String label = "L" + (int) at;
      draft.locate(label, "P1", at, deep).along(label, 3, 2 + at);
    }
    more.accept(draft);
    return draft.book();
  }

  static Line line(FieldBook book) {
    return Estimator.estimate(book, Tracks.NONE, TestPriors.shipped());
  }

  static DigTarget target(FieldBook book, double at) {
    return (DigTarget) dig(book, new Place("R1", at));
  }

  static Dig dig(FieldBook book, Place place) {
    return Digger.target(book, line(book), TestPriors.shipped(), LIMITS, place, DAY);
  }

  /** A line on the ground between two landmarks that are so far along the wall and so far out. */
  static void fence(Draft draft, String label, Boundary.Kind kind, double[] from, double[] to) {
    for (int i = 0; i < 2; i++) {
      double[] at = i == 0 ? from : to;
      draft.landmark(label + (i + 1), false).along(label + (i + 1), at[0], at[1]);
    }
    draft.boundary(
        new Boundary(
            Draft.id("boundary", label),
            kind,
            List.of(label + "1", label + "2"),
            "ours",
            "theirs"));
  }

  /** The same book with papers in its one visit. */
  static FieldBook with(FieldBook book, Papers papers) {
    Visit v = book.visits().getFirst();
    Visit other =
        new Visit(
            v.id(),
            v.date(),
            v.crew(),
            v.complaint(),
            v.kit(),
            v.passes(),
            v.locates(),
            v.exposures(),
            v.ties(),
            v.levels(),
            v.tests(),
            v.works(),
            papers);
    return new FieldBook(book.id(), book.units(), book.site(), List.of(other));
  }

  static Papers papers(List<Papers.Ticket> tickets, List<Papers.ServiceMark> services) {
    return new Papers(List.of(), List.of(), tickets, services, List.of());
  }

  /** The same book with other landmarks and reaches. */
  static FieldBook with(FieldBook book, List<Landmark> landmarks, List<Reach> reaches) {
    Site s = book.site();
    return new FieldBook(
        book.id(),
        book.units(),
        new Site(
            s.id(),
            s.name(),
            s.address(),
            s.zone(),
            s.invented(),
            landmarks,
            s.boundaries(),
            s.nodes(),
            reaches,
            s.surroundings()),
        new ArrayList<>(book.visits()));
  }
}
