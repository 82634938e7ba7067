package daylight.app.field;

import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.archive.store.Entered;
import daylight.report.markup.Tag;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * How a push begins: where the camera goes in, along which reach, which head, what the counter
 * reads there. What the book does not know yet is begun with it: a way in, and a reach to an end
 * that nobody has seen.
 *
 * @param ids of the pass and of what may be begun with it, so that a form sent twice begins once
 */
record PushForm(
    Ids ids, String entry, String what, String reach, String bore, String head, String zero) {
  private static final String NEW = "new";
  private static final List<String> HEADS = List.of("self-righting", "set", "unknown");

  /** Identities of the pass, a new way in, a new reach and its far end. */
  record Ids(UUID pass, UUID node, UUID reach, UUID end) {}

  static PushForm fresh() {
    Ids ids = new Ids(UUID.randomUUID(), UUID.randomUUID(), UUID.randomUUID(), UUID.randomUUID());
    return new PushForm(ids, "", "", "", "", "self-righting", "0");
  }

  static PushForm read(Context request) {
    return new PushForm(
        new Ids(
            id(request, "pass"), id(request, "node"), id(request, "newreach"), id(request, "end")),
        given(request, "entry"),
        given(request, "what"),
        given(request, "reach"),
        given(request, "bore"),
        given(request, "head"),
        given(request, "zero"));
  }

  /** The same with another reading of the counter at the mouth. */
  PushForm with(String reads) {
    return new PushForm(ids, entry, what, reach, bore, head, reads);
  }

  private static UUID id(Context request, String name) {
    return Office.id(given(request, name)).orElseGet(UUID::randomUUID);
  }

  private static String given(Context request, String name) {
    return Objects.requireNonNullElse(request.formParam(name), "").strip();
  }

  UUID pass() {
    return ids.pass();
  }

  Tag form(Caller caller, String action, BookNow book, Trouble trouble) {
    return fill(Forms.form(caller, action), caller.phrases(), book, trouble)
        .add(Forms.submit(caller.say("push.begin.go")));
  }

  /** Puts its fields into a form; returns that. */
  Tag fill(Tag form, Phrases phrases, BookNow book, Trouble trouble) {
    form.add(Forms.hidden("pass", ids.pass().toString()))
        .add(Forms.hidden("node", ids.node().toString()))
        .add(Forms.hidden("newreach", ids.reach().toString()))
        .add(Forms.hidden("end", ids.end().toString()));
    Tag ways = Forms.choice("entry", options(phrases, book, "nodes", "entry"), chosenEntry(book));
    form.add(Forms.labelled("entry", phrases.say("push.entry"), ways, null, trouble.of("entry")));
    form.add(
        Forms.line(
            "what",
            phrases.say("push.what"),
            "text",
            what,
            phrases.say("push.what.hint"),
            trouble.of("what")));
    Tag reaches =
        Forms.choice("reach", options(phrases, book, "reaches", "reach"), chosenReach(book));
    form.add(
        Forms.labelled("reach", phrases.say("push.reach"), reaches, null, trouble.of("reach")));
    form.add(
        Forms.line(
            "bore",
            phrases.say("push.bore"),
            "text",
            bore,
            phrases.say("push.bore.hint"),
            trouble.of("bore")));
    List<Forms.Option> heads =
        HEADS.stream().map(one -> new Forms.Option(one, phrases.say("push.head." + one))).toList();
    form.add(
        Forms.labelled(
            "head",
            phrases.say("push.head"),
            Forms.choice("head", heads, head),
            null,
            trouble.of("head")));
    return form.add(
        Forms.line(
            "zero",
            phrases.say("push.zero"),
            "text",
            zero,
            phrases.say("push.zero.hint"),
            trouble.of("zero")));
  }

  private static List<Forms.Option> options(
      Phrases phrases, BookNow book, String section, String name) {
    return Stream.concat(
            book.in(section).map(row -> new Forms.Option(row.label(), said(row))),
            Stream.of(new Forms.Option(NEW, phrases.say("push." + name + ".new"))))
        .toList();
  }

  private static String said(BookNow.Row row) {
    return row.label()
        + row.text("what").map(what -> ", " + what).orElse("")
        + row.text("from").map(from -> ": " + from + " – ").orElse("")
        + row.text("to").orElse("");
  }

  private String chosenEntry(BookNow book) {
    return entry.isEmpty()
        ? book.in("nodes")
            .filter(row -> row.text("kind").filter("access"::equals).isPresent())
            .map(BookNow.Row::label)
            .findFirst()
            .orElse(NEW)
        : entry;
  }

  private String chosenReach(BookNow book) {
    String way = chosenEntry(book);
    return reach.isEmpty()
        ? book.in("reaches")
            .filter(row -> Stream.of("from", "to").anyMatch(end -> isAt(row, end, way)))
            .map(BookNow.Row::label)
            .findFirst()
            .orElse(NEW)
        : reach;
  }

  private static boolean isAt(BookNow.Row row, String end, String node) {
    return row.text(end).filter(node::equals).isPresent();
  }

  /** Everything that begins, in the order in which each names the one before. */
  List<Entered> entries(BookNow book, UUID site, UUID visit) {
    return entries(book, site, visit, 0, EntryJson.object());
  }

  /**
   * The same, where the pass may be there already.
   *
   * @param base the revision that the pass is written upon; 0 for a new one
   * @param more keys that the pass has besides; those without a value go
   */
  List<Entered> entries(BookNow book, UUID site, UUID visit, int base, ObjectNode more) {
    List<Entered> entries = new ArrayList<>();
    String way = entry;
    if (isNew(entry)) {
      way = label(book, ids.node(), "C");
      begin(entries, book, ids.node(), site, "nodes", node(way, "access", what));
    }
    String along = reach;
    if (isNew(reach)) {
      along = label(book, ids.reach(), "R");
      String far = label(book, ids.end(), "E");
      begin(entries, book, ids.end(), site, "nodes", node(far, "end", ""));
      ObjectNode keys = EntryJson.object().put("label", along).put("from", way).put("to", far);
      keys.put("bore", bore.isEmpty() ? null : bore);
      begin(entries, book, ids.reach(), site, "reaches", keys);
    }
    ObjectNode pass = book.find(ids.pass()).map(EntryJson::keys).orElseGet(EntryJson::object);
    pass.put("label", label(book, ids.pass(), "P"));
    pass.put("entry", way);
    if (!pass.has("walk")) {
      // Legs that were taken since are not forgotten.
      pass.putArray("walk").add(along);
    }
    ObjectNode reads = pass.putObject("zero");
    if (zero.isEmpty()) {
      reads.put("unknown", "not read");
    } else {
      reads.put("reads", zero);
    }
    pass.put("head", head.isEmpty() ? "unknown" : head);
    pass.setAll(more);
    entries.add(EntryJson.changed(ids.pass(), visit, "passes", base, pass));
    return entries;
  }

  private static boolean isNew(String chosen) {
    return chosen.isEmpty() || chosen.equals(NEW);
  }

  private static ObjectNode node(String label, String kind, String what) {
    ObjectNode keys = EntryJson.object().put("label", label).put("kind", kind);
    return keys.put("what", what.isEmpty() ? null : what);
  }

  /**
   * What an earlier try began already is upon its last number; the same is written no second time.
   */
  private static void begin(
      List<Entered> entries,
      BookNow book,
      UUID entry,
      UUID parent,
      String section,
      ObjectNode keys) {
    int base = book.find(entry).map(BookNow.Row::number).orElse(0);
    entries.add(EntryJson.changed(entry, parent, section, base, keys));
  }

  /** The label that an entry has, or the next free one of that letter. */
  static String label(BookNow book, @Nullable UUID entry, String letter) {
    return book.rows().stream()
        .filter(row -> row.entry().equals(entry))
        .flatMap(row -> row.text("label").stream())
        .findFirst()
        .orElseGet(() -> letter + (1 + last(book, letter)));
  }

  private static int last(BookNow book, String letter) {
    String form = letter.toUpperCase(Locale.ROOT) + "\\d{1,6}";
    return book.rows().stream()
        .flatMap(row -> row.text("label").stream())
        .filter(label -> label.matches(form))
        .mapToInt(label -> Integer.parseInt(label.substring(letter.length())))
        .max()
        .orElse(0);
  }
}
