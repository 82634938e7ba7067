package daylight.archive;

import daylight.archive.form.Section;
import daylight.line.book.Boundary;
import daylight.line.book.Entry;
import daylight.line.book.Landmark;
import daylight.line.book.Node;
import daylight.line.book.Reach;
import daylight.line.book.Site;
import daylight.line.book.Surroundings;
import daylight.line.book.Units;

/** Writes a site and what its lines have to live with. */
final class SiteWriter {
  private final Units units;

  SiteWriter(Units units) {
    this.units = units;
  }

  private Sheet entry(Section section, Entry entry) {
    return Sheet.of(section, entry.id(), units);
  }

  private Sheet sheet(Section section) {
    return new Sheet(section, units);
  }

  Sheet site(Site site) {
    Sheet sheet =
        entry(BookShape.SITE, site)
            .words("name", site.name())
            .words("address", site.address())
            .words("zone", site.zone().getId())
            .mark("invented", site.invented())
            .rows("landmarks", site.landmarks(), this::landmark)
            .rows("boundaries", site.boundaries(), this::boundary)
            .rows("nodes", site.nodes(), this::node)
            .rows("reaches", site.reaches(), this::reach);
    Surroundings around = site.surroundings();
    return around.equals(Surroundings.UNRECORDED)
        ? sheet
        : sheet.part("surroundings", surroundings(around));
  }

  private Sheet landmark(Landmark landmark) {
    return entry(BookShape.LANDMARK, landmark)
        .words("what", landmark.what())
        .choice("kind", landmark.kind())
        .mark("base", landmark.base());
  }

  private Sheet boundary(Boundary boundary) {
    return entry(BookShape.BOUNDARY, boundary)
        .choice("kind", boundary.kind())
        .texts("points", boundary.points())
        .words("left", boundary.left())
        .words("right", boundary.right());
  }

  private Sheet node(Node node) {
    return entry(BookShape.NODE, node).choice("kind", node.kind()).words("what", node.what());
  }

  private Sheet reach(Reach reach) {
    Sheet sheet =
        entry(BookShape.REACH, reach)
            .words("line", reach.line())
            .words("from", reach.from())
            .words("to", reach.to());
    switch (reach.water()) {
      case Reach.Water.Forward() -> sheet.choice("water", BookShape.Flows.FORWARD);
      case Reach.Water.Backward() -> sheet.choice("water", BookShape.Flows.BACKWARD);
      case Reach.Water.Unknown(String reason) ->
          sheet.part("water", sheet(BookShape.UNKNOWN).words("unknown", reason));
    }
    return sheet
        .choice("use", reach.use())
        .choice("material", reach.material())
        .reading("bore", reach.bore())
        .reading("length", reach.length());
  }

  private Sheet surroundings(Surroundings around) {
    Sheet sheet = sheet(AroundShape.SURROUNDINGS);
    Surroundings.Climate climate = around.climate();
    if (climate != null) {
      sheet.part(
          "climate",
          sheet(AroundShape.CLIMATE)
              .reading("freezing-index", climate.freezingIndex())
              .reading("mean-temperature", climate.meanTemperature())
              .reading("season", climate.season())
              .reading("rain", climate.rain())
              .reading("snow", climate.snow())
              .words("source", climate.source()));
    }
    Surroundings.Soil soil = around.soil();
    if (soil != null) {
      sheet.part(
          "soil",
          sheet(AroundShape.SOIL)
              .words("kind", soil.kind())
              .reading("water", soil.water())
              .words("surface", soil.surface()));
    }
    return sheet
        .rows("roofs", around.roofs(), this::roof)
        .rows("fixtures", around.fixtures(), this::fixture)
        .rows("pumps", around.pumps(), this::pump);
  }

  private Sheet roof(Surroundings.Roof roof) {
    return entry(AroundShape.ROOF, roof).words("node", roof.node()).reading("area", roof.area());
  }

  private Sheet fixture(Surroundings.Fixture fixture) {
    return entry(AroundShape.FIXTURE, fixture)
        .words("node", fixture.node())
        .words("kind", fixture.kind())
        .reading("flow", fixture.flow());
  }

  private Sheet pump(Surroundings.Pump pump) {
    return entry(AroundShape.PUMP, pump)
        .words("node", pump.node())
        .rows(
            "curve",
            pump.curve(),
            point ->
                sheet(AroundShape.CURVE_POINT)
                    .reading("flow", point.flow())
                    .reading("head", point.head()))
        .reading("area", pump.area())
        .reading("start", pump.start())
        .reading("stop", pump.stop())
        .reading("lift", pump.lift())
        .texts("fittings", pump.fittings());
  }
}
