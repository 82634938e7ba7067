package daylight.report.words;

import daylight.line.answer.Caution;
import daylight.line.answer.DigPlace;
import daylight.line.answer.FollowUp;
import daylight.line.answer.FollowUp.Due;
import daylight.line.answer.FollowUp.Reason;
import daylight.line.answer.FollowUp.Spot;
import daylight.line.answer.FollowUp.What;
import daylight.line.answer.Rules;
import daylight.line.answer.SoonKey;
import daylight.line.book.FieldBook;
import daylight.line.book.Papers;
import daylight.line.book.Reach;
import daylight.line.course.Line;
import daylight.line.course.PlacedFinding;
import daylight.line.dig.Dig;
import daylight.line.dig.DigTarget;
import daylight.line.measure.Argument;
import daylight.line.measure.Measured;
import daylight.line.measure.Statement;
import daylight.line.urgency.HowSoon;
import daylight.line.urgency.TimeLimits;
import daylight.line.urgency.Urgency;
import java.time.Period;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Says what there is to come back to: in one line, and in the sentences that go with it. */
public final class FollowUpWords {
  private static final Set<DigWords.About> WHERE_TO_DIG =
      EnumSet.of(DigWords.About.TICKET, DigWords.About.SPOT, DigWords.About.DEPTH);

  private final Words words;
  private final FieldBook book;
  private final Line line;
  private final Rules rules;

  public FollowUpWords(Words words, FieldBook book, Line line, Rules rules) {
    this.words = words;
    this.book = book;
    this.line = line;
    this.rules = rules;
  }

  /** What, in one line, without the site and the day. */
  public String summary(FollowUp follow) {
    String said =
        switch (follow.what()) {
          case What.Stop(var placed, var spot) ->
              words.say("follow.summary.stop", at(placed, spot));
          case What.Work work -> {
            String soon = new SoonWords(words).say(work.how()).orElse("");
            Argument[] at = at(work.finding(), work.spot());
            yield words.say("follow.summary.work", at[0], at[1], at[2], text(soon));
          }
          case What.Look look ->
              words.say("follow.summary.look", new Argument.Label(String.valueOf(follow.line())));
          case What.Ticket(var ticket) -> words.say("follow.summary.ticket", text(ticket.number()));
          case What.Consent(var consent) ->
              words.say("follow.summary.consent", text(consent.who()), text(consent.what()));
        };
    return follow.stopped() && !(follow.what() instanceof What.Stop)
        ? words.named(words.word("report.stop"), said)
        : said;
  }

  /**
   * Everything to be said of it, sentence by sentence: the stop order first, the cautions last.
   *
   * @param undated what of the same line has no day and is told where the line is looked at again
   */
  public List<String> sentences(FollowUp follow, List<FollowUp> undated) {
    List<String> said = new ArrayList<>();
    if (follow.stopped()) {
      said.add(words.word("report.stop") + ". " + words.word("report.stop.do"));
    }
    if (book.site().invented()) {
      said.add(words.word("report.invented"));
    }
    if (follow.line() != null) {
      said.add(words.say("follow.line", new Argument.Label(follow.line())));
    }
    switch (follow.what()) {
      case What.Stop(var placed, var spot) -> place(said, placed, spot);
      case What.Work work -> work(said, work, follow);
      case What.Look look -> look(said, look, undated);
      case What.Ticket(var ticket) -> said.add(words.say("follow.ticket", text(ticket.number())));
      case What.Consent(var consent) -> {
        said.add(words.say("follow.consent", text(consent.who()), text(consent.what())));
        if (consent.signature() == null) {
          said.add(words.word("follow.unsigned"));
        }
      }
    }
    if (!(follow.what() instanceof What.Consent)) {
      said.add(words.word(Caution.LOCAL_CODES));
    }
    return said;
  }

  private Argument[] at(PlacedFinding placed, Spot spot) {
    return new Argument[] {
      new Argument.Term("kind." + placed.finding().kind()),
      new Argument.Length(spot.station()),
      text(spot.from())
    };
  }

  private static Argument text(String text) {
    return new Argument.Text(text);
  }

  /** Where it is, and how well that is known. */
  private void place(List<String> said, PlacedFinding placed, Spot spot) {
    said.add(words.say("report.stop.what", at(placed, spot)));
    if (placed.sd() > 0) {
      Measured far = new Measured(spot.station(), placed.sd());
      said.add(words.say("follow.place", new Argument.UncertainLength(far)));
    }
  }

  private void work(List<String> said, What.Work work, FollowUp follow) {
    place(said, work.finding(), work.spot());
    switch (follow.due()) {
      case Due.On on -> {
        why(said, work);
        by(said, on);
      }
      case Due.Open(var why) -> said.add(words.say("follow.open", new Argument.Term(why.key())));
    }
    if (work.dig() != null) {
      dig(said, work.dig());
    }
    boolean storm =
        book.site()
            .findReach(work.finding().from().reach())
            .filter(reach -> reach.use() == Reach.Use.STORM)
            .isPresent();
    if (!storm) {
      said.add(words.word(Caution.SEWAGE));
    }
    declined(said);
  }

