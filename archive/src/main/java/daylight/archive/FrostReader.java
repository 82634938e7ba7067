package daylight.archive;

import daylight.archive.form.Fields;
import daylight.archive.form.FormTrouble;
import daylight.archive.form.Section;
import daylight.archive.form.Shape;
import daylight.line.book.BookFault;
import daylight.line.frost.FrostTables;
import daylight.line.frost.Ground;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Mark;
import daylight.line.measure.Measured;
import daylight.line.measure.Parsed;
import daylight.line.measure.Quantities;
import daylight.line.measure.Reading;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Reads the tables that frost is worked out with, row by row. */
final class FrostReader {
  static final String KEY = "daylight-frost";
  private static final int MONTHS = 12;

  private static final Section SOIL =
      cited("soil")
          .words("id")
          .texts("names")
          .oneOf("grain", Ground.Grain.class)
          .amount("dry-density", Dimension.DENSITY)
          .amount("density-give-or-take", Dimension.DENSITY)
          .amount("water", Dimension.SHARE)
          .amount("water-give-or-take", Dimension.SHARE);
  private static final Section SURFACE =
      cited("surface")
          .words("id")
          .texts("names")
          .amount("factor", Dimension.SHARE)
          .amount("give-or-take", Dimension.SHARE);
  private static final Section SNOW =
      cited("snow")
          .amount("conductivity", Dimension.CONDUCTIVITY)
          .amount("give-or-take", Dimension.CONDUCTIVITY);
  private static final Section FORMULA =
      cited("formula").amount("factor", Dimension.SHARE).amount("give-or-take", Dimension.SHARE);
  private static final Section CLIMATE =
      cited("climate")
          .words("id", "place")
          .with("months", new Shape.Rows(new Shape.Plain(Shape.Kind.WORDS)));
  static final Section FROST =
      Section.named("frost")
          .words(KEY)
          .rows("soils", SOIL)
          .rows("surfaces", SURFACE)
          .part("snow", SNOW)
          .part("formula", FORMULA)
          .rows("climates", CLIMATE);

  private FrostReader() {}

  private static Section cited(String name) {
    return Section.named(name).words("source").oneOf("mark", Mark.class).words("note");
  }

  /** The tables; null when a row is wrong or one is missing that must be there. */
  static @Nullable FrostTables read(Fields fields) {
    List<FrostTables.Soil> soils = rows(fields, "soils", FrostReader::soil, FrostTables.Soil::id);
    List<FrostTables.Cover> surfaces =
        rows(fields, "surfaces", FrostReader::surface, FrostTables.Cover::id);
    List<FrostTables.Climate> climates =
        rows(fields, "climates", FrostReader::climate, FrostTables.Climate::id);
    FrostTables.Row snow = row(fields, "snow", "conductivity");
    FrostTables.Row formula = row(fields, "formula", "factor");
    for (String id : List.of(FrostTables.UNKNOWN, FrostTables.SNOW)) {
      if (fields.sound() && surfaces.stream().noneMatch(one -> one.id().equals(id))) {
        fields.complain(FormTrouble.MISSING, "surfaces", new Argument.Text(id));
      }
    }
    return fields.sound() && snow != null && formula != null
        ? new FrostTables(soils, surfaces, snow, climates, formula)
        : null;
  }

  private static <T> List<T> rows(
      Fields fields, String key, Function<Fields, @Nullable T> reader, Function<T, String> id) {
    List<T> rows = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    for (Fields row : fields.rows(key)) {
      @Nullable T read = reader.apply(row);
      if (read == null) {
        fields.spoil();
      } else if (ids.add(id.apply(read))) {
        rows.add(read);
      } else {
        row.complain(BookFault.DUPLICATE_LABEL, "id", new Argument.Label(id.apply(read)));
        fields.spoil();
      }
    }
    return rows;
  }

  private static FrostTables.@Nullable Soil soil(Fields row) {
    String id = row.wantedWords("id");
    Ground.Grain grain = row.wantedChoice("grain", Ground.Grain.class);
    Measured density = measured(row, "dry-density", "density-give-or-take");
    Measured water = measured(row, "water", "water-give-or-take");
    FrostTables.Cited cited = citedOf(row);
    return row.sound()
        ? new FrostTables.Soil(id, row.texts("names"), grain, density, water, cited)
        : null;
  }

  private static FrostTables.@Nullable Cover surface(Fields row) {
    String id = row.wantedWords("id");
    Measured factor = measured(row, "factor", "give-or-take");
    FrostTables.Cited cited = citedOf(row);
    return row.sound() ? new FrostTables.Cover(id, row.texts("names"), factor, cited) : null;
  }

  private static FrostTables.@Nullable Row row(Fields fields, String key, String value) {
    Fields part = fields.part(key);
    if (part == null) {
      if (!fields.has(key)) {
        fields.complain(FormTrouble.MISSING, key, new Argument.Text(key));
      }
      return null;
    }
    Measured measured = measured(part, value, "give-or-take");
    FrostTables.Cited cited = citedOf(part);
    if (!part.sound()) {
      fields.spoil();
    }
    return part.sound() ? new FrostTables.Row(measured, cited) : null;
  }

  private static FrostTables.@Nullable Climate climate(Fields row) {
    String id = row.wantedWords("id");
    String place = row.wantedWords("place");
    List<Double> months = new ArrayList<>();
    for (String text : row.texts("months")) {
      switch (Quantities.temperature(text)) {
        case Parsed.Value<Reading>(Reading reading) -> months.add(reading.value());
        case Parsed.Refused<Reading>(var reason, var near) ->
            row.complain(
                FormTrouble.NOT_A_QUANTITY,
                "months",
                new Argument.Text(text),
                new Argument.Term("dimension.temperature"),
                new Argument.Reason(reason),
                new Argument.Choices(near));
      }
    }
    FrostTables.Cited cited = citedOf(row);
    if (row.sound() && months.size() != MONTHS) {
      row.complain(FileTrouble.TWELVE_MONTHS, "months", new Argument.Count(months.size()));
    }
    return row.sound() ? new FrostTables.Climate(id, place, months, cited) : null;
  }

  private static FrostTables.Cited citedOf(Fields row) {
    return new FrostTables.Cited(
        row.wantedWords("source"), row.wantedChoice("mark", Mark.class), row.words("note"));
  }

  /** A value with half of its 95 % interval; both positive. */
  private static Measured measured(Fields row, String key, String giveOrTake) {
    return new Measured(positive(row, key), positive(row, giveOrTake) / Measured.Z95);
  }

  private static double positive(Fields row, String key) {
    Reading reading = row.wantedReading(key);
    if (!(reading.value() > 0)) {
      if (row.has(key) && row.sound()) {
        row.complain(FormTrouble.NOT_POSITIVE, key, new Argument.Text(reading.written()));
      }
      return 1;
    }
    return reading.value();
  }
}
