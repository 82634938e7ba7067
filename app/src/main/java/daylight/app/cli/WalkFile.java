package daylight.app.cli;

import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import daylight.line.measure.Parsed;
import daylight.line.measure.Quantities;
import daylight.line.measure.Reading;
import daylight.line.measure.Unit;
import daylight.line.sonde.Antenna;
import daylight.line.sonde.Walked;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** A table of walked strengths. What is wrong is told with its line and column, all of it. */
final class WalkFile {
  private static final long LARGEST = 4_000_000;
  private static final double LOUDEST = 1e9;
  private static final Pattern HEAD = Pattern.compile("([a-z]+)\\s*(?:\\(([a-z]+)\\))?");
  private static final List<String> KNOWN =
      List.of("x", "y", "height", "whole", "upright", "level", "bearing", "bx", "by", "bz");

  private final Path file;
  private final Given given;
  private final Map<String, Integer> columns = new LinkedHashMap<>();
  private final Map<String, Unit> units = new LinkedHashMap<>();
  private String separator = ",";

  WalkFile(Path file, Given given) {
    this.file = file;
    this.given = given;
  }

  /** A strength before its uncertainty is known, which hangs on the loudest of all. */
  private record Raw(
      double x, double y, double height, @Nullable Antenna antenna, List<Double> values) {
    double loudest() {
      double most = 0;
      for (double value : values) {
        most = StrictMath.max(most, StrictMath.abs(value));
      }
      return most;
    }

    Walked reading(double relative, double floor) {
      Antenna one = antenna;
      return one == null
          ? new Walked.Parts(
              x, y, height, at(0, relative, floor), at(1, relative, floor), at(2, relative, floor))
          : new Walked.Strength(x, y, height, one, at(0, relative, floor));
    }

    private Measured at(int part, double relative, double floor) {
      double size = StrictMath.abs(values.get(part));
      return new Measured(values.get(part), StrictMath.hypot(relative * size, floor));
    }
  }

  /**
   * @param relative uncertainty of a strength
   * @param floor uncertainty of silence, as a share of the loudest
   */
  List<Walked> read(double relative, double floor) {
    List<Raw> raw = new ArrayList<>();
    boolean headed = false;
    int number = 0;
    for (String line : lines()) {
      number++;
      if (line.isBlank() || line.startsWith("#")) {
        continue;
      }
      if (headed) {
        row(number, line, raw);
      } else {
        headed = true;
        head(number, line);
        if (!given.sound()) {
          return List.of();
        }
      }
    }
    if (!headed && given.sound()) {
      given.complain(file.toString(), "form.empty");
    }
    double loudest = raw.stream().mapToDouble(Raw::loudest).max().orElse(0);
    double least = StrictMath.max(Double.MIN_NORMAL, floor * loudest);
    return raw.stream().map(one -> one.reading(relative, least)).toList();
  }

  private List<String> lines() {
    String key = "form.file-missing";
    try {
      if (Files.isDirectory(file)) {
        key = "form.not-a-file";
      } else if (Files.size(file) > LARGEST) {
        given.complain(file.toString(), "form.too-large", new Argument.Count(LARGEST));
        return List.of();
      } else {
        return Files.readAllLines(file);
      }
    } catch (CharacterCodingException e) {
      key = "form.not-utf8";
    } catch (NoSuchFileException e) {
      key = "form.file-missing";
    } catch (IOException e) {
      given.complain(
          file.toString(), "form.unreadable", Given.text(String.valueOf(e.getMessage())));
      return List.of();
    }
    given.complain(file.toString(), key);
    return List.of();
  }

  private void head(int number, String line) {
    separator = line.contains("\t") ? "\t" : line.contains(";") ? ";" : ",";
    List<Cell> cells = cells(line);
    for (int i = 0; i < cells.size(); i++) {
      Cell cell = cells.get(i);
      Matcher head = HEAD.matcher(cell.text.toLowerCase(Locale.ROOT).replace("\uFEFF", ""));
      if (!head.matches() || !KNOWN.contains(head.group(1))) {
        complain(
            number, cell, "form.not-a-choice", Given.text(cell.text), new Argument.Choices(KNOWN));
      } else if (columns.putIfAbsent(head.group(1), i) != null) {
        complain(number, cell, "form.duplicate-key", Given.text(head.group(1)));
      } else if (head.group(2) != null) {
        unit(number, cell, head.group(1), head.group(2));
      }
    }
    for (String needed : List.of("x", "y")) {
      if (!columns.containsKey(needed)) {
        complain(number, cells.getFirst(), "form.missing", Given.text(needed));
      }
    }
    boolean parts = columns.keySet().containsAll(List.of("bx", "by", "bz"));
    boolean level = columns.keySet().containsAll(List.of("level", "bearing"));
    if (!parts && !level && !columns.containsKey("whole") && !columns.containsKey("upright")) {
      complain(number, cells.getFirst(), "figure.walk.no-strength");
    }
  }

