package daylight.app.web;

import daylight.line.answer.Answer;
import daylight.line.answer.Answers;
import daylight.line.answer.State;
import daylight.line.measure.Argument;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.page.AnswerCards;
import daylight.report.words.Words;
import java.util.List;
import java.util.Locale;

/** The seven answers, a sentence each; what stands behind a sentence folds out. */
final class AnswerList {
  private final Subject subject;
  private final Words words;
  private final AnswerCards cards;

  AnswerList(Subject subject, Moments moments, String readings) {
    this.subject = subject;
    this.words = subject.words();
    this.cards =
        new AnswerCards(
            subject,
            placed -> moments.link(placed, Words.capitalised(words.kind(placed.finding().kind()))),
            readings);
  }

  Tag all() {
    List<Answers.LineAnswers> lines = subject.answers().lines();
    Tag section = Pieces.section("answers", words.word("report.answers"));
    for (Answers.LineAnswers line : lines) {
      if (lines.size() > 1) {
        section.add(Tag.of("h3", words.say("report.answers.line", new Argument.Text(line.line()))));
      }
      line.answers()
          .forEach(answer -> section.add(one(line.line(), answer, lines.size() > 1 ? "h4" : "h3")));
    }
    return section;
  }

  private Tag one(String line, Answer answer, String rank) {
    List<Tag> grounds = cards.grounds(line, answer);
    Tag badges =
        Tag.of("span")
            .with("class", "badges")
            .add(
                Tag.of("span", words.word(answer.state()))
                    .with("class", "state " + answer.state().name().toLowerCase(Locale.ROOT)));
    if (answer.state() != State.DOES_NOT_APPLY && answer.state() != State.CANNOT_SAY_YET) {
      badges.add(Tag.of("span", words.word(answer.sure())).with("class", "sure"));
    }
    Tag summary =
        Tag.of(grounds.isEmpty() ? "div" : "summary")
            .add(Tag.of(rank, words.word(answer.question())))
            .add(badges)
            .add(Tag.of("span", words.say(answer.headline())).with("class", "says"));
    return grounds.isEmpty()
        ? summary.with("class", "answer")
        : Tag.of("details")
            .with("class", "answer")
            .add(summary)
            .add(Tag.of("div").with("class", "grounds").addAll(grounds));
  }
}
