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
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A card for each place where the ground may have to be opened, to be taken along by itself: the
 * ticket first, the cautions last.
 */
public final class DigCards {
  /** A line with more to do is not dug up place by place; the others are told, without a card. */
  private static final int MOST = 8;

  /** What says whether anybody may dig at all. */
  private static final Set<DigWords.About> FIRST =
      EnumSet.of(DigWords.About.STOP, DigWords.About.TICKET);

  private final Subject subject;
  private final Words words;

  public DigCards(Subject subject) {
    this.subject = subject;
    this.words = subject.words();
  }

  Tag section() {
    Tag section = Html.section("digs", words.word("report.digs"));
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
    cards(rank).forEach(card -> told.add(card.whole()));
    more().ifPresent(told::add);
    return told;
  }

  /**
   * A card in its parts.
   *
   * @param id of its title
   * @param first whether anybody may dig at all: this goes before all else
   * @param title what one would dig for, and where
   * @param rest where to find it, how deep, what to mind
   * @param target of which a sketch can be drawn; null where it is not known where to dig
   */
  record Card(String id, List<Tag> first, Tag title, List<Tag> rest, @Nullable DigTarget target) {
    Card {
      first = List.copyOf(first);
      rest = List.copyOf(rest);
    }

    Tag whole() {
      return Tag.of("article")
          .with("class", "dig")
          .with("aria-labelledby", id)
          .addAll(first)
          .add(title)
          .addAll(rest);
    }
  }

  /**
   * The cards, in the order of the work.
   *
   * @param rank of the heading of a card, such as {@code h3}
   */
  List<Card> cards(String rank) {
    return digs().stream().limit(MOST).map(dig -> card(dig, rank)).toList();
  }

  /** How many places have no card here; empty where every one has. */
  Optional<Tag> more() {
    int more = digs().size() - MOST;
    return more <= 0
        ? Optional.empty()
        : Optional.of(Tag.of("p", words.say("report.digs.more", new Argument.Count(more))));
  }

  /** Nobody digs for what a cleaning takes away. */
  private List<DigPlace> digs() {
    return subject.answers().digs().stream().filter(dig -> !dig.cleaned()).toList();
  }

  private Card card(DigPlace dig, String rank) {
    FindingWords said = new FindingWords(words, subject.rules().catalogue(), subject::distance);
    String label = dig.finding().finding().label();
    String id = "dig-" + dig.finding().finding().id().uuid();
    Tag title =
        Tag.of(
                rank,
                words.say(
                    "report.dig.title",
                    new Argument.Label(label),
                    new Argument.Text(said.what(dig.finding())),
                    new Argument.Text(said.where(dig.finding()))))
            .with("id", id);
    return switch (dig.dig()) {
      case DigTarget target -> {
        List<DigWords.Row> rows = rows(target);
        List<Tag> first =
            rows.stream().filter(row -> FIRST.contains(row.about())).map(this::ticket).toList();
        yield new Card(id, first, title, parts(rows, below(rank)), target);
      }
      case Dig.Unknown(var missing) ->
          new Card(
              id,
              List.of(ticket(DigWords.of(dig.ticket()))),
              title,
              List.of(Tag.of("p", words.say(missing))),
              null);
    };
  }

  private List<DigWords.Row> rows(DigTarget target) {
    return DigWords.of(
        target,
        subject.line(),
        subject.book().site(),
        subject.answers().stops(),
        subject.rules().limits().dig());
  }

  private List<Tag> parts(List<DigWords.Row> rows, String rank) {
    List<Tag> parts = new ArrayList<>();
    for (DigWords.About about : DigWords.About.values()) {
      List<DigWords.Row> mine = rows.stream().filter(row -> row.about() == about).toList();
      if (!FIRST.contains(about) && !mine.isEmpty()) {
        parts.add(part(about.name().toLowerCase(Locale.ROOT), mine, rank));
      }
    }
    return parts;
  }

  /** The heading one step further down. */
  private static String below(String rank) {
    return "h" + (rank.charAt(1) - '0' + 1);
  }

  private Tag part(String about, List<DigWords.Row> rows, String rank) {
    return Tag.of("div")
        .with("class", "part of-" + about)
        .add(Tag.of(rank, words.word("report.dig." + about)))
        .add(Tag.of("div").add(Html.list(rows.stream().map(this::say).toList())));
  }

  private Tag ticket(DigWords.Row row) {
    return Tag.of("p", say(row)).with("class", row.doubt() ? "ticket no" : "ticket");
  }

  private String say(DigWords.Row row) {
    return words.say(row.key(), row.arguments().toArray(Argument[]::new));
  }
}
