package daylight.archive;

import daylight.line.book.Tie;
import daylight.line.book.Units;
import daylight.line.measure.Reading;
import java.util.List;

/** Writes measurements in plan. */
final class TieWriter {
  private final Units units;

  TieWriter(Units units) {
    this.units = units;
  }

  Sheet tie(Tie tie) {
    Sheet sheet = Sheet.of(BookShape.TIE, tie.id(), units);
    return switch (tie) {
      case Tie.Tape tape ->
          sheet.words("from", tape.from()).words("to", tape.to()).reading("tape", tape.length());
      case Tie.AlongOut along ->
          sheet
              .words("point", along.point())
              .tree(
                  "wall",
                  Sheet.items(List.of(Sheet.text(along.zero()), Sheet.text(along.toward()))))
              .reading("along", along.along())
              .reading("out", along.out());
      case Tie.Bearing bearing ->
          sheet
              .words("from", bearing.from())
              .words("to", bearing.to())
              .words("bearing", Amount.bearing(bearing.bearing()));
      case Tie.Angle angle ->
          sheet
              .words("at", angle.at())
              .words("from", angle.from())
              .words("to", angle.to())
              .reading("angle", angle.angle());
      case Tie.Direction direction ->
          sheet
              .words("set", direction.set())
              .words("from", direction.from())
              .words("to", direction.to())
              .reading("direction", direction.direction());
      case Tie.Gnss gnss -> sheet.words("point", gnss.point()).part("gnss", gnss(gnss));
      case Tie.Sketched sketched ->
          sheet
              .words("point", sketched.point())
              .part(
                  "sketch",
                  new Sheet(BookShape.SKETCH, units)
                      .reading("east", sketched.east())
                      .reading("north", sketched.north()));
      case Tie.Side side ->
          sheet
              .words("point", side.point())
              .part(
                  "side",
                  new Sheet(BookShape.SIDE, units)
                      .texts("of", List.of(side.from(), side.to()))
                      .choice("on", side.left() ? BookShape.Hand.LEFT : BookShape.Hand.RIGHT));
    };
  }

  private Sheet gnss(Tie.Gnss gnss) {
    Double sd = gnss.sd();
    return new Sheet(BookShape.GNSS, units)
        .words("latitude", Amount.plain(gnss.latitude()))
        .words("longitude", Amount.plain(gnss.longitude()))
        .reading("sd", sd == null ? null : new Reading(sd, null, Amount.plain(sd) + " m"));
  }
}