  private void unit(int number, Cell cell, String column, String symbol) {
    for (Unit unit : Unit.values()) {
      if (unit.symbol().equals(symbol)) {
        units.put(column, unit);
        return;
      }
    }
    List<String> known = java.util.Arrays.stream(Unit.values()).map(Unit::symbol).toList();
    complain(number, cell, "form.not-a-choice", Given.text(symbol), new Argument.Choices(known));
  }

  private void row(int number, String line, List<Raw> raw) {
    List<Cell> cells = cells(line);
    Double x = length(number, cells, "x", true);
    Double y = length(number, cells, "y", true);
    Double height = length(number, cells, "height", false);
    Double whole = strength(number, cells, "whole", 0);
    Double upright = strength(number, cells, "upright", 0);
    Double level = strength(number, cells, "level", 0);
    Double bearing = level == null ? null : bearing(number, cells);
    Double bx = strength(number, cells, "bx", -LOUDEST);
    Double by = strength(number, cells, "by", -LOUDEST);
    Double bz = strength(number, cells, "bz", -LOUDEST);
    if (x == null || y == null) {
      return;
    }
    double up = height == null ? 0 : height;
    if (whole != null) {
      raw.add(new Raw(x, y, up, new Antenna.Whole(), List.of(whole)));
    }
    if (upright != null) {
      raw.add(new Raw(x, y, up, new Antenna.Upright(), List.of(upright)));
    }
    if (level != null && bearing != null) {
      raw.add(new Raw(x, y, up, new Antenna.Level(bearing), List.of(level)));
    }
    if (bx != null && by != null && bz != null) {
      raw.add(new Raw(x, y, up, null, List.of(bx, by, bz)));
    }
  }

  private @Nullable Cell cell(List<Cell> cells, String column) {
    Integer at = columns.get(column);
    return at == null || at >= cells.size() || cells.get(at).text.isEmpty() ? null : cells.get(at);
  }

  private @Nullable Double length(int number, List<Cell> cells, String column, boolean needed) {
    Cell cell = cell(cells, column);
    if (cell == null) {
      if (needed) {
        complain(number, cells.getFirst(), "form.missing", Given.text(column));
      }
      return null;
    }
    Reading reading =
        given.quantity(Dimension.LENGTH, where(number, cell), cell.text, units.get(column));
    return reading == null ? null : (Double) reading.value();
  }

  private @Nullable Double strength(int number, List<Cell> cells, String column, double least) {
    Cell cell = cell(cells, column);
    return cell == null ? null : given.number(where(number, cell), cell.text, least, LOUDEST);
  }

  private @Nullable Double bearing(int number, List<Cell> cells) {
    Cell cell = cell(cells, "bearing");
    if (cell == null) {
      complain(number, cells.getFirst(), "form.missing", Given.text("bearing"));
      return null;
    }
    return switch (Quantities.bearing(cell.text)) {
      case Parsed.Value<Reading>(Reading reading) -> reading.value();
      case Parsed.Refused<Reading>(var reason, var near) -> {
        complain(
            number,
            cell,
            "form.not-a-quantity",
            Given.text(cell.text),
            new Argument.Term("dimension.bearing"),
            new Argument.Reason(reason),
            new Argument.Choices(near));
        yield null;
      }
    };
  }

  private String where(int number, Cell cell) {
    return file + ":" + number + ":" + cell.column;
  }

  private void complain(int number, Cell cell, String key, Argument... arguments) {
    given.complain(where(number, cell), key, arguments);
  }

  /**
   * One cell of a line.
   *
   * @param column at which it begins, from 1
   */
  private record Cell(String text, int column) {}

  /** A cell that begins with a quotation mark ends with one; inches elsewhere stay inches. */
  private List<Cell> cells(String line) {
    List<Cell> cells = new ArrayList<>();
    int at = 0;
    while (at <= line.length()) {
      int begin = at;
      while (begin < line.length() && line.charAt(begin) == ' ') {
        begin++;
      }
      boolean quoted = begin < line.length() && line.charAt(begin) == '"';
      StringBuilder text = new StringBuilder();
      int i = quoted ? begin + 1 : begin;
      boolean open = quoted;
      for (; i < line.length() && (open || !line.startsWith(separator, i)); i++) {
        char c = line.charAt(i);
        if (quoted && c == '"') {
          boolean doubled = open && i + 1 < line.length() && line.charAt(i + 1) == '"';
          if (doubled) {
            text.append(c);
            i++;
          } else {
            open = !open;
          }
        } else {
          text.append(c);
        }
      }
      cells.add(new Cell(text.toString().strip(), begin + 1));
      at = i + 1;
    }
    return cells;
  }
}