  private void why(List<String> said, What.Work work) {
    if (work.how() instanceof HowSoon.Listed) {
      Statement listed = Statement.of(SoonKey.LISTED, new Argument.Term(Urgency.AT_ONCE.key()));
      said.add(words.say("follow.how", new Argument.Said(listed)));
    }
    if (work.how() instanceof HowSoon.Ruled ruled) {
      Statement row =
          Statement.of(
              SoonKey.RULED,
              new Argument.Term(ruled.urgency().key()),
              new Argument.Number(ruled.grade().number()),
              new Argument.Term(ruled.grade().key()),
              new Argument.Term(ruled.consequence().key()));
      said.add(words.say("follow.how", new Argument.Said(row)));
      if (work.atWorst() != null) {
        said.add(
            words.say(
                "follow.perhaps",
                new Argument.Day(work.atWorst()),
                new Argument.Term(ruled.unknown().getFirst().key())));
      }
    }
  }

  private void by(List<String> said, Due.On on) {
    TimeLimits.Limit limit = on.limit();
    if (limit == null) {
      return;
    }
    Argument table = text(rules.urgency().id());
    Argument mark = new Argument.Term(limit.mark().key());
    said.add(
        limit.time().isZero()
            ? words.say("follow.now", table, mark)
            : words.say(
                "follow.by", new Argument.Day(on.day()), text(time(limit.time())), table, mark));
  }

  /** A length of time as one writes it. */
  private String time(Period time) {
    int weeks = time.getDays() / 7;
    if (weeks > 0 && time.getDays() % 7 == 0) {
      return words.say("follow.weeks", new Argument.Count(weeks));
    }
    if (time.getYears() > 0) {
      return words.say("follow.years", new Argument.Count(time.getYears()));
    }
    return time.getMonths() > 0
        ? words.say("follow.months", new Argument.Count(time.getMonths()))
        : words.say("follow.days", new Argument.Count(time.getDays()));
  }

  private void dig(List<String> said, DigPlace place) {
    switch (place.dig()) {
      case DigTarget target -> {
        DigWords.of(target, line, book.site(), List.of(), rules.limits().dig()).stream()
            .filter(row -> WHERE_TO_DIG.contains(row.about()))
            .forEach(row -> said.add(row(row)));
        said.add(words.word("follow.card"));
      }
      case Dig.Unknown(var missing) -> {
        said.add(row(DigWords.of(place.ticket())));
        said.add(words.say(missing));
      }
    }
    said.add(words.word(Caution.NOTIFY_BEFORE_DIGGING));
    said.add(words.word(Caution.HAND_DIG));
    said.add(words.word(Caution.LOCATES_APPROXIMATE));
  }

  private String row(DigWords.Row row) {
    return words.say(row.key(), row.arguments().toArray(Argument[]::new));
  }

  /** Nobody knows which finding was meant, so all that was declined is told with each. */
  private void declined(List<String> said) {
    List<String> declined =
        book.visits().stream()
            .flatMap(visit -> visit.papers().declined().stream())
            .map(Papers.Declined::what)
            .map(words::quoted)
            .toList();
    if (!declined.isEmpty()) {
      said.add(
          words.say("follow.declined", text(String.join(words.word("join.semicolon"), declined))));
    }
  }

  private void look(List<String> said, What.Look look, List<FollowUp> undated) {
    look.reasons().forEach(reason -> said.add(reason(reason)));
    if (!look.watched().isEmpty()) {
      List<String> items =
          look.watched().stream()
              .map(one -> words.say("follow.item", at(one.finding(), one.spot())))
              .toList();
      said.add(words.say("follow.watched", text(String.join(words.word("join.semicolon"), items))));
    }
    List<String> open =
        undated.stream()
            .map(FollowUp::what)
            .filter(What.Work.class::isInstance)
            .map(What.Work.class::cast)
            .map(work -> words.say("follow.item", at(work.finding(), work.spot())))
            .toList();
    if (!open.isEmpty()) {
      said.add(words.say("follow.undated", text(String.join(words.word("join.semicolon"), open))));
    }
  }

  /** Why a line is looked at again, and by when for that reason. */
  private String reason(Reason reason) {
    Argument why =
        new Argument.Term(
            reason.why() == Urgency.WATCH ? "follow.reason.watch" : reason.why().key());
    return switch (reason.due()) {
      case Due.On(var day, var limit) when limit != null ->
          words.say(
              "follow.reason",
              new Argument.Day(day),
              why,
              text(time(limit.time())),
              text(rules.urgency().id()),
              new Argument.Term(limit.mark().key()));
      case Due.On on -> throw new IllegalStateException("a look has its day by a rule: " + on);
      case Due.Open(var open) ->
          words.say("follow.reason.open", why, new Argument.Term(open.key()));
    };
  }
}
