package daylight.app.field;

import daylight.line.book.Catalogue;
import daylight.report.markup.Tag;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The sheets as they are printed: black on white, for letter and A4, boxes wide enough for a
 * pencil. Rows carry the numbers that they have on the page on which they are typed afterwards.
 */
final class PencilSheets {
  private static final int WIDE = 190;
  private static final int HIGH = 125;
  private static final int SQUARE = 5;
  private static final int KNOWN = 4;

  /** Columns of the walk that stand on the first line of a row. */
  private static final int FIRST_LINE = 9;

  private final Caller caller;
  private final Phrases phrases;
  private final BookNow book;
  private final BookNow.Row visit;
  private final int number;
  private final PencilWords words;

  PencilSheets(Caller caller, BookNow book, BookNow.Row visit, int number) {
    this.caller = caller;
    this.phrases = caller.phrases();
    this.book = book;
    this.visit = visit;
    this.number = number;
    this.words = new PencilWords(phrases, PencilForm.unit(caller));
  }

  List<Tag> told(String address) {
    Pencil blank = Pencil.fresh(number);
    Tag ways = Tag.of("div").with("class", "before");
    ways.add(Parts.heading(phrases.say("pencil.link")));
    ways.add(Parts.paragraph("quiet", phrases.say("pencil.print.why")));
    Tag orders = Tag.of("p").with("class", "orders");
    orders.add(
        Tag.of("button", phrases.say("pencil.print"))
            .with("type", "button")
            .with("id", "print")
            .with("class", "button")
            .with("hidden", ""));
    orders.add(Parts.button(address + "/typed?sheet=" + number, phrases.say("pencil.typed")));
    ways.add(orders);
    if (number < Pencil.SHEETS) {
      ways.add(
          Tag.of("p")
              .with("class", "turn")
              .add(
                  Tag.of("a", phrases.say("pencil.next"))
                      .with("href", address + "?sheet=" + (number + 1))));
    }
    return List.of(ways, push(blank), walk(blank), sketch(blank));
  }

  private Tag sheet(String id, String says) {
    return Tag.of("section")
        .with("class", "sheet")
        .with("id", id)
        .with("tabindex", "0")
        .with("aria-labelledby", id + "-title")
        .add(
            Tag.of("div")
                .with("class", "who")
                .add(Tag.of("h2", phrases.say(says, number)).with("id", id + "-title"))
                .add(Tag.of("p", where()).add(Tag.of("br")).text(VisitPages.title(phrases, visit)))
                .add(Tag.of("p").add(Tag.of("strong", ticket())))
                .add(blanks("crew")));
  }

  private String where() {
    Optional<String> address =
        book.site().flatMap(site -> site.text("address")).filter(one -> !one.equals(book.name()));
    return phrases.list(
        Stream.of(Optional.of(book.name()), address).flatMap(Optional::stream).toList());
  }

  /** The tickets that are good on the day of the visit, or the order not to dig. */
  private String ticket() {
    String day = visit.text("date").filter(Trouble::isDay).orElse(Office.today().toString());
    List<String> good =
        book.in("tickets")
            .filter(
                row ->
                    row.text("expires")
                        .filter(Trouble::isDay)
                        .map(last -> !LocalDate.parse(last).isBefore(LocalDate.parse(day)))
                        .orElse(row.parent() != null && row.parent().equals(visit.entry())))
            .map(
                row ->
                    phrases.say(
                        "pencil.ticket",
                        row.text("number").orElse("–"),
                        row.text("expires")
                            .map(last -> phrases.say("before.ticket.until", last))
                            .orElseGet(() -> phrases.say("before.ticket.open"))))
            .toList();
    return good.isEmpty() ? phrases.say("before.tickets.none") : String.join("; ", good);
  }

  /** Words with room to write behind each. */
  private Tag blanks(String... keys) {
    Tag line = Tag.of("p").with("class", "blanks");
    for (String key : keys) {
      line.add(
          Tag.of("span", phrases.say("pencil.blank." + key) + " ")
              .add(Tag.of("span").with("class", "rule")));
    }
    return line;
  }

  // The push.

  private Tag push(Pencil blank) {
    return sheet("push-sheet", "pencil.sheet.push")
        .add(head())
        .add(kinds())
        .add(pushTable(blank.push()))
        .add(blanks("ended", "because"))
        .add(cautions());
  }

  private Tag head() {
    Tag head = Tag.of("div").with("class", "boxes");
    head.add(box("reach", known("reaches")));
    head.add(box("entry", known("nodes")));
    head.add(box("camera", List.of()));
    head.add(
        box(
            "head",
            List.of(
                phrases.say("push.head.self-righting"),
                phrases.say("push.head.set"),
                phrases.say("push.head.unknown"))));
    head.add(
        box("zero", List.of(phrases.say("pencil.zero.mouth"), phrases.say("pencil.zero.other"))));
    head.add(box("offset", List.of()));
    return head.add(
        box(
            "direction",
            List.of(phrases.say("push.part.pushing"), phrases.say("push.part.pulling"))));
  }

  private List<String> known(String section) {
    return book.in(section)
        .filter(
            row ->
                !section.equals("nodes") || row.text("kind").filter("access"::equals).isPresent())
        .limit(KNOWN)
        .map(row -> row.label() + row.text("what").map(what -> " " + what).orElse(""))
        .toList();
  }

  private Tag box(String key, List<String> choices) {
    Tag box = Tag.of("div").with("class", "box " + key);
    box.add(Tag.of("span", phrases.say("pencil.box." + key)).with("class", "small"));
    for (String choice : choices) {
      box.add(tick(choice));
    }
    return box;
  }

