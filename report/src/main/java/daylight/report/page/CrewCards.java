package daylight.report.page;

import daylight.line.measure.Argument;
import daylight.report.draw.DigSketch;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The door for the cards of those who dig: one sheet for each place, which stands for itself. */
public final class CrewCards {
  /** As a height of sketches: there are none. */
  public static final double NO_SKETCH = 0;

  /** So high a sketch is where there is room, points. */
  public static final double SKETCH = 300;

  private static final Set<String> SHOWN = Set.of("part of-spot", "part of-depth");

  private CrewCards() {}

  /** The cards of a subject, without sketches. */
  public static Edition of(Subject subject, Sender sender) {
    return of(subject, sender, List.of());
  }

  /** How many cards there are. */
  public static int count(Subject subject) {
    return new DigCards(subject).cards("h2").size();
  }

  /** The same with a sketch of the spot on each card, so high each, points. */
  public static Edition of(Subject subject, Sender sender, List<Double> sketches) {
    Words words = subject.words();
    Head head = new Head(subject, sender);
    DigCards cards = new DigCards(subject);
    Tag main = Tag.of("main").with("class", "crew");
    List<DigCards.Card> all = cards.cards("h2");
    for (int i = 0; i < all.size(); i++) {
      DigCards.Card card = all.get(i);
      double height = i < sketches.size() ? sketches.get(i) : NO_SKETCH;
      // Whoever holds a card by itself reads first whether anybody may dig at all.
      Tag sheet =
          Tag.of("article")
              .with("class", (i == 0 ? "dig" : "dig next") + (height > NO_SKETCH ? " close" : ""))
              .with("aria-labelledby", card.id())
              .addAll(card.first())
              .add(Tag.of(i == 0 ? "h1" : "p", subject.book().site().name()).with("class", "site"))
              .addAll(head.place())
              .add(card.title())
              .addAll(rest(subject, card, height));
      head.signature().ifPresent(sheet::add);
      main.add(sheet);
    }
    if (all.isEmpty()) {
      main.addAll(head.stops()).add(head.header()).addAll(cards.told("h2"));
    } else {
      cards.more().ifPresent(main::add);
    }
    return new Edition(
        subject,
        sender,
        words.say("report.crew.title", new Argument.Text(subject.book().site().name())),
        words.word("report.crew.about"),
        main);
  }

  /** What the sketch shows stands beside it. */
  private static List<Tag> rest(Subject subject, DigCards.Card card, double height) {
    if (card.target() == null || height <= NO_SKETCH) {
      return card.rest();
    }
    Tag shown = Tag.of("div").with("class", "shown");
    Tag sketch =
        Tag.of("div")
            .with("class", "sketched")
            .add(DigSketch.draw(subject, card.target(), "sketch-" + card.id(), height));
    List<Tag> rest = new ArrayList<>();
    rest.add(Tag.of("div").with("class", "beside").add(shown, sketch));
    for (Tag part : card.rest()) {
      if (SHOWN.contains(part.value("class").orElse(""))) {
        shown.add(part);
      } else {
        rest.add(part);
      }
    }
    return rest;
  }
}
