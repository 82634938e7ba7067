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
    DigCards cards = new DigCards(subject);
    List<DigCards.Card> all = cards.cards("h2");
    Tag main = Tag.of("main").with("class", "crew");
    for (int i = 0; i < all.size(); i++) {
      main.add(
          sheet(subject, sender, all.get(i), i, i < sketches.size() ? sketches.get(i) : NO_SKETCH));
    }
    if (all.isEmpty()) {
      Head head = new Head(subject, sender);
      main.addAll(head.stops()).add(head.header()).addAll(cards.told("h2"));
    } else {
      cards.more().ifPresent(main::add);
    }
    return edition(subject, sender, main);
  }

  /**
   * One card alone, with a sketch so high, points: whether it has room for that.
   *
   * @param index of the card, from 0
   */
  public static Edition one(Subject subject, Sender sender, int index, double height) {
    DigCards cards = new DigCards(subject);
    List<DigCards.Card> all = cards.cards("h2");
    Tag main =
        Tag.of("main").with("class", "crew").add(sheet(subject, sender, all.get(index), 0, height));
    if (index == all.size() - 1) {
      cards.more().ifPresent(main::add);
    }
    return edition(subject, sender, main);
  }

  private static Tag sheet(
      Subject subject, Sender sender, DigCards.Card card, int index, double height) {
    Head head = new Head(subject, sender);
    String next = index == 0 ? "dig" : "dig next";
    // Whoever holds a card by itself reads first whether anybody may dig at all.
    Tag sheet =
        Tag.of("article")
            .with("class", height > NO_SKETCH ? next + " close" : next)
            .with("aria-labelledby", card.id())
            .addAll(card.first())
            .add(
                Tag.of(index == 0 ? "h1" : "p", subject.book().site().name()).with("class", "site"))
            .addAll(head.place())
            .add(card.title())
            .addAll(rest(subject, card, height));
    head.signature().ifPresent(sheet::add);
    return sheet;
  }

  private static Edition edition(Subject subject, Sender sender, Tag main) {
    Words words = subject.words();
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
