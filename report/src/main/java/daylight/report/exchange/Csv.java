package daylight.report.exchange;

import daylight.report.map.Atlas;
import daylight.report.map.Dictionary;
import daylight.report.map.Field;
import daylight.report.map.Frame;
import daylight.report.map.Layer;
import daylight.report.map.Row;
import daylight.report.map.Shape;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;

/**
 * A layer as comma-separated values by RFC 4180, UTF-8 without a mark at the beginning, a row of
 * names first. The last column is the shape as well-known text. Empty is what is not known. Before
 * a text that a spreadsheet might take for a formula stands an apostrophe.
 */
final class Csv {
  private static final String FORMULA = "=+-@\t";
  private static final double MICROMETRES = 1e6;
  private static final String SHAPE = "WKT";

  private Csv() {}

  static byte[] write(Atlas atlas, Layer layer) {
    Frame frame = Frame.of(atlas.earth());
    boolean drawn = layer.form() != Layer.Form.NONE;
    List<List<@Nullable String>> rows = new ArrayList<>();
    List<@Nullable String> heads = new ArrayList<>();
    layer.fields().forEach(field -> heads.add(field.name()));
    if (drawn) {
      heads.add(SHAPE);
    }
    rows.add(heads);
    for (Row row : atlas.of(layer)) {
      List<@Nullable String> cells = new ArrayList<>();
      layer.fields().forEach(field -> cells.add(cell(row, field)));
      if (drawn) {
        cells.add(shape(frame, row.shape()));
      }
      rows.add(cells);
    }
    return printed(rows);
  }

  static byte[] dictionary(Atlas atlas) {
    List<List<@Nullable String>> rows = new ArrayList<>();
    rows.add(new ArrayList<>(Dictionary.HEADS));
    Dictionary.of(atlas)
        .forEach(
            row -> {
              List<@Nullable String> cells = new ArrayList<>();
              row.cells().forEach(cell -> cells.add(guarded(cell)));
              rows.add(cells);
            });
    return printed(rows);
  }

  private static @Nullable String cell(Row row, Field field) {
    Object value = row.get(field);
    return switch (value) {
      case null -> null;
      case String text -> guarded(text);
      default -> Written.of(value);
    };
  }

  private static String guarded(String text) {
    return !text.isEmpty() && FORMULA.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
  }

  private static byte[] printed(List<List<@Nullable String>> rows) {
    StringBuilder out = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180)) {
      for (List<@Nullable String> row : rows) {
        printer.printRecord(row);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory can always be written", e);
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static @Nullable String shape(Frame frame, @Nullable Shape shape) {
    return switch (shape) {
      case null -> null;
      case Shape.Dot(var at, Double height) when height != null ->
          "POINT Z (" + pair(frame.at(at)) + " " + height(height) + ")";
      case Shape.Dot(var at, var _) -> "POINT (" + pair(frame.at(at)) + ")";
      case Shape.Way(var points, List<Double> heights) when !heights.isEmpty() -> {
        List<Frame.At> at = frame.at(points);
        List<String> all = new ArrayList<>();
        for (int i = 0; i < at.size(); i++) {
          all.add(pair(at.get(i)) + " " + height(heights.get(i)));
        }
        yield "LINESTRING Z (" + String.join(", ", all) + ")";
      }
      case Shape.Way(var points, var _) -> "LINESTRING (" + pairs(frame.at(points)) + ")";
      case Shape.Area(var rings) ->
          rings.stream()
              .map(ring -> "(" + pairs(frame.at(ring)) + ")")
              .collect(Collectors.joining(", ", "POLYGON (", ")"));
    };
  }

  private static String height(double metres) {
    return Written.number(Math.rint(metres * MICROMETRES) / MICROMETRES);
  }

  private static String pairs(List<Frame.At> points) {
    return points.stream().map(Csv::pair).collect(Collectors.joining(", "));
  }

  private static String pair(Frame.At at) {
    return Written.number(at.x()) + " " + Written.number(at.y());
  }
}
