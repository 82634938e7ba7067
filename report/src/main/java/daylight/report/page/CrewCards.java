package daylight.report.page;

import daylight.line.measure.Argument;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.List;

/** The door for the cards of those who dig: one sheet for each place, which stands for itself. */
public final class CrewCards {
  private CrewCards() {}

  /** The cards of a subject. */
  public static Edition of(Subject subject, Sender sender) {
    Words words = subject.words();
    Head head = new Head(subject, sender);
    DigCards cards = new DigCards(subject);
    Tag main = Tag.of("main").with("class", "crew");
    List<DigCards.Card> all = cards.cards("h2");
    for (int i = 0; i < all.size(); i++) {
      DigCards.Card card = all.get(i);
      // Whoever holds a card by itself reads first whether anybody may dig at all.
      Tag sheet =
          Tag.of("article")
              .with("class", i == 0 ? "dig" : "dig next")
              .with("aria-labelledby", card.id())
              .addAll(card.first())
              .add(Tag.of(i == 0 ? "h1" : "p", subject.book().site().name()).with("class", "site"))
              .addAll(head.place())
              .add(card.title())
              .addAll(card.rest());
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
}
