package daylight.report.page;

import daylight.line.answer.Answer;
import daylight.line.answer.Answers;
import daylight.line.answer.Caution;
import daylight.line.answer.Evidence;
import daylight.line.answer.FigureKey;
import daylight.line.answer.Question;
import daylight.line.answer.State;
import daylight.line.book.Place;
import daylight.line.course.Contribution;
import daylight.line.course.PlacedFinding;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.report.draw.Captions;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.words.EvidenceWords;
import daylight.report.words.SourceWords;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The seven answers of a line, one card each. */
public final class AnswerCards {
  private static final int MOST_SHARES = 5;
  private static final double LEAST_SHARE = 0.01;

  private final Subject subject;
  private final Words words;
  private final SourceWords sources;
  private final @Nullable Exhibits exhibits;
  private final @Nullable Trail trail;
  private final String readings;

  /** Where a page leads to beside its own tables, and those of the readings. */
  public interface Trail {
    /** To the moment of the footage that shows something; empty where none does. */
    Optional<Tag> moment(PlacedFinding placed);
  }

  /**
   * The cards of a page from which all that answers rest on can be walked to.
   *
   * @param readings address of the page that tells the readings and the rules
   */
  public AnswerCards(Subject subject, Trail trail, String readings) {
    this(subject, null, trail, readings);
  }

  AnswerCards(Subject subject, Exhibits exhibits) {
    this(subject, exhibits, null, "");
  }

  private AnswerCards(
      Subject subject, @Nullable Exhibits exhibits, @Nullable Trail trail, String readings) {
    this.readings = readings;
    this.trail = trail;
    this.subject = subject;
    this.words = subject.words();
    this.sources = new SourceWords(words);
    this.exhibits = exhibits;
  }

  Tag of(Answers.LineAnswers line) {
    String heading =
        subject.answers().lines().size() == 1
            ? words.word("report.answers")
            : words.say("report.answers.line", new Argument.Text(line.line()));
    int at = subject.answers().lines().indexOf(line);
    Tag section = Html.section(at == 0 ? "answers" : "answers-" + (at + 1), heading);
    line.answers().forEach(answer -> section.add(card(line.line(), answer)));
    return section;
  }

  private Tag card(String line, Answer answer) {
    Tag card =
        Tag.of("article")
            .with("class", "answer")
            .add(
                Tag.of("div")
                    .with("class", "top")
                    .add(Tag.of("h3", words.word(answer.question())))
                    .add(badges(answer)))
            .add(Tag.of("p", words.say(answer.headline())).with("class", "lead"));
    return card.addAll(grounds(line, answer));
  }

  /** What stands behind the sentence: reasons, what to measure, cautions, evidence, doubt. */
  public List<Tag> grounds(String line, Answer answer) {
    List<Tag> grounds = new ArrayList<>();
    answer.reasons().forEach(reason -> grounds.add(Tag.of("p", words.say(reason))));
    see(grounds, answer.question());
    block(
        grounds,
        "report.missing",
        "missing",
        Html.items(answer.missing().stream().map(words::say)));
    block(
        grounds,
        "report.take_care",
        "care",
        Html.items(answer.cautions().stream().map(Caution::key).map(words::word)));
    block(grounds, "report.evidence", "basis", evidence(answer.evidence()));
    if (trail == null) {
      block(grounds, "report.shares", "basis", Html.items(shares(answer.contributions()).stream()));
    } else {
      new WhyTold(subject, readings).of(line, answer).ifPresent(grounds::add);
    }
    return grounds;
  }

  /** Where to look: the drawings and tables that show what was asked. */
  private void see(List<Tag> grounds, Question question) {
    Exhibits numbered = exhibits;
    if (numbered == null) {
      return;
    }
    List<String> shown =
        switch (question) {
          case WHERE -> List.of(Exhibits.PLAN, Exhibits.PROFILE, Exhibits.LOCATES);
          case CLEAR, SOUND -> List.of(Exhibits.STRIP, Exhibits.FINDINGS);
          case DRAIN -> List.of(Exhibits.PROFILE, Exhibits.FALL, Exhibits.CONNECTIONS);
          case FREEZE -> List.of(Exhibits.FROST);
          case COPE, WHAT_NOW -> List.<String>of();
        };
    List<Tag> links = shown.stream().filter(numbered::has).map(numbered::link).toList();
    if (links.isEmpty()) {
      return;
    }
    Tag line = Tag.of("p", words.word("report.see") + " ").with("class", "see");
    links.forEach(link -> line.text(link == links.getFirst() ? "" : ", ").add(link));
    grounds.add(line);
  }

  private List<Tag> evidence(List<Evidence> all) {
    EvidenceWords evidence = new EvidenceWords(words, subject::distance);
    Map<String, Tag> items = new LinkedHashMap<>();
    for (Evidence one : all) {
      if (tellsMore(one)) {
        items.putIfAbsent(evidence.say(one), item(evidence.say(one), one));
      }
    }
    return List.copyOf(items.values());
  }

  private Tag item(String text, Evidence evidence) {
    Trail leads = trail;
    if (leads != null) {
      return linked(leads, text, evidence);
    }
    Tag item = Tag.of("li", text);
    Exhibits numbered = exhibits;
    if (numbered != null && evidence instanceof Evidence.Seen seen) {
      numbered.still(seen.finding()).ifPresent(id -> item.text(", ").add(numbered.link(id)));
    }
    return item;
  }

  /** Leads to the place on the drawings, to the row of the reading, to footage, to the rule. */
  private Tag linked(Trail leads, String text, Evidence evidence) {
    return switch (evidence) {
      case Evidence.Figure figure -> {
        Place at = figure.at();
        yield at == null ? Tag.of("li", text) : Tag.of("li").add(place(at, text));
      }
      case Evidence.Seen seen -> {
        Tag item = Tag.of("li").add(place(seen.at(), text));
        Optional<PlacedFinding> placed =
            Captions.findings(subject).stream()
                .filter(one -> one.finding().label().equals(seen.finding()))
                .findFirst();
        placed.ifPresent(
            one ->
                item.text(" ")
                    .add(
                        Anchors.link(
                            "finding-" + one.finding().id().uuid(), words.word("why.row"))));
        placed.flatMap(leads::moment).ifPresent(link -> item.text(" ").add(link));
        yield item;
      }
      case Evidence.Noted noted ->
          Tag.of("li").add(Anchors.link(readings, Anchors.entry(noted.entry().uuid()), text));
      case Evidence.Rule rule -> Tag.of("li").add(Anchors.link(readings, Anchors.rule(rule), text));
    };
  }

  private static Tag place(Place at, String text) {
    return Anchors.link("line", text)
        .with("class", "to-place")
        .with("data-place", at.reach())
        .with("data-distance", at.distance());
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

  private void block(List<Tag> grounds, String heading, String style, List<Tag> items) {
    if (!items.isEmpty()) {
      grounds.add(
          Tag.of("div")
              .with("class", style)
              .add(Tag.of("h4", words.word(heading)))
              .add(Tag.of("ul").addAll(items)));
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
        new Argument.Text(sources.say(contribution.source())));
  }
}