  private static Tag tick(String says) {
    return Tag.of("span")
        .with("class", "choice")
        .add(Tag.of("i").with("aria-hidden", "true"))
        .text(says);
  }

  /** Letters for what is met most, what its size is, and the order that comes before all. */
  private Tag kinds() {
    Tag list = Tag.of("ul").with("class", "letters");
    PushKeys.large().forEach(kind -> list.add(letter(kind)));
    Tag stop =
        Tag.of("div").with("class", "halt").add(Tag.of("strong", phrases.say("pencil.stop")));
    Tag deadly = Tag.of("ul").with("class", "letters");
    PushKeys.stop().forEach(kind -> deadly.add(letter(kind)));
    return Tag.of("div").add(stop.add(deadly)).add(list);
  }

  private Tag letter(Catalogue.Kind kind) {
    Tag item =
        Tag.of("li").add(Tag.of("b", PencilWords.letter(kind))).text(" " + phrases.kind(kind.id()));
    String size = words.brief(kind);
    return size.isEmpty()
        ? item
        : item.add(Tag.of("span", " (" + size + ")").with("class", "small"));
  }

  private Tag pushTable(List<Pencil.Row> rows) {
    Tag head = Tag.of("tr").add(column("pencil.row"));
    Pencil.PUSH.forEach(name -> head.add(column("pencil.push." + name)));
    Tag body = Tag.of("tbody");
    for (Pencil.Row row : rows) {
      Tag line = Tag.of("tr").add(numbered(row, 1));
      Pencil.PUSH.forEach(name -> line.add(Tag.of("td")));
      body.add(line);
    }
    return Tag.of("table")
        .with("class", "pencil push")
        .add(Tag.of("caption", lengths()))
        .add(Tag.of("thead").add(head))
        .add(body);
  }

  private String lengths() {
    return phrases.say("pencil.lengths." + PencilForm.unit(caller));
  }

  private Tag column(String key) {
    return Tag.of("th", phrases.say(key)).with("scope", "col");
  }

  private static Tag numbered(Pencil.Row row, int lines) {
    Tag number = Tag.of("th", Integer.toString(row.number())).with("scope", "row");
    return lines == 1 ? number : number.with("rowspan", Integer.toString(lines));
  }

  // The walk.

  private Tag walk(Pencil blank) {
    Tag first = Tag.of("tr").add(column("pencil.row").with("rowspan", "2"));
    Tag second = Tag.of("tr");
    List<String> columns = Pencil.WALK;
    for (int i = 0; i < columns.size(); i++) {
      (i < FIRST_LINE ? first : second).add(spanned(i, column("pencil.walk." + columns.get(i))));
    }
    Tag table =
        Tag.of("table")
            .with("class", "pencil walk")
            .add(Tag.of("caption", lengths() + " " + phrases.say("pencil.wall_back")))
            .add(Tag.of("thead").add(first).add(second));
    for (Pencil.Row row : blank.walk()) {
      Tag one = Tag.of("tr").add(numbered(row, 2));
      Tag two = Tag.of("tr").with("class", "below");
      for (int i = 0; i < columns.size(); i++) {
        (i < FIRST_LINE ? one : two).add(spanned(i, Tag.of("td")));
      }
      table.add(Tag.of("tbody").add(one).add(two));
    }
    return sheet("walk-sheet", "pencil.sheet.walk").add(table).add(cautions());
  }

  /** The remark takes what the other columns of its line leave. */
  private static Tag spanned(int column, Tag cell) {
    int last = Pencil.WALK.size() - 1;
    return column == last ? cell.with("colspan", Integer.toString(2 * FIRST_LINE - last)) : cell;
  }

  // The sketch.

  private Tag sketch(Pencil blank) {
    Tag head = Tag.of("tr").add(column("pencil.row"));
    Pencil.MARKS.forEach(name -> head.add(column("pencil.marks." + name)));
    Tag body = Tag.of("tbody");
    for (Pencil.Row row : blank.marks()) {
      Tag line = Tag.of("tr").add(numbered(row, 1));
      Pencil.MARKS.forEach(name -> line.add(Tag.of("td")));
      body.add(line);
    }
    return sheet("sketch-sheet", "pencil.sheet.sketch")
        .add(
            Tag.of("table")
                .with("class", "pencil marks")
                .add(Tag.of("caption", phrases.say("pencil.marks.why")))
                .add(Tag.of("thead").add(head))
                .add(body))
        .add(blanks("square", "north"))
        .add(squares())
        .add(
            Parts.paragraph(
                "small", phrases.say("pencil.consent", phrases.say("before.consent.usual"))))
        .add(blanks("name", "signature", "day"))
        .add(cautions());
  }

  /** Squares to draw on; in strokes, because browsers print no backgrounds. */
  private Tag squares() {
    Tag svg =
        Tag.of("svg")
            .with("viewBox", "0 0 " + WIDE + " " + HIGH)
            .with("class", "squares")
            .with("role", "img")
            .with("aria-label", phrases.say("pencil.squares"));
    for (int x = 0; x <= WIDE; x += SQUARE) {
      svg.add(stroke(x, 0, x, HIGH));
    }
    for (int y = 0; y <= HIGH; y += SQUARE) {
      svg.add(stroke(0, y, WIDE, y));
    }
    return svg;
  }

  private static Tag stroke(int x1, int y1, int x2, int y2) {
    return Tag.of("line").with("x1", x1).with("y1", y1).with("x2", x2).with("y2", y2);
  }

  private Tag cautions() {
    Tag list = Tag.of("ul").with("class", "small cautions");
    BeforeYouGo.CAUTIONS.forEach(one -> list.add(Tag.of("li", phrases.say(one.key()))));
    return list;
  }
}
