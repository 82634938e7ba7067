package daylight.archive;

import daylight.archive.form.Fields;
import daylight.line.book.Surroundings;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads what a line has to live with: climate, soil, roofs, fixtures and pumps. */
final class SurroundingsReader {
  private final Clerk clerk;

  SurroundingsReader(Clerk clerk) {
    this.clerk = clerk;
  }

  Surroundings read(Fields part) {
    List<Surroundings.Roof> roofs = new ArrayList<>();
    part.rows("roofs").forEach(row -> clerk.keep(roofs, row, roof(row)));
    List<Surroundings.Fixture> fixtures = new ArrayList<>();
    part.rows("fixtures").forEach(row -> clerk.keep(fixtures, row, fixture(row)));
    List<Surroundings.Pump> pumps = new ArrayList<>();
    part.rows("pumps").forEach(row -> clerk.keep(pumps, row, pump(row)));
    return new Surroundings(
        climate(part.part("climate")), soil(part.part("soil")), roofs, fixtures, pumps);
  }

  private static Surroundings.@Nullable Climate climate(@Nullable Fields part) {
    if (part == null) {
      return null;
    }
    return new Surroundings.Climate(
        part.reading("freezing-index"),
        part.reading("mean-temperature"),
        part.reading("season"),
        part.reading("rain"),
        part.reading("snow"),
        part.words("source"));
  }

  private static Surroundings.@Nullable Soil soil(@Nullable Fields part) {
    if (part == null) {
      return null;
    }
    Surroundings.Soil soil =
        new Surroundings.Soil(
            part.wantedWords("kind"), part.reading("water"), part.words("surface"));
    return part.sound() ? soil : null;
  }

  private Surroundings.Roof roof(Fields row) {
    return new Surroundings.Roof(
        clerk.name(row, "roof", "roof-"), row.wantedWords("node"), row.wantedReading("area"));
  }

  private Surroundings.Fixture fixture(Fields row) {
    return new Surroundings.Fixture(
        clerk.name(row, "fixture", "fixture-"),
        row.wantedWords("node"),
        row.wantedWords("kind"),
        row.reading("flow"));
  }

  private Surroundings.Pump pump(Fields row) {
    List<Surroundings.CurvePoint> curve = new ArrayList<>();
    for (Fields point : row.rows("curve")) {
      Surroundings.CurvePoint read =
          new Surroundings.CurvePoint(point.wantedReading("flow"), point.wantedReading("head"));
      if (point.sound()) {
        curve.add(read);
      } else {
        row.spoil();
      }
    }
    return new Surroundings.Pump(
        clerk.name(row, "pump", "pump-"),
        row.wantedWords("node"),
        curve,
        row.reading("area"),
        row.reading("start"),
        row.reading("stop"),
        row.reading("lift"),
        row.texts("fittings"));
  }
}
