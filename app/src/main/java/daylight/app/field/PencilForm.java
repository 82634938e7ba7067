package daylight.app.field;

import daylight.app.web.Look;
import daylight.archive.Bundled;
import daylight.line.book.Catalogue;
import daylight.line.book.Landmark;
import daylight.line.book.Pass;
import daylight.report.markup.Tag;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * The page on which a pencil sheet is typed: its rows in the order and with the numbers of the
 * paper. A form like any other, which works without script; {@code pencil.js} keeps what is typed
 * in the browser and lets Enter go on to the next row.
 */
final class PencilForm {
  private final Caller caller;
  private final Phrases phrases;
  private final BookNow book;
  private final BookNow.Row visit;
  private final Trouble trouble;

  PencilForm(Caller caller, BookNow book, BookNow.Row visit, Trouble trouble) {
    this.caller = caller;
    this.phrases = caller.phrases();
    this.book = book;
    this.visit = visit;
    this.trouble = trouble;
  }

  /**
   * @param fresh whether nothing was typed yet, so that what the browser still has may be put there
   */
  List<Tag> told(String action, Pencil pencil, PushForm push, boolean fresh) {
    Tag form =
        Forms.form(caller, action)
            .with("id", "pencil")
            .with("autocomplete", "off")
            .with("data-visit", visit.entry().toString())
            .with("data-fresh", Boolean.toString(fresh))
            .with("data-unsent", phrases.say("pencil.unsent", "{0}"))
            .with("data-sending", phrases.say("sending.sending"))
            .with("data-again", phrases.say("pencil.again"))
            .with("data-anew", phrases.say("pencil.anew"));
    form.add(Forms.hidden("from", Integer.toString(pencil.from())));
    form.add(Forms.hidden("to", Integer.toString(pencil.to())));
    for (String wall : List.of("wall-a", "wall-b")) {
      form.add(Forms.hidden(wall, pencil.id(wall).toString()));
    }
    form.add(units(pencil));
    form.add(head(pencil, push));
    form.add(table("push", "pencil.push", pencil.push()));
    form.add(ended(pencil));
    form.add(table("walk", "pencil.walk", pencil.walk()));
    form.add(table("marks", "pencil.marks", pencil.marks()));
    form.add(orders(pencil));
    return List.of(
        Parts.paragraph("quiet", phrases.say("pencil.typed.why")),
        Tag.of("p").with("id", "pencil-state").with("class", "sending").with("role", "status"),
        form,
        kinds(),
        choices("surfaces", Stream.of("yard", "slab", "drive").map(this::surface)),
        choices("points", book.in("landmarks").map(BookNow.Row::label)));
  }

  private String surface(String one) {
    return phrases.say("walk.surface." + one);
  }

  private Tag units(Pencil pencil) {
    List<Forms.Option> units =
        List.of(
            new Forms.Option("ft", phrases.say("pencil.unit.ft")),
            new Forms.Option("m", phrases.say("pencil.unit.m")));
    String chosen = pencil.text("unit").isEmpty() ? unit(caller) : pencil.text("unit");
    return Forms.labelled(
        "unit",
        phrases.say("pencil.unit"),
        Forms.choice("unit", units, chosen),
        null,
        trouble.of("unit"));
  }

  /** In which unit somebody reads lengths, as a book names it. */
  static String unit(Caller caller) {
    return Look.code(caller.look().shown()).equals("metres") ? "m" : "ft";
  }

  private Tag head(Pencil pencil, PushForm push) {
    Tag section = Parts.section("head", phrases.say("pencil.head"));
    List<Forms.Option> passes = new ArrayList<>();
    passes.add(new Forms.Option("", phrases.say("pencil.pass.new")));
    book.in(visit.entry(), "passes")
        .filter(row -> !row.entry().equals(push.pass()))
        .forEach(
            row ->
                passes.add(
                    new Forms.Option(
                        row.entry().toString(), phrases.say("push.pass", row.label()))));
    if (passes.size() > 1) {
      section.add(
          Forms.labelled(
              "push",
              phrases.say("pencil.pass"),
              Forms.choice("push", passes, pencil.text("push")),
              phrases.say("pencil.pass.hint"),
              trouble.of("push")));
    }
    Tag fields = push.fill(Tag.of("div").with("class", "fields"), phrases, book, trouble);
    fields.add(
        Forms.line(
            "camera",
            phrases.say("pencil.camera"),
            "text",
            pencil.text("camera"),
            null,
            trouble.of("camera")));
    Tag pulling =
        Tag.of("input")
            .with("type", "checkbox")
            .with("id", "pulling")
            .with("name", "pulling")
            .with("value", "yes");
    if (!pencil.text("pulling").isEmpty()) {
      pulling.with("checked", "");
    }
    return section
        .add(fields)
        .add(
            Tag.of("div")
                .with("class", "tick")
                .add(pulling)
                .add(Tag.of("label", phrases.say("pencil.pulling")).with("for", "pulling")));
  }

