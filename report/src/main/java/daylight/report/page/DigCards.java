package daylight.report.page;

import daylight.line.answer.DigPlace;
import daylight.line.dig.Dig;
import daylight.line.dig.DigTarget;
import daylight.line.measure.Argument;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.words.DigWords;
import daylight.report.words.FindingWords;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A card for each place where the ground may have to be opened, to be taken along by itself: the
 * ticket first, the cautions last.
 */
public final class DigCards {
  /** A line with more to do is not dug up place by place; the others are told, without a card. */
  private static final int MOST = 8;

  private final Subject subject;
  private final Words words;

  public DigCards(Subject subject) {
    this.subject = subject;
    this.words = subject.words();
  }

  Tag section() {
    Tag section = Html.section("digs", words.word("report.digs"));
    // On paper a card keeps together and would leave the heading behind.
    return (digs().isEmpty() ? section : section.with("class", "cards")).addAll(told("h3"));
  }

  /**
   * What the cards are for, and the cards.
   *
   * @param rank of the heading of a card, such as {@code h3}
   */
  public List<Tag> told(String rank) {
    List<DigPlace> digs = digs();
    List<Tag> told = new ArrayList<>();
    boolean stopped = !subject.answers().stops().isEmpty();
    if (digs.isEmpty()) {
      told.add(Tag.of("p", words.word(stopped ? "report.digs.stopped" : "report.digs.none")));
      return told;
    }
    told.add(Tag.of("p", words.word("report.digs.for")));
    digs.stream().limit(MOST).forEach(dig -> told.add(card(dig, rank)));
    if (digs.size() > MOST) {
      told.add(Tag.of("p", words.say("report.digs.more", new Argument.Count(digs.size() - MOST))));
    }
    return told;
  }

  /** Nobody digs for what a cleaning takes away. */
  private List<DigPlace> digs() {
    return subject.answers().digs().stream().filter(dig -> !dig.cleaned()).toList();
  }

  private Tag card(DigPlace dig, String rank) {
    FindingWords said = new FindingWords(words, subject.rules().catalogue(), subject::distance);
    Tag card =
        Tag.of("article")
            .with("class", "dig")
            .add(
                Tag.of(
                    rank,
                    words.say(
                        "report.dig.title",
                        new Argument.Label(dig.finding().finding().label()),
                        new Argument.Text(said.what(dig.finding())),
                        new Argument.Text(said.where(dig.finding())))));
    return switch (dig.dig()) {
      case DigTarget target -> card.addAll(rows(target));
      case Dig.Unknown(var missing) ->
          card.add(ticket(DigWords.of(dig.ticket())), Tag.of("p", words.say(missing)));
    };
  }

  private List<Tag> rows(DigTarget target) {
    List<DigWords.Row> rows =
        DigWords.of(
            target,
            subject.line(),
            subject.book().site(),
            subject.answers().stops(),
            subject.rules().limits().dig());
    List<Tag> tags = new ArrayList<>();
    for (DigWords.About about : DigWords.About.values()) {
      List<DigWords.Row> mine = rows.stream().filter(row -> row.about() == about).toList();
      switch (about) {
        case STOP, TICKET -> mine.forEach(row -> tags.add(ticket(row)));
        default -> {
          if (!mine.isEmpty()) {
            tags.add(part(about.name().toLowerCase(Locale.ROOT), mine));
          }
        }
      }
    }
    return tags;
  }

  private Tag part(String about, List<DigWords.Row> rows) {
    return Tag.of("div")
        .with("class", "part of-" + about)
        .add(Tag.of("h4", words.word("report.dig." + about)))
        .add(Tag.of("div").add(Html.list(rows.stream().map(this::say).toList())));
  }

  private Tag ticket(DigWords.Row row) {
    return Tag.of("p", say(row)).with("class", row.doubt() ? "ticket no" : "ticket");
  }

  private String say(DigWords.Row row) {
    return words.say(row.key(), row.arguments().toArray(Argument[]::new));
  }
}
