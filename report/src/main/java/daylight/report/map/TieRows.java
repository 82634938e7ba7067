package daylight.report.map;

import daylight.line.book.Priors;
import daylight.line.book.Tie;
import daylight.line.book.Visit;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import daylight.line.survey.PlanPoint;
import java.util.ArrayList;
import java.util.List;

/** Tapes, and so far along and so far out, of every visit: what a crew can walk again. */
final class TieRows {
  private final Making making;

  TieRows(Making making) {
    this.making = making;
  }

  List<Row> all() {
    List<Row> rows = new ArrayList<>();
    for (Visit visit : making.subject().book().visits()) {
      for (Tie tie : visit.ties()) {
        switch (tie) {
          case Tie.Tape tape -> rows.add(tape(visit, tape));
          case Tie.AlongOut along -> rows.add(alongOut(visit, along));
          // These are turned or fixed, not walked; the spots that come of them are there.
          case Tie.Bearing _,
              Tie.Angle _,
              Tie.Direction _,
              Tie.Gnss _,
              Tie.Sketched _,
              Tie.Side _ -> {}
        }
      }
    }
    return rows;
  }

  private Row tape(Visit visit, Tie.Tape tape) {
    Filling row =
        row(visit, tape, "tape")
            .text("from_point", tape.from())
            .text("to_point", tape.to())
            .measured("length", measured(Priors.Kind.TAPE, tape.length()));
    PlanPoint from = making.points().get(tape.from());
    PlanPoint to = making.points().get(tape.to());
    return from == null || to == null ? open(row) : way(row, List.of(from, to));
  }

  private Row alongOut(Visit visit, Tie.AlongOut tie) {
    Filling row =
        row(visit, tie, "along_out")
            .text("from_point", tie.zero())
            .text("toward_point", tie.toward())
            .text("to_point", tie.point())
            .measured("along", measured(Priors.Kind.ALONG, tie.along()))
            .measured("out", measured(Priors.Kind.OUT, tie.out()));
    PlanPoint zero = making.points().get(tie.zero());
    PlanPoint toward = making.points().get(tie.toward());
    PlanPoint to = making.points().get(tie.point());
    if (zero == null || toward == null || to == null) {
      return open(row);
    }
    double bearing = zero.bearingTo(toward);
    PlanPoint foot =
        new PlanPoint(
            zero.x() + tie.along().value() * StrictMath.sin(bearing),
            zero.y() + tie.along().value() * StrictMath.cos(bearing));
    return way(row, List.of(zero, foot, to));
  }

  private Filling row(Visit visit, Tie tie, String kind) {
    return making
        .row(Layer.TIE, tie.label(), null)
        .text("uuid", tie.id().uuid().toString())
        .text("visit", visit.label())
        .text("kind", kind);
  }

  private Row open(Filling row) {
    return row.text("missing", making.say("map.missing.spot")).done();
  }

  private static Row way(Filling row, List<PlanPoint> points) {
    return row.shape(Shape.Way.flat(points)).done();
  }

  /** With the uncertainty it was read with, or what such a reading usually has. */
  private Measured measured(Priors.Kind kind, Reading reading) {
    return new Measured(reading.value(), making.subject().rules().priors().sd(kind, reading));
  }
}
