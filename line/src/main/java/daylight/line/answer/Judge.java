package daylight.line.answer;

import daylight.line.book.FieldBook;
import daylight.line.book.Reach;
import daylight.line.book.Visit;
import daylight.line.course.Line;
import daylight.line.fall.Fall;
import daylight.line.fall.Faller;
import daylight.line.proving.Prover;
import daylight.line.proving.Proving;
import java.util.ArrayList;
import java.util.List;

/**
 * The door of this room: what a field book and its estimated line mean to the owner.
 *
 * <p>Each line of the site is asked the seven questions. An answer never says more than was
 * measured; where it cannot say, it names the measurement that would.
 */
public final class Judge {
  private Judge() {}

  /** Judges the last visit of a book that has one. */
  public static Answers judge(FieldBook book, Line line, Rules rules) {
    if (book.visits().isEmpty()) {
      throw new IllegalArgumentException("a book without a visit has nothing to judge");
    }
    return judge(book, line, rules, book.visits().getLast());
  }

  /** Judges one visit: its findings and its water, on geometry from every visit. */
  public static Answers judge(FieldBook book, Line line, Rules rules, Visit visit) {
    Fall fall = Faller.of(line, visit.label(), rules.fall());
    Proving proving = Prover.of(book, line, visit, rules.holds(), rules.priors());
    List<StopOrder> stops = StopOrders.of(book, line, rules);
    List<Case> cases =
        book.site().reaches().stream()
            .map(Reach::line)
            .distinct()
            .map(name -> Case.of(book, line, rules, fall, proving, visit, name))
            .toList();
    List<Answers.LineAnswers> lines = new ArrayList<>();
    List<DigPlace> digs = new ArrayList<>();
    for (Case one : cases) {
      List<DigPlace> here = WhatNow.digs(one, stops);
      lines.add(new Answers.LineAnswers(one.name(), answers(one, stops, here)));
      digs.addAll(here);
    }
    Opening opening = Openings.of(book, line, visit, cases, !stops.isEmpty());
    List<PumpAtWork> pumps = cases.stream().flatMap(one -> Pumps.atWork(one).stream()).toList();
    return new Answers(
        visit.label(),
        stops,
        opening,
        lines,
        cautions(lines, stops, opening),
        fall,
        proving,
        pumps,
        digs);
  }

  private static List<Answer> answers(Case one, List<StopOrder> stops, List<DigPlace> digs) {
    List<Answer> answers = new ArrayList<>();
    answers.add(Where.answer(one));
    answers.add(Clear.answer(one));
    answers.add(Sound.answer(one));
    answers.add(Drain.answer(one));
    answers.add(Cope.answer(one));
    answers.add(Freeze.answer(one));
    answers.add(WhatNow.answer(one, answers, stops, digs));
    return answers;
  }

  private static List<Caution> cautions(
      List<Answers.LineAnswers> lines, List<StopOrder> stops, Opening opening) {
    List<Caution> cautions = new ArrayList<>();
    for (Caution caution : Caution.values()) {
      boolean called =
          lines.stream()
              .flatMap(line -> line.answers().stream())
              .anyMatch(answer -> answer.cautions().contains(caution));
      called |= opening.cautions().contains(caution);
      if (called || (caution == Caution.GAS && !stops.isEmpty())) {
        cautions.add(caution);
      }
    }
    return cautions;
  }
}
