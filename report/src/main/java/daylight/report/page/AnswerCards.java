package daylight.report.page;

import daylight.line.answer.Answer;
import daylight.line.answer.Answers;
import daylight.line.answer.Caution;
import daylight.line.answer.Evidence;
import daylight.line.answer.FigureKey;
import daylight.line.answer.State;
import daylight.line.course.Contribution;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.words.EvidenceWords;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The seven answers of a line, one card each. */
public final class AnswerCards {
  private static final int MOST_SHARES = 5;
  private static final double LEAST_SHARE = 0.01;

  private final Subject subject;
  private final Words words;

  /** The cards of a subject. */
  public AnswerCards(Subject subject) {
    this.subject = subject;
    this.words = subject.words();
  }

  Tag of(Answers.LineAnswers line) {
    String heading =
        subject.answers().lines().size() == 1
            ? words.word("report.answers")
            : words.say("report.answers.line", new Argument.Text(line.line()));
    int at = subject.answers().lines().indexOf(line);
    Tag section = Html.section(at == 0 ? "answers" : "answers-" + (at + 1), heading);
    line.answers().forEach(answer -> section.add(card(answer)));
    return section;
  }

  private Tag card(Answer answer) {
    Tag card =
        Tag.of("article")
            .with("class", "answer")
            .add(
                Tag.of("div")
                    .with("class", "top")
                    .add(Tag.of("h3", words.word(answer.question())))
                    .add(badges(answer)))
            .add(Tag.of("p", words.say(answer.headline())).with("class", "lead"));
    return card.addAll(grounds(answer));
  }

  /** What stands behind the sentence: reasons, what to measure, cautions, evidence, doubt. */
  public List<Tag> grounds(Answer answer) {
    List<Tag> grounds = new ArrayList<>();
    answer.reasons().forEach(reason -> grounds.add(Tag.of("p", words.say(reason))));
    block(grounds, "report.missing", "missing", answer.missing().stream().map(words::say).toList());
    block(
        grounds,
        "report.take_care",
        "care",
        answer.cautions().stream().map(Caution::key).map(words::word).toList());
    EvidenceWords evidence = new EvidenceWords(words, subject::distance);
    block(
        grounds,
        "report.evidence",
        "basis",
        answer.evidence().stream()
            .filter(AnswerCards::tellsMore)
            .map(evidence::say)
            .distinct()
            .toList());
    block(grounds, "report.shares", "basis", shares(answer.contributions()));
    return grounds;
  }

  /** A distance along the pipe says nothing that the sentence has not said; it is in the data. */
  private static boolean tellsMore(Evidence evidence) {
    return !(evidence instanceof Evidence.Figure figure && figure.what() == FigureKey.STATION);
  }

  private Tag badges(Answer answer) {
    Tag badges = Tag.of("p").with("class", "badges");
    badges.add(
        Tag.of("span", words.word(answer.state()))
            .with("class", "state " + answer.state().name().toLowerCase(Locale.ROOT)));
    if (answer.state() != State.DOES_NOT_APPLY && answer.state() != State.CANNOT_SAY_YET) {
      badges.text(" ").add(Tag.of("span", words.word(answer.sure())).with("class", "sure"));
    }
    return badges;
  }

  private void block(List<Tag> grounds, String heading, String style, List<String> items) {
    if (!items.isEmpty()) {
      grounds.add(
          Tag.of("div")
              .with("class", style)
              .add(Tag.of("h4", words.word(heading)))
              .add(Html.list(items)));
    }
  }

  /** The largest shares; what is left together makes one line, and is in the data one by one. */
  private List<String> shares(List<Contribution> all) {
    List<Contribution> told =
        all.stream().limit(MOST_SHARES).filter(one -> one.share() >= LEAST_SHARE).toList();
    List<String> lines = new ArrayList<>(told.stream().map(this::share).toList());
    double rest = 1 - told.stream().mapToDouble(Contribution::share).sum();
    if (told.size() < all.size() && rest >= 0.005) {
      lines.add(
          words.say(
              "report.share.rest",
              new Argument.Quantity(Dimension.SHARE, rest),
              new Argument.Count(all.size() - told.size())));
    }
    return lines;
  }

  private String share(Contribution contribution) {
    return words.say(
        contribution.assumed() ? "report.share.assumed" : "report.share.entry",
        new Argument.Quantity(Dimension.SHARE, contribution.share()),
        new Argument.Text(source(contribution)));
  }

  private String source(Contribution contribution) {
    String prior = "priors." + contribution.source().toLowerCase(Locale.ROOT).replace('-', '_');
    return contribution.assumed() && words.has(prior) ? words.word(prior) : contribution.source();
  }
}
