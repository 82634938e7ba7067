package daylight.app.field;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What is pencilled on a sheet, as it is typed afterwards: text by the name of its cell, as {@code
 * p3-at} for the distance of row 3. Paper and page are made of the same columns and numbers, so
 * that one can be held against the other: rows below 100 are of the push, those from 101 of the
 * walk.
 *
 * @param from number of the first sheet that is shown
 * @param to number of the last one
 */
record Pencil(int from, int to, Map<String, String> typed) {
  /** How many sheets a visit may have of each sort. */
  static final int SHEETS = 5;

  /** Columns of the push: what, where, which hour, how large. */
  static final List<String> PUSH =
      List.of("kind", "at", "until", "clock", "size", "remark", "time");

  /** Columns of the walk: the first nine are a line of the paper, the others the line below it. */
  static final List<String> WALK =
      List.of(
          "label",
          "cable",
          "time",
          "wall",
          "along",
          "out",
          "depth",
          "receiver-height",
          "surface",
          "to1",
          "tie1",
          "to2",
          "tie2",
          "remark");

  /** Columns of what tapes are held to. */
  static final List<String> MARKS = List.of("label", "what", "kind");

  private static final int PUSH_ROWS = 15;
  private static final int WALK_ROWS = 10;
  private static final int MARK_ROWS = 6;
  private static final int WALK_FIRST = 101;
  private static final int MARK_FIRST = 201;
  private static final int LONGEST = 2000;

  /** A sheet on which nothing is written; its rows have their identities for good. */
  static Pencil fresh(int sheet) {
    int number = Math.clamp(sheet, 1, SHEETS);
    Pencil pencil = new Pencil(number, number, new LinkedHashMap<>());
    Stream.of("pass", "node", "newreach", "end", "wall-a", "wall-b")
        .forEach(name -> pencil.typed.put(name, UUID.randomUUID().toString()));
    return pencil;
  }

  /** What was sent; only names that this page has, and no text longer than anybody writes. */
  static Pencil read(Context request) {
    int from = number(request, "from", 1);
    int to = Math.max(from, number(request, "to", from));
    Pencil pencil = new Pencil(from, to, new LinkedHashMap<>());
    for (Map.Entry<String, List<String>> one : request.formParamMap().entrySet()) {
      String text = one.getValue().getFirst().strip();
      if (one.getKey().matches("[a-z0-9-]{1,30}") && !text.isEmpty()) {
        pencil.typed.put(one.getKey(), text.length() > LONGEST ? text.substring(0, LONGEST) : text);
      }
    }
    return pencil;
  }

  private static int number(Context request, String name, int otherwise) {
    String text = Objects.requireNonNullElse(request.formParam(name), "");
    return text.matches("[1-5]") ? Integer.parseInt(text) : otherwise;
  }

  /** The same with the rows of one sheet more. */
  Pencil more() {
    return new Pencil(from, Math.min(to + 1, SHEETS), typed);
  }

  String text(String name) {
    return typed.getOrDefault(name, "");
  }

  void put(String name, String text) {
    typed.put(name, text);
  }

  /** An identity that came with the page; a new one where none did. */
  UUID id(String name) {
    UUID id = Office.id(text(name)).orElseGet(UUID::randomUUID);
    typed.put(name, id.toString());
    return id;
  }

  List<Row> push() {
    return rows('p', 1, PUSH_ROWS, PUSH);
  }

  List<Row> walk() {
    return rows('w', WALK_FIRST, WALK_ROWS, WALK);
  }

  /** What tapes are held to: on the first sheet only. */
  List<Row> marks() {
    return IntStream.range(0, MARK_ROWS)
        .mapToObj(i -> new Row(this, 'm', MARK_FIRST + i, MARKS))
        .toList();
  }

  private List<Row> rows(char letter, int first, int each, List<String> columns) {
    List<Row> rows = new ArrayList<>();
    for (int i = each * (from - 1); i < each * to; i++) {
      rows.add(new Row(this, letter, first + i, columns));
    }
    return rows;
  }

  /**
   * A row of the paper.
   *
   * @param letter p for the push, w for the walk, m for what tapes are held to
   */
  record Row(Pencil pencil, char letter, int number, List<String> columns) {
    String name(String column) {
      return letter + Integer.toString(number) + "-" + column;
    }

    String text(String column) {
      return pencil.text(name(column));
    }

    boolean isEmpty() {
      return columns.stream().allMatch(column -> text(column).isEmpty());
    }

    UUID id() {
      return pencil.id(name("id"));
    }

    /** The revision that it is written upon; 0 where the archive does not have it yet. */
    int base() {
      String base = text("base");
      return base.matches("\\d{1,9}") ? Integer.parseInt(base) : 0;
    }

    /** The section that it is kept in so far; empty where it is not kept. */
    String section() {
      return base() > 0 ? text("as") : "";
    }

    void kept(String section, int number) {
      pencil.put(name("base"), Integer.toString(number));
      pencil.put(name("as"), section);
    }

    void gone() {
      pencil.typed.remove(name("base"));
      pencil.typed.remove(name("as"));
    }
  }
}
