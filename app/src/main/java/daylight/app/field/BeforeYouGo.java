package daylight.app.field;

import daylight.line.answer.Caution;
import daylight.report.markup.Tag;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** What to know before one goes to a site; only what the book holds, and what follows from it. */
final class BeforeYouGo {
  /** What can hurt somebody on any visit. */
  private static final List<Caution> CAUTIONS =
      List.of(
          Caution.SEWAGE,
          Caution.GAS,
          Caution.CONFINED_SPACE,
          Caution.ELECTRICITY,
          Caution.NOTIFY_BEFORE_DIGGING,
          Caution.LOCATES_APPROXIMATE,
          Caution.LOCAL_CODES);

  private final Phrases phrases;
  private final BookNow book;
  private final BookNow.Row visit;

  BeforeYouGo(Caller caller, BookNow book, BookNow.Row visit) {
    this.phrases = caller.phrases();
    this.book = book;
    this.visit = visit;
  }

  List<Tag> told() {
    List<Tag> told = new ArrayList<>();
    told.add(earlier());
    told.add(cautions());
    return told;
  }

  private Tag earlier() {
    Tag section = Parts.section("earlier", phrases.say("before.earlier"));
    Map<String, Long> kinds = Earlier.kinds(book, visit);
    if (kinds.isEmpty()) {
      return section.add(Parts.paragraph("empty", phrases.say("before.earlier.none")));
    }
    kinds.keySet().stream()
        .filter(Earlier::isDeadly)
        .sorted()
        .forEach(
            kind ->
                section.add(
                    Parts.paragraph("stop", phrases.say("before.stop", phrases.kind(kind)))));
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

  private Tag cautions() {
    return Parts.section("cautions", phrases.say("before.cautions"))
        .with("class", "care")
        .add(
            Parts.list(
                "plain",
                CAUTIONS.stream().map(one -> Tag.of("li", phrases.say(one.key()))).toList()));
  }
}
