package daylight.archive;

import daylight.archive.form.Fields;
import daylight.archive.form.FormTrouble;
import daylight.archive.form.Section;
import daylight.archive.form.Shape;
import daylight.line.book.Material;
import daylight.line.flow.FlowTables;
import daylight.line.flow.FrictionLaw;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Mark;
import daylight.line.measure.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Reads figures of pipes: walls, fittings, sizes and surfaces, each row with its source. */
final class FlowTablesReader {
  static final String FLOW_KEY = "daylight-flow";

  private static final Section WALL =
      origin(
          range(Section.named("wall"))
              .oneOf("material", Material.class)
              .oneOf("state", FlowTables.State.class)
              .oneOf("law", FrictionLaw.class)
              .amount("height", Dimension.LENGTH)
              .amount("from-height", Dimension.LENGTH)
              .amount("to-height", Dimension.LENGTH));
  private static final Section FITTING = origin(range(Section.named("fitting").words("id")));
  private static final Section SURFACE = origin(range(Section.named("surface").words("id")));
  private static final Section BORE =
      origin(
          Section.named("pipe-size")
              .words("series")
              .amount("nominal", Dimension.LENGTH)
              .amount("inside", Dimension.LENGTH));

  static final Section FLOW =
      Section.named("flow")
          .words(FLOW_KEY)
          .rows("walls", WALL)
          .rows("fittings", FITTING)
          .rows("bores", BORE)
          .rows("surfaces", SURFACE);

  private FlowTablesReader() {}

  private static Section range(Section section) {
    Section all = section;
    for (String key : List.of("typical", "from", "to")) {
      all = all.plain(key, Shape.Kind.NUMBER);
    }
    return all;
  }

  private static Section origin(Section section) {
    return section.words("source").oneOf("mark", Mark.class).words("note");
  }

  /** The figures; null where something in them is wrong. */
  static @Nullable FlowTables read(Fields fields) {
    List<FlowTables.Wall> walls = rows(fields, "walls", FlowTablesReader::wall, "material");
    List<FlowTables.Fitting> fittings = rows(fields, "fittings", FlowTablesReader::fitting, "id");
    List<FlowTables.Bore> bores = rows(fields, "bores", FlowTablesReader::bore, "nominal");
    List<FlowTables.Surface> surfaces = rows(fields, "surfaces", FlowTablesReader::surface, "id");
    return fields.sound() ? new FlowTables(walls, fittings, bores, surfaces) : null;
  }

  /** The rows of a list, none of them for what an earlier one is for. */
  private static <T> List<T> rows(
      Fields fields, String list, Function<Fields, @Nullable Keyed<T>> reader, String key) {
    List<T> rows = new ArrayList<>();
    List<String> seen = new ArrayList<>();
    for (Fields row : fields.rows(list)) {
      Keyed<T> read = reader.apply(row);
      if (read == null || !row.sound()) {
        fields.spoil();
      } else if (seen.contains(read.key())) {
        row.complain(RuleTrouble.ROW_TWICE, key, new Argument.Text(read.key()));
        fields.spoil();
      } else {
        seen.add(read.key());
        rows.add(read.row());
      }
    }
    if (!fields.has(list)) {
      fields.complain(FormTrouble.MISSING, list, new Argument.Text(list));
    }
    return rows;
  }

  /** A row and what it is for. */
  private record Keyed<T>(String key, T row) {}

  private static @Nullable Keyed<FlowTables.Wall> wall(Fields row) {
    Material material = row.wantedChoice("material", Material.class);
    FlowTables.State state = row.wantedChoice("state", FlowTables.State.class);
    FrictionLaw law = row.wantedChoice("law", FrictionLaw.class);
    FlowTables.Origin origin = origin(row);
    Spread spread = law == FrictionLaw.DARCY_WEISBACH ? heights(row, law) : numbers(row, law);
    String key = Section.word(material) + ", " + Section.word(state) + ", " + Section.word(law);
    return spread == null
        ? null
        : new Keyed<>(
            key,
            new FlowTables.Wall(
                material, state, law, spread.typical(), spread.from(), spread.to(), origin));
  }

