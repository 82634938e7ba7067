package daylight.report.page;

import daylight.line.answer.Answer;
import daylight.line.answer.Answers;
import daylight.line.answer.Caution;
import daylight.line.answer.Opening;
import daylight.line.answer.State;
import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The page that an owner reads: the complaint and what is likeliest behind it, the seven answers in
 * a sentence each, what to do and how soon, and what to mind. It says nothing that the rest of the
 * report does not stand for.
 */
final class FirstPage {
  private final Subject subject;
  private final Words words;
  private final ToDo toDo;

  FirstPage(Subject subject, Sender sender) {
    this.subject = subject;
    this.words = subject.words();
    this.toDo = new ToDo(subject, sender);
  }

  /**
   * All of it, without a head.
   *
   * @param most so many things to do are told one by one
   */
  List<Tag> told(int most) {
    List<Tag> told = new ArrayList<>();
    told.add(complaint());
    told.addAll(glance());
    told.add(toDo.section(most));
    told.add(care(told));
    return told;
  }

  private Tag complaint() {
    Opening opening = subject.answers().opening();
    Tag section = Html.section("complaint", words.word("report.complaint"));
    String own = opening.words();
    section.add(
        own == null
            ? Tag.of("p", words.word("report.complaint.missing"))
            : Tag.of("blockquote").add(Tag.of("p", words.quoted(own))));
    likeliest(opening).ifPresent(said -> section.add(Tag.of("p", said)));
    return section;
  }

  /** What stands first among the causes, with the first that speaks for and against it. */
  private Optional<String> likeliest(Opening opening) {
    ComplaintTold told = new ComplaintTold(subject);
    if (!opening.ranked().isEmpty()) {
      Opening.Ranked first = opening.ranked().getFirst();
      List<String> said = new ArrayList<>(List.of(told.named(first) + "."));
      clue(said, "report.cause.for", first.speaksFor());
      clue(said, "report.cause.contra", first.speaksAgainst());
      return Optional.of(String.join(" ", said));
    }
    return opening.causes().stream().findFirst().map(words::say);
  }

  private void clue(List<String> said, String heading, List<Statement> clues) {
    clues.stream()
        .findFirst()
        .map(words::say)
        .map(Words::capitalised)
        .ifPresent(clue -> said.add(words.named(words.word(heading), clue)));
  }

  private List<Tag> glance() {
    List<Tag> sections = new ArrayList<>();
    List<Answers.LineAnswers> lines = subject.answers().lines();
    for (Answers.LineAnswers line : lines) {
      String heading = words.word("report.glance");
      String named =
          lines.size() == 1
              ? heading
              : words.named(
                  heading, words.say("report.answers.line", new Argument.Text(line.line())));
      String id = sections.isEmpty() ? "glance" : "glance-" + (sections.size() + 1);
      List<List<Tag>> rows = line.answers().stream().map(this::row).toList();
      List<String> heads =
          List.of(
              words.word("column.question"),
              words.word("column.answer"),
              words.word("column.state"));
      sections.add(Html.section(id, named).add(Html.table(heads, rows).with("class", "glance")));
    }
    return sections;
  }

  private List<Tag> row(Answer answer) {
    return List.of(
        Tag.of("th", words.word(answer.question())).with("scope", "row"),
        Tag.of("td", answered(answer)),
        Tag.of("td").with("class", "stands").add(state(answer)).addAll(sure(answer)));
  }

  /** Where nothing can be said, what would have to be measured. */
  private String answered(Answer answer) {
    String said = words.say(answer.headline());
    return answer.state() == State.CANNOT_SAY_YET
        ? said + " " + words.say(answer.missing().getFirst())
        : said;
  }

  private Tag state(Answer answer) {
    return Tag.of("span", words.word(answer.state()))
        .with("class", "state " + answer.state().name().toLowerCase(Locale.ROOT));
  }

  private List<Tag> sure(Answer answer) {
    return answer.state() == State.DOES_NOT_APPLY || answer.state() == State.CANNOT_SAY_YET
        ? List.of()
        : List.of(Tag.of("span", " " + words.word(answer.sure())).with("class", "sure"));
  }

  /** What to mind, and what the words of the trade mean that stand above. */
  private Tag care(List<Tag> above) {
    String text = String.join(" ", above.stream().map(Tag::read).toList());
    return Html.section("mind", words.word("report.mind"))
        .add(
            Tag.of(
                "p",
                words.word(Caution.NOTIFY_BEFORE_DIGGING.key())
                    + " "
                    + words.word(Caution.LOCAL_CODES.key())))
        .addAll(new Meanings(words).in(text));
  }
}
