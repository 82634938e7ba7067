package daylight.report.page;

import daylight.line.answer.FollowUp;
import daylight.line.answer.FollowUps;
import daylight.line.book.Catalogue;
import daylight.line.book.Id;
import daylight.line.book.Letterhead;
import daylight.line.course.PlacedFinding;
import daylight.line.measure.Argument;
import daylight.line.urgency.HowSoon;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.words.FindingWords;
import daylight.report.words.SoonWords;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What is to be done about what was found, the soonest first, with what such work usually costs.
 */
final class ToDo {
  static final int ALL = Integer.MAX_VALUE;

  private final Subject subject;
  private final Letterhead letterhead;
  private final Words words;
  private final List<Task> tasks;

  private record Task(PlacedFinding placed, HowSoon how, String act) {}

  ToDo(Subject subject, Sender sender) {
    this.subject = subject;
    this.letterhead = sender.letterhead();
    this.words = subject.words();
    List<Task> all = new ArrayList<>();
    for (FollowUp follow :
        FollowUps.of(subject.book(), subject.line(), subject.rules(), subject.answers())) {
      switch (follow.what()) {
        case FollowUp.What.Stop stop -> all.add(task(stop.finding(), "stop"));
        case FollowUp.What.Work work -> all.add(task(work.finding(), act(work)));
        case FollowUp.What.Look look ->
            look.watched().forEach(one -> all.add(task(one.finding(), "watch")));
        case FollowUp.What.Ticket _, FollowUp.What.Consent _ -> {}
      }
    }
    // As everywhere else: what is most urgent first, and of that the worse.
    all.sort(Comparator.comparingInt(task -> task.how().rank()));
    this.tasks = List.copyOf(all);
  }

  private Task task(PlacedFinding placed, String act) {
    return new Task(placed, subject.rules().howSoon(placed, subject.book(), subject.line()), act);
  }

  /**
   * The section.
   *
   * @param most so many are told one by one
   */
  Tag section(int most) {
    Tag section = Html.section("todo", words.word("report.todo"));
    if (tasks.isEmpty()) {
      return section.add(Tag.of("p", words.word("report.todo.none")));
    }
    List<Task> told = tasks.stream().limit(most).toList();
    boolean priced = told.stream().anyMatch(task -> estimate(task).isPresent());
    List<String> heads = new ArrayList<>(List.of("column.todo", "column.where", "column.urgency"));
    if (priced) {
      heads.add("column.estimate");
    }
    if (!told.isEmpty()) {
      section.add(
          Html.table(
              heads.stream().map(words::word).toList(),
              told.stream().map(task -> row(task, priced)).toList()));
    }
    if (told.size() < tasks.size()) {
      Argument more = new Argument.Count(tasks.size() - told.size());
      section.add(
          Tag.of("p", words.say(told.isEmpty() ? "report.todo.all" : "report.todo.more", more)));
    }
    return priced
        ? section.add(Tag.of("p", words.word("report.todo.estimates")).with("class", "quiet"))
        : section;
  }

  private List<Tag> row(Task task, boolean priced) {
    FindingWords said = new FindingWords(words, subject.rules().catalogue(), subject::distance);
    List<String> cells =
        new ArrayList<>(List.of(work(task), said.where(task.placed()), when(task)));
    if (priced) {
      cells.add(estimate(task).orElse(Html.EMPTY));
    }
    return Html.row(cells);
  }

  private String when(Task task) {
    return new SoonWords(words).say(task.how()).map(Words::capitalised).orElse(Html.EMPTY);
  }

  private String work(Task task) {
    String kind = task.placed().finding().kind();
    String what = words.kind(kind) + " (" + task.placed().finding().label() + ")";
    return words.say("work." + task.act(), new Argument.Text(what));
  }

  private String act(FollowUp.What.Work work) {
    if (work.how() instanceof HowSoon.CannotSay) {
      return "look";
    }
    Id finding = work.finding().finding().id();
    boolean cleaned =
        subject.answers().digs().stream()
            .anyMatch(dig -> dig.cleaned() && dig.finding().finding().id().equals(finding));
    boolean structure =
        subject
            .rules()
            .catalogue()
            .find(work.finding().finding().kind())
            .filter(known -> known.bears() == Catalogue.Bears.STRUCTURE)
            .isPresent();
    return cleaned ? "clean" : structure ? "mend" : "clear";
  }

  private Optional<String> estimate(Task task) {
    return letterhead
        .price(task.placed().finding().kind())
        .map(
            price ->
                words.say(
                    "report.todo.estimate",
                    new Argument.Text(price.what()),
                    new Argument.Number(price.from()),
                    new Argument.Number(price.to()),
                    new Argument.Text(letterhead.money())));
  }
}
