package daylight.report.page;

import daylight.report.markup.Tag;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The few shapes the page is made of. */
final class Html {
  /** What stands in a cell that has nothing to say. */
  static final String EMPTY = "–";

  private Html() {}

  static Tag section(String id, String heading) {
    return Tag.of("section")
        .with("id", id)
        .with("aria-labelledby", id + "-heading")
        .add(Tag.of("h2", heading).with("id", id + "-heading"));
  }

  static Tag list(List<String> items) {
    return Tag.of("ul").addAll(items(items.stream()));
  }

  static List<Tag> items(Stream<String> texts) {
    return texts.map(text -> Tag.of("li", text)).toList();
  }

  /** A moment within a recording or how long it runs, as {@code m:ss} or {@code h:mm:ss}. */
  static String time(double seconds) {
    long whole = (long) seconds;
    String minutes = "%d:%02d".formatted(whole / 60 % 60, whole % 60);
    return whole < 3600 ? minutes : "%d:%5s".formatted(whole / 3600, minutes).replace(' ', '0');
  }

  /** A table whose first column heads its rows; on a phone each row becomes a card. */
  static Tag table(String caption, List<String> heads, List<List<Tag>> rows) {
    return filled(Tag.of("table").add(Tag.of("caption", caption)), heads, rows);
  }

  /** The same below a heading that says all that a caption could. */
  static Tag table(List<String> heads, List<List<Tag>> rows) {
    return filled(Tag.of("table"), heads, rows);
  }

  private static Tag filled(Tag table, List<String> heads, List<List<Tag>> rows) {
    Tag head = Tag.of("tr");
    heads.forEach(one -> head.add(Tag.of("th", one).with("scope", "col")));
    Tag body = Tag.of("tbody");
    for (List<Tag> row : rows) {
      Tag line = Tag.of("tr");
      for (int i = 0; i < row.size(); i++) {
        line.add(i == 0 ? row.get(i) : row.get(i).with("data-label", heads.get(i)));
      }
      body.add(line);
    }
    return table.add(Tag.of("thead").add(head)).add(body);
  }

  /** Cells of one row, the first of which heads it. */
  static List<Tag> row(List<String> texts) {
    List<Tag> cells = new ArrayList<>();
    for (String text : texts) {
      cells.add(cells.isEmpty() ? Tag.of("th", text).with("scope", "row") : cell(text));
    }
    return cells;
  }

  /** On a phone, where its head stands beside it, a cell that says nothing is left out. */
  static Tag cell(String text) {
    Tag cell = Tag.of("td", text);
    return text.equals(EMPTY) ? cell.with("class", "empty") : cell;
  }
}
