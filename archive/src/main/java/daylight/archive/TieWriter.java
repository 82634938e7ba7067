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
    Sheet sheet =
        new Sheet(BookShape.GNSS, units)
            .words("latitude", Amount.plain(gnss.latitude()))
            .words("longitude", Amount.plain(gnss.longitude()));
    Tie.Spread spread = gnss.spread();
    if (spread != null && spread.equals(Tie.Spread.round(spread.east()))) {
      sheet.reading("sd", metres(spread.east()));
    } else if (spread != null) {
      sheet
          .reading("sd-east", metres(spread.east()))
          .reading("sd-north", metres(spread.north()))
          .words("correlation", Amount.plain(spread.correlation()));
    }
    Tie.Shared shared = gnss.shared();
    return shared == null
        ? sheet
        : sheet.words("set", shared.set()).reading("sd-shared", metres(shared.sd()));
  }

  private static Reading metres(double value) {
    return new Reading(value, null, Amount.plain(value) + " m");
  }
}
