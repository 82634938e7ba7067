package daylight.report.page;

import daylight.report.markup.Tag;
import java.util.List;

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
    return Tag.of("ul").addAll(items.stream().map(item -> Tag.of("li", item)).toList());
  }

  /** A table whose first column heads its rows; on a phone each row becomes a card. */
  static Tag table(String caption, List<String> heads, List<List<String>> rows) {
    Tag head = Tag.of("tr");
    heads.forEach(one -> head.add(Tag.of("th", one).with("scope", "col")));
    Tag body = Tag.of("tbody");
    for (List<String> row : rows) {
      Tag line = Tag.of("tr");
      for (int i = 0; i < row.size(); i++) {
        line.add(
            i == 0
                ? Tag.of("th", row.get(i)).with("scope", "row")
                : cell(heads.get(i), row.get(i)));
      }
      body.add(line);
    }
    return Tag.of("table").add(Tag.of("caption", caption)).add(Tag.of("thead").add(head)).add(body);
  }

  /** On a phone, where its head stands beside it, a cell that says nothing is left out. */
  private static Tag cell(String head, String text) {
    Tag cell = Tag.of("td", text).with("data-label", head);
    return text.equals(EMPTY) ? cell.with("class", "empty") : cell;
  }
}