  private Tag ended(Pencil pencil) {
    List<Forms.Option> why = new ArrayList<>();
    why.add(new Forms.Option("", "–"));
    for (Pass.Why one : Pass.Why.values()) {
      String code = code(one);
      why.add(new Forms.Option(code, phrases.say("push.why." + code)));
    }
    return Tag.of("div")
        .with("class", "fields")
        .add(
            Forms.line(
                "end-cable",
                phrases.say("pencil.ended"),
                "text",
                pencil.text("end-cable"),
                null,
                trouble.of("end-cable")))
        .add(
            Forms.labelled(
                "end-why",
                phrases.say("push.ended.why"),
                Forms.choice("end-why", why, pencil.text("end-why")),
                null,
                trouble.of("end-why")));
  }

  private static String code(Enum<?> one) {
    return one.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private Tag table(String id, String says, List<Pencil.Row> rows) {
    Tag head = Tag.of("tr").add(Tag.of("th", phrases.say("pencil.row")).with("scope", "col"));
    rows.getFirst()
        .columns()
        .forEach(column -> head.add(Tag.of("th", title(id, column)).with("scope", "col")));
    Tag body = Tag.of("tbody");
    rows.forEach(row -> body.add(row(id, row)));
    return Parts.section("typed-" + id, phrases.say(says))
        .add(
            Tag.of("div")
                .with("class", "scroll")
                .add(
                    Tag.of("table")
                        .with("class", "typed " + id)
                        .add(Tag.of("thead").add(head))
                        .add(body)));
  }

  private String title(String table, String column) {
    return phrases.say("pencil." + table + "." + column);
  }

  private Tag row(String table, Pencil.Row row) {
    boolean kept = row.base() > 0;
    Tag number =
        Tag.of("th", Integer.toString(row.number()))
            .with("scope", "row")
            .add(Forms.hidden(row.name("id"), row.id().toString()));
    if (kept) {
      number
          .add(Tag.of("span", " ✓ " + phrases.say("pencil.kept")).with("class", "done"))
          .add(Forms.hidden(row.name("base"), Integer.toString(row.base())))
          .add(Forms.hidden(row.name("as"), row.section()));
    }
    Tag line = Tag.of("tr").with("data-row", Integer.toString(row.number())).add(number);
    row.columns().forEach(column -> line.add(cell(table, row, column)));
    return line;
  }

  private Tag cell(String table, Pencil.Row row, String column) {
    String name = row.name(column);
    String why = trouble.of(name);
    String says = title(table, column);
    Tag field = table.equals("marks") && column.equals("kind") ? sort(row) : input(row, column);
    field
        .with("id", name)
        .with("name", name)
        .with("data-column", column)
        .with("aria-label", phrases.say("pencil.cell", row.number(), says));
    Tag cell = Tag.of("td").with("class", why == null ? column : column + " wrong");
    cell.with("data-says", says);
    if (why == null) {
      return cell.add(field);
    }
    field.with("aria-invalid", "true").with("aria-describedby", name + "-why");
    Tag told = Tag.of("p", why).with("class", "why").with("id", name + "-why");
    return cell.add(field).add(told);
  }

  private static Tag input(Pencil.Row row, String column) {
    Tag input =
        Tag.of("input")
            .with("type", "text")
            .with("value", row.text(column))
            .with("maxlength", "400")
            .with("spellcheck", "false");
    return switch (column) {
      case "kind" -> input.with("list", "kinds");
      case "surface" -> input.with("list", "surfaces");
      case "to1", "to2" -> input.with("list", "points");
      default -> input;
    };
  }

  private Tag sort(Pencil.Row row) {
    Tag select = Tag.of("select").add(Tag.of("option", "–").with("value", ""));
    for (Landmark.Kind one : Landmark.Kind.values()) {
      String code = code(one);
      Tag option = Tag.of("option", phrases.say("walk.js.kind." + code)).with("value", code);
      select.add(row.text("kind").equals(code) ? option.with("selected", "") : option);
    }
    return select;
  }

  private Tag orders(Pencil pencil) {
    Tag orders = Tag.of("div").with("class", "orders");
    orders.add(
        Forms.submit(phrases.say("pencil.keep"))
            .with("id", "keep")
            .with("name", "keep")
            .with("value", "yes"));
    if (pencil.to() < Pencil.SHEETS) {
      orders.add(
          Tag.of("button", phrases.say("pencil.more"))
              .with("class", "button second")
              .with("type", "submit")
              .with("name", "more")
              .with("value", "yes"));
    }
    return orders;
  }

  /** Every kind by name; beside it its letter, which does as well. */
  private Tag kinds() {
    Tag list = Tag.of("datalist").with("id", "kinds");
    for (Catalogue.Kind kind : Bundled.catalogue().kinds()) {
      String letter = PencilWords.letter(kind);
      Tag option = Tag.of("option").with("value", phrases.kind(kind.id()));
      list.add(
          letter.isEmpty() ? option : option.with("label", letter).with("data-letter", letter));
    }
    return list;
  }

  private static Tag choices(String id, Stream<String> says) {
    Tag list = Tag.of("datalist").with("id", id);
    says.forEach(one -> list.add(Tag.of("option").with("value", one)));
    return list;
  }

  /** What a sheet that is kept says; the script then forgets what the browser held of it. */
  static Tag kept(Phrases phrases, UUID visit, String told) {
    return Parts.paragraph("sending kept", phrases.say("pencil.all_kept", told))
        .with("role", "status")
        .with("data-kept-visit", visit.toString());
  }
}
