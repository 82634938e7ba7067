package daylight.app.field;

import daylight.line.answer.Caution;
import daylight.line.book.FieldBook;
import daylight.line.book.Reach;
import daylight.line.measure.Print;
import daylight.report.markup.Tag;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What to know before one goes to a site; only what the book holds, and what follows from it. */
final class BeforeYouGo {
  /** What can hurt somebody on any visit. */
  static final List<Caution> CAUTIONS =
      List.of(
          Caution.SEWAGE,
          Caution.GAS,
          Caution.CONFINED_SPACE,
          Caution.ELECTRICITY,
          Caution.NOTIFY_BEFORE_DIGGING,
          Caution.LOCATES_APPROXIMATE,
          Caution.LOCAL_CODES);

  /** What goes into the truck: common practice, no source. */
  private static final List<String> KIT =
      List.of(
          "camera",
          "skids",
          "receiver",
          "batteries",
          "cover",
          "tapes",
          "rod",
          "marks",
          "gloves",
          "gas",
          "light",
          "water",
          "dye",
          "sheet");

  private final Caller caller;
  private final Phrases phrases;
  private final BookNow book;
  private final BookNow.Row visit;
  private final @Nullable FieldBook read;

  /**
   * @param read the book as its reader understands it; null where it does not
   */
  BeforeYouGo(Caller caller, BookNow book, BookNow.Row visit, @Nullable FieldBook read) {
    this.caller = caller;
    this.phrases = caller.phrases();
    this.book = book;
    this.visit = visit;
    this.read = read;
  }

  List<Tag> told(Trouble trouble) {
    PaperForms papers = new PaperForms(caller, book, visit, trouble);
    return List.of(earlier(), pipes(), papers.tickets(), papers.consents(), cautions(), kit());
  }

  private Tag earlier() {
    Tag section = Parts.section("earlier", phrases.say("before.earlier"));
    Map<String, Long> kinds = Earlier.kinds(book, visit);
    if (kinds.isEmpty()) {
      return section.add(Parts.paragraph("empty", phrases.say("before.earlier.none")));
    }
    return section.add(
        Parts.list(
            "plain",
            kinds.entrySet().stream()
                .sorted(
                    Map.Entry.<String, Long>comparingByValue(Comparator.reverseOrder())
                        .thenComparing(Map.Entry.comparingByKey()))
                .map(
                    one ->
                        Tag.of(
                            "li",
                            phrases.say("before.seen", phrases.kind(one.getKey()), one.getValue())))
                .toList()));
  }

  private Tag pipes() {
    Tag section = Parts.section("pipes", phrases.say("before.pipes"));
    List<Tag> ways =
        book.in("nodes")
            .filter(node -> node.text("kind").filter("access"::equals).isPresent())
            .map(
                node ->
                    Tag.of(
                        "li",
                        node.text("what")
                            .map(what -> phrases.say("named", node.label(), what))
                            .orElse(node.label())))
            .toList();
    section.add(Tag.of("h3", phrases.say("before.access")));
    section.add(
        ways.isEmpty()
            ? Parts.paragraph("empty", phrases.say("before.access.none"))
            : Parts.list("plain", ways));
    List<Reach> reaches = read == null ? List.of() : read.site().reaches();
    if (reaches.isEmpty()) {
      return section.add(Parts.paragraph("empty", phrases.say("before.pipes.none")));
    }
    Tag body = Tag.of("tbody");
    reaches.forEach(reach -> body.add(row(reach)));
    Tag head = Tag.of("tr");
    for (String column : List.of("reach", "bore", "head")) {
      head.add(Tag.of("th", phrases.say("before.column." + column)).with("scope", "col"));
    }
    return section
        .add(
            Tag.of("table")
                .add(Tag.of("caption", phrases.say("before.head.caption")))
                .add(Tag.of("thead").add(head))
                .add(body))
        .add(Parts.paragraph("quiet", phrases.say("before.head.source")));
  }

  private Tag row(Reach reach) {
    Tag row =
        Tag.of("tr")
            .add(
                Tag.of(
                        "th",
                        phrases.say("named", reach.id().label(), reach.from() + " – " + reach.to()))
                    .with("scope", "row"));
    return reach.bore() == null
        ? row.add(Tag.of("td", phrases.say("before.bore.unknown")))
            .add(Tag.of("td", phrases.say("before.bore.measure")))
        : row.add(
                Tag.of(
                    "td", phrases.figure(Print.bore(reach.bore().value(), caller.look().shown()))))
            .add(
                Tag.of(
                    "td", HeadAdvice.told(reach.bore().value(), caller.look().shown(), phrases)));
  }

  private Tag cautions() {
    return Parts.section("cautions", phrases.say("before.cautions"))
        .with("class", "care")
        .add(
            Parts.list(
                "plain",
                CAUTIONS.stream().map(one -> Tag.of("li", phrases.say(one.key()))).toList()));
  }

  /** Ticked in this browser only: what is in the truck is no part of the record. */
  private Tag kit() {
    Tag section = Parts.section("kit", phrases.say("before.kit"));
    List<Tag> ticks = new ArrayList<>();
    for (String one : KIT) {
      String id = "kit-" + one;
      ticks.add(
          Tag.of("div")
              .with("class", "tick")
              .add(Tag.of("input").with("type", "checkbox").with("id", id))
              .add(Tag.of("label", phrases.say("before.kit." + one)).with("for", id)));
    }
    return section
        .add(Parts.paragraph("quiet", phrases.say("before.kit.why")))
        .add(
            Tag.of("div")
                .with("class", "ticks")
                .with("data-ticks", visit.entry().toString())
                .addAll(ticks));
  }
}
