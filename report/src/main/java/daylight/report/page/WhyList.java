package daylight.report.page;

import daylight.line.answer.Answer;
import daylight.line.answer.Answers;
import daylight.line.answer.Evidence;
import daylight.line.answer.Why;
import daylight.line.course.Contribution;
import daylight.line.course.Source;
import daylight.line.measure.Argument;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;

/** Every figure of a page that has a doubt, and why. */
public final class WhyList {
  private final Subject subject;
  private final Words words;
  private final WhyTold told;
  private final List<Why> all;

  public WhyList(Subject subject) {
    this.subject = subject;
    this.words = subject.words();
    this.told = new WhyTold(subject, "");
    this.all = Why.all(subject.book(), subject.line(), subject.answers());
  }

  /** The figures by what they are of, each folding out; those of answers stand with the answers. */
  public List<Tag> told(String rank) {
    List<Tag> list = new ArrayList<>();
    group(list, rank, "why.digs", Why.Of.OfDig.class);
    group(list, rank, "why.locates", Why.Of.OfLocate.class);
    group(list, rank, "why.nodes", Why.Of.OfNode.class);
    group(list, rank, "why.stretches", Why.Of.OfStretch.class);
    group(list, rank, "why.reaches", Why.Of.OfReach.class);
    return list;
  }

  private void group(List<Tag> list, String rank, String heading, Class<? extends Why.Of> sort) {
    List<Why> of = all.stream().filter(why -> sort.isInstance(why.of())).toList();
    if (!of.isEmpty()) {
      list.add(Tag.of(rank, words.word(heading)));
      of.forEach(why -> list.add(told.folded(why, heading(why))));
    }
  }

  private String heading(Why why) {
    String figure = told.figure(why);
    return switch (why.of()) {
      case Why.Of.OfDig(String finding) -> named(finding, figure);
      case Why.Of.OfLocate one -> named(one.entry().label(), figure);
      case Why.Of.OfNode one -> named(one.node().label(), figure);
      case Why.Of.OfStretch _, Why.Of.OfReach _, Why.Of.OfAnswer _ -> Words.capitalised(figure);
    };
  }

  private String named(String label, String figure) {
    return words.say("why.named", new Argument.Label(label), new Argument.Text(figure));
  }

  /** What the figures come from, and what the answers point at. */
  public Set<Source> sources() {
    Set<Source> sources = new HashSet<>();
    for (Why why : all) {
      why.rests().stream().map(Contribution::source).forEach(sources::add);
    }
    return sources;
  }

  /** The entries that figures and answers lead to. */
  public Set<UUID> entries() {
    Set<UUID> entries = new HashSet<>();
    for (Source source : sources()) {
      if (source instanceof Source.OfEntry entry) {
        entries.add(entry.id().uuid());
      }
    }
    for (Evidence evidence : evidence()) {
      if (evidence instanceof Evidence.Noted noted) {
        entries.add(noted.entry().uuid());
      }
    }
    return entries;
  }

  /** Everything that an answer points at. */
  List<Evidence> evidence() {
    List<Evidence> all = new ArrayList<>(subject.answers().opening().evidence());
    for (Answers.LineAnswers line : subject.answers().lines()) {
      for (Answer answer : line.answers()) {
        all.addAll(answer.evidence());
      }
    }
    return all;
  }
}
