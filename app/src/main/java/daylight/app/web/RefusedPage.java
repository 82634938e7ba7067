package daylight.app.web;

import daylight.line.measure.Argument;
import daylight.line.measure.Complaint;
import daylight.line.measure.Gravity;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.List;

/** A book that must be mended before it can be answered: what is wrong, and where. */
final class RefusedPage {
  private final Frame frame;
  private final Words words;
  private final Property property;
  private final List<Complaint> complaints;

  RefusedPage(int properties, Property property, Reading.Refused refused, Wish wish) {
    this.words = wish.words(property.settings(), refused.outcome().shown());
    this.frame = new Frame(words, properties).under(property.home()).as(wish);
    this.property = property;
    this.complaints = refused.outcome().complaints();
  }

  String write() {
    Tag header =
        Tag.of("header")
            .add(Tag.of("h1", property.title()))
            .addAll(Pieces.place(property))
            .add(
                Pieces.paragraph(
                    "lead", words.say("web.refused", new Argument.Count(count(Gravity.STOPS)))));
    Tag stops = Pieces.section("mend", words.word("web.refused.mend"));
    stops.add(Pieces.list(said(true)));
    return frame.write(
        property.title(),
        count(Gravity.STOPS) == complaints.size()
            ? List.of(header, stops)
            : List.of(
                header,
                stops,
                Pieces.section("notes", words.word("web.refused.notes"))
                    .add(Pieces.list(said(false)))));
  }

  private long count(Gravity gravity) {
    return complaints.stream().filter(one -> one.code().gravity() == gravity).count();
  }

  private List<String> said(boolean stopping) {
    return complaints.stream()
        .filter(one -> stopping == (one.code().gravity() == Gravity.STOPS))
        .map(words::complaint)
        .toList();
  }
}