  private static @Nullable Keyed<FlowTables.Fitting> fitting(Fields row) {
    String id = row.wantedWords("id");
    FlowTables.Origin origin = origin(row);
    Spread spread = numbers(row, 0, 1000);
    return spread == null
        ? null
        : new Keyed<>(
            id, new FlowTables.Fitting(id, spread.typical(), spread.from(), spread.to(), origin));
  }

  private static @Nullable Keyed<FlowTables.Surface> surface(Fields row) {
    String id = row.wantedWords("id");
    FlowTables.Origin origin = origin(row);
    Spread spread = numbers(row, 0, 1);
    return spread == null
        ? null
        : new Keyed<>(
            id, new FlowTables.Surface(id, spread.typical(), spread.from(), spread.to(), origin));
  }

  private static Keyed<FlowTables.Bore> bore(Fields row) {
    String series = row.wantedWords("series");
    Reading nominal = row.wantedReading("nominal");
    double across = positive(row, "nominal");
    double inside = positive(row, "inside");
    return new Keyed<>(
        series + " " + nominal.written(), new FlowTables.Bore(series, across, inside, origin(row)));
  }

  private static FlowTables.Origin origin(Fields row) {
    return new FlowTables.Origin(
        row.wantedWords("source"), row.wantedChoice("mark", Mark.class), row.words("note"));
  }

  /** A figure and the range in which it lies. */
  private record Spread(double typical, double from, double to) {}

  private static @Nullable Spread numbers(Fields row, FrictionLaw law) {
    return numbers(row, law.least(), law.most());
  }

  private static @Nullable Spread numbers(Fields row, double least, double most) {
    double typical = number(row, "typical", least, most);
    double from = number(row, "from", least, most);
    double to = number(row, "to", least, most);
    if (!row.sound()) {
      return null;
    }
    inOrder(row, "from", from, "typical", typical);
    inOrder(row, "typical", typical, "to", to);
    return spread(row, typical, from, to);
  }

  private static double number(Fields row, String key, double least, double most) {
    Double number = row.number(key, least, most);
    if (number == null && !row.has(key)) {
      row.complain(FormTrouble.MISSING, key, new Argument.Text(key));
    }
    return number == null ? least : number;
  }

  private static @Nullable Spread heights(Fields row, FrictionLaw law) {
    double typical = positive(row, "height");
    double from = positive(row, "from-height");
    double to = positive(row, "to-height");
    if (!row.sound()) {
      return null;
    }
    inOrder(row, "from-height", from, "height", typical);
    inOrder(row, "height", typical, "to-height", to);
    if (to > law.most()) {
      row.complain(
          RuleTrouble.NOT_LESS,
          "to-height",
          new Argument.Text(row.wantedReading("to-height").written()),
          new Argument.Small(law.most()));
    }
    return spread(row, typical, from, to);
  }

  private static @Nullable Spread spread(Fields row, double typical, double from, double to) {
    if (row.sound() && !(from < to)) {
      row.complain(
          RuleTrouble.NOT_LESS,
          "source",
          new Argument.Text(Double.toString(from)),
          new Argument.Text(Double.toString(to)));
    }
    return row.sound() ? new Spread(typical, from, to) : null;
  }

  /** A range holds its figure; an end may be the figure itself. */
  private static void inOrder(Fields row, String key, double low, String next, double high) {
    if (low > high) {
      row.complain(
          RuleTrouble.NOT_LESS,
          key,
          new Argument.Text(String.valueOf(row.text(key))),
          new Argument.Text(String.valueOf(row.text(next))));
    }
  }

  private static double positive(Fields row, String key) {
    Reading reading = row.wantedReading(key);
    if (row.has(key) && !(reading.value() > 0)) {
      row.complain(FormTrouble.NOT_POSITIVE, key, new Argument.Text(reading.written()));
    }
    return reading.value();
  }
}
