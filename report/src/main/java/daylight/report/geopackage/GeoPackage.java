package daylight.report.geopackage;

import daylight.report.map.Atlas;
import daylight.report.map.Dictionary;
import daylight.report.map.Field;
import daylight.report.map.Frame;
import daylight.report.map.Layer;
import daylight.report.map.Row;
import daylight.report.map.Shape;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.sql.Types;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteConnection;

/** The door of the room: writes an atlas. */
public final class GeoPackage {
  private static final int WGS84 = 4326;
  private static final int UNDEFINED_CARTESIAN = -1;

  /** Where nothing says a day, the standard still wants one. */
  private static final LocalDate NO_DAY = LocalDate.EPOCH;

  private final Atlas atlas;
  private final Connection connection;
  private final Frame frame;
  private final int srs;

  private GeoPackage(Atlas atlas, Connection connection) {
    this.atlas = atlas;
    this.connection = connection;
    this.frame = Frame.of(atlas.earth());
    this.srs = frame.onEarth() ? WGS84 : UNDEFINED_CARTESIAN;
  }

  /** The atlas as the bytes of a GeoPackage. */
  public static byte[] write(Atlas atlas) {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite::memory:")) {
      connection.setAutoCommit(false);
      new GeoPackage(atlas, connection).all();
      connection.commit();
      return connection.unwrap(SQLiteConnection.class).serialize("main");
    } catch (SQLException e) {
      throw new IllegalStateException("a table in memory can always be written", e);
    }
  }

  private void all() throws SQLException {
    for (String statement : Tables.BEFORE) {
      run(statement);
    }
    for (Layer layer : Layer.values()) {
      layer(layer);
    }
    dictionary();
  }

  private void run(String sql) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }

  private void layer(Layer layer) throws SQLException {
    boolean drawn = layer.form() != Layer.Form.NONE;
    String columns =
        layer.fields().stream()
            .map(field -> ", " + quoted(field.name()) + " " + type(field))
            .collect(Collectors.joining());
    run(
        "CREATE TABLE %s (fid INTEGER PRIMARY KEY AUTOINCREMENT NOT NULL%s%s)"
            .formatted(
                quoted(layer.id()), drawn ? ", geom " + Tables.shape(layer.form()) : "", columns));
    Optional<Bounds> bounds = Bounds.of(frame, atlas.of(layer));
    contents(layer.id(), drawn ? "features" : "attributes", atlas.described(layer), bounds, drawn);
    if (drawn) {
      insert(
          "gpkg_geometry_columns",
          List.of(layer.id(), "geom", Tables.shape(layer.form()), srs, z(layer), 0));
    }
    rows(layer, drawn);
  }

  /** Whether points of a layer have heights: 0 none, 2 some or all. */
  private int z(Layer layer) {
    boolean any =
        atlas.of(layer).stream()
            .map(Row::shape)
            .anyMatch(
                shape ->
                    (shape instanceof Shape.Dot dot && dot.height() != null)
                        || (shape instanceof Shape.Way way && !way.heights().isEmpty()));
    return any ? 2 : 0;
  }

  private void contents(
      String table, String type, String title, Optional<Bounds> bounds, boolean drawn)
      throws SQLException {
    String changed = atlas.day().orElse(NO_DAY) + "T00:00:00.000Z";
    String sql =
        "INSERT INTO gpkg_contents (table_name, data_type, identifier, description, last_change,"
            + " min_x, min_y, max_x, max_y, srs_id) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      statement.setString(1, table);
      statement.setString(2, type);
      statement.setString(3, table);
      statement.setString(4, title);
      statement.setString(5, changed);
      if (bounds.isPresent()) {
        Bounds box = bounds.get();
        statement.setDouble(6, box.left());
        statement.setDouble(7, box.bottom());
        statement.setDouble(8, box.right());
        statement.setDouble(9, box.top());
      }
      if (drawn) {
        statement.setInt(10, srs);
      }
      statement.executeUpdate();
    }
  }

  private void rows(Layer layer, boolean drawn) throws SQLException {
    int width = layer.fields().size() + (drawn ? 1 : 0);
    String marks = String.join(", ", Collections.nCopies(width, "?"));
    String names =
        layer.fields().stream()
            .map(field -> quoted(field.name()))
            .collect(Collectors.joining(", "));
    Geometries geometries = new Geometries(frame, srs);
    String sql =
        "INSERT INTO %s (%s%s) VALUES (%s)"
            .formatted(quoted(layer.id()), drawn ? "geom, " : "", names, marks);
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      for (Row row : atlas.of(layer)) {
        int at = 1;
        if (drawn) {
          statement.setBytes(at++, geometries.of(row.shape()));
        }
        for (Field field : layer.fields()) {
          set(statement, at++, row.get(field));
        }
        statement.executeUpdate();
      }
    }
  }

  private static void set(PreparedStatement statement, int at, @Nullable Object value)
      throws SQLException {
    switch (value) {
      case null -> statement.setNull(at, Types.NULL);
      case String text -> statement.setString(at, text);
      case Double number -> statement.setDouble(at, number);
      case Long whole -> statement.setLong(at, whole);
      case Integer whole -> statement.setInt(at, whole);
      case Boolean yes -> statement.setInt(at, yes ? 1 : 0);
      case LocalDate day -> statement.setString(at, day.toString());
      default -> throw new IllegalArgumentException("no field holds " + value.getClass());
    }
  }

  private void insert(String table, List<?> values) throws SQLException {
    String marks = String.join(", ", Collections.nCopies(values.size(), "?"));
    String sql = "INSERT INTO %s VALUES (%s)".formatted(quoted(table), marks);
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      for (int i = 0; i < values.size(); i++) {
        set(statement, i + 1, values.get(i));
      }
      statement.executeUpdate();
    }
  }

  /** What every field means, in a table beside the layers. */
  private void dictionary() throws SQLException {
    String columns =
        Dictionary.HEADS.stream()
            .map(head -> ", " + quoted(head) + " TEXT")
            .collect(Collectors.joining());
    run("CREATE TABLE dictionary (fid INTEGER PRIMARY KEY AUTOINCREMENT NOT NULL" + columns + ")");
    String title = atlas.words().word("map.dictionary");
    contents("dictionary", "attributes", title, Optional.empty(), false);
    long id = 1;
    for (Dictionary row : Dictionary.of(atlas)) {
      List<Object> values = new ArrayList<>(List.of(id++));
      values.addAll(row.cells());
      insert("dictionary", values);
    }
  }

  private static String type(Field field) {
    return switch (field.type()) {
      case TEXT -> "TEXT";
      case NUMBER -> "DOUBLE";
      case WHOLE -> "INTEGER";
      case YES_NO -> "BOOLEAN";
      case DAY -> "DATE";
    };
  }

  private static String quoted(String name) {
    return '"' + name + '"';
  }
}
