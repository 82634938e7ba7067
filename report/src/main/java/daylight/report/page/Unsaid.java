package daylight.report.page;

import daylight.line.answer.Answer;
import daylight.line.answer.Answers;
import daylight.line.book.Papers;
import daylight.line.measure.Argument;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What could not be said with what would tell it, and the advice that was not taken. */
final class Unsaid {
  private final Subject subject;
  private final Words words;

  Unsaid(Subject subject) {
    this.subject = subject;
    this.words = subject.words();
  }

  /**
   * What to measure next, each once.
   *
   * @param most so many are told one by one
   */
  Tag section(int most) {
    Set<String> all = new LinkedHashSet<>();
    for (Answers.LineAnswers line : subject.answers().lines()) {
      for (Answer answer : line.answers()) {
        answer.missing().forEach(missing -> all.add(words.say(missing)));
      }
    }
    Tag section = Html.section("unsaid", words.word("report.missing"));
    if (all.isEmpty()) {
      return section.add(Tag.of("p", words.word("report.unsaid.none")));
    }
    List<String> told = all.stream().limit(most).toList();
    if (!told.isEmpty()) {
      section.add(Html.list(told));
    }
    return told.size() == all.size()
        ? section
        : section.add(
            Tag.of(
                "p",
                words.say(
                    told.isEmpty() ? "report.unsaid.all" : "report.unsaid.more",
                    new Argument.Count(all.size() - told.size()))));
  }

  /**
   * What the owner was told to do and did not want, on the visit that was judged; empty for none.
   */
  Optional<Tag> declined() {
    List<String> said = new ArrayList<>();
    subject
        .visit()
        .map(visit -> visit.papers().declined())
        .orElse(List.of())
        .forEach(one -> said.add(declined(one)));
    return said.isEmpty()
        ? Optional.empty()
        : Optional.of(Html.section("declined", words.word("report.declined")).add(Html.list(said)));
  }

  private String declined(Papers.Declined one) {
    LocalDate date = one.date();
    Argument what = new Argument.Text(one.what());
    Argument who = new Argument.Text(one.who());
    return date == null
        ? words.say("report.declined.by", what, who)
        : words.say("report.declined.on", what, who, new Argument.Day(date));
  }
}
