package daylight.line.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The observation equations of sightings between points that all have a position. */
final class PlaneEquations {
  private final Unknowns unknowns;
  private final Optional<LocalGrid> local;

  PlaneEquations(Unknowns unknowns, Optional<LocalGrid> local) {
    this.unknowns = unknowns;
    this.local = local;
  }

  List<Equation> of(List<Sighting> sightings) {
    var equations = new ArrayList<Equation>();
    sightings.forEach(sighting -> equations.addAll(of(sighting)));
    return equations;
  }

  private List<Equation> of(Sighting sighting) {
    return switch (sighting) {
      case Sighting.Tape(String e, String from, String to, double d, double sd) ->
          one(e, Quantity.DISTANCE, d, sd, PlaneModels.distance(spot(from), spot(to)));
      case Sighting.AlongOut s -> alongOut(s);
      case Sighting.Bearing(String e, String from, String to, double rad, double sd) ->
          one(e, Quantity.BEARING, rad, sd, PlaneModels.bearing(spot(from), spot(to)));
      case Sighting.Angle(String e, String at, String from, String to, double rad, double sd) ->
          one(e, Quantity.ANGLE, rad, sd, PlaneModels.angle(spot(at), spot(from), spot(to)));
      case Sighting.Direction(String e, String set, String from, String to, double r, double sd) ->
          one(
              e,
              Quantity.DIRECTION,
              r,
              sd,
              PlaneModels.direction(spot(from), spot(to), unknowns.orientation(set)));
      case Sighting.Sketched(String e, String point, double x, double y, double sd) ->
          List.of(
              new Equation(e, Quantity.X, x, sd, PlaneModels.coordinate(spot(point), true)),
              new Equation(e, Quantity.Y, y, sd, PlaneModels.coordinate(spot(point), false)));
      case Sighting.Offset s -> offset(s);
      case Sighting.Gnss s -> gnss(s);
      case Sighting.Fixed _, Sighting.Side _ -> List.of();
    };
  }

  private static List<Equation> one(
      String entry, Quantity quantity, double observed, double sd, Equation.Model model) {
    return List.of(new Equation(entry, quantity, observed, sd, model));
  }

  private List<Equation> alongOut(Sighting.AlongOut s) {
    Spot from = spot(s.wallFrom());
    Spot to = spot(s.wallTo());
    Spot point = spot(s.point());
    return List.of(
        new Equation(
            s.entry(), Quantity.ALONG, s.along(), s.sdAlong(), PlaneModels.along(from, to, point)),
        new Equation(
            s.entry(), Quantity.OUT, s.out(), s.sdOut(), PlaneModels.out(from, to, point)));
  }

  private List<Equation> gnss(Sighting.Gnss s) {
    PlanPoint fix = local.orElseThrow().local(s);
    Spot point = spot(s.point());
    Block block = Block.of(s.sdEast(), s.sdNorth(), s.corr());
    return List.of(
        new Equation(
            s.entry(), Quantity.EAST, fix.x(), block, 0, PlaneModels.east(point, unknowns.tie())),
        new Equation(
            s.entry(),
            Quantity.NORTH,
            fix.y(),
            block,
            1,
            PlaneModels.north(point, unknowns.tie())));
  }

  private List<Equation> offset(Sighting.Offset s) {
    Spot from = spot(s.from());
    Spot to = spot(s.to());
    return List.of(
        new Equation(s.entry(), Quantity.X, s.x(), s.sd(), PlaneModels.difference(from, to, true)),
        new Equation(
            s.entry(), Quantity.Y, s.y(), s.sd(), PlaneModels.difference(from, to, false)));
  }

  private Spot spot(String point) {
    return unknowns.spot(point);
  }
}
