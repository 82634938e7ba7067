package daylight.report.page;

import daylight.line.book.Catalogue;
import daylight.line.book.Letterhead;
import daylight.line.course.PlacedFinding;
import daylight.line.measure.Argument;
import daylight.line.urgency.HowSoon;
import daylight.report.draw.Captions;
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

  private record Task(PlacedFinding placed, HowSoon how, String when) {}

  ToDo(Subject subject, Sender sender) {
    this.subject = subject;
    this.letterhead = sender.letterhead();
    this.words = subject.words();
    SoonWords soon = new SoonWords(words);
    List<Task> all = new ArrayList<>();
    for (PlacedFinding placed : Captions.findings(subject)) {
      HowSoon how = subject.rules().howSoon(placed, subject.book(), subject.line());
      soon.say(how).ifPresent(when -> all.add(new Task(placed, how, when)));
    }
    // Those that are as urgent keep their order along the drain.
    all.sort(Comparator.comparingInt(task -> task.how().rank()));
    this.tasks = List.copyOf(all);
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
        new ArrayList<>(
            List.of(work(task), said.where(task.placed()), Words.capitalised(task.when())));
    if (priced) {
      cells.add(estimate(task).orElse(Html.EMPTY));
    }
    return Html.row(cells);
  }

  private String work(Task task) {
    String kind = task.placed().finding().kind();
    String what = words.kind(kind) + " (" + task.placed().finding().label() + ")";
    return words.say("work." + act(task, kind), new Argument.Text(what));
  }

  private String act(Task task, String kind) {
    if (task.how() instanceof HowSoon.Stop) {
      return "stop";
    }
    if (task.how() instanceof HowSoon.CannotSay) {
      return "look";
    }
    boolean cleaned =
        subject.answers().digs().stream()
            .anyMatch(
                dig ->
                    dig.cleaned()
                        && dig.finding().finding().id().equals(task.placed().finding().id()));
    boolean structure =
        subject
            .rules()
            .catalogue()
            .find(kind)
            .filter(known -> known.bears() == Catalogue.Bears.STRUCTURE)
            .isPresent();
    if (kind.equals("standing-water")) {
      return "held";
    }
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
