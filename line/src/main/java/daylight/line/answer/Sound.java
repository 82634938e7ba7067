package daylight.line.answer;

import daylight.line.book.Catalogue;
import daylight.line.condition.Aspect;
import daylight.line.condition.Condition;
import daylight.line.condition.FindingGrade;
import daylight.line.condition.Grade;
import daylight.line.condition.Immediate;
import daylight.line.condition.LineGrade;
import daylight.line.course.PlacedFinding;
import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import daylight.line.proving.HeldTest;
import daylight.line.proving.Passage;
import java.util.List;
import java.util.Optional;

/** Is it sound? Defects are told as seen, the worst with its grade. */
final class Sound {
  private Sound() {}

  static Answer answer(Case one) {
    Telling tell = new Telling(Question.SOUND, one);
    Coverage coverage = Coverage.of(one);
    List<PlacedFinding> defects = one.findings(Catalogue.Bears.STRUCTURE);
    Holding holding = new Holding(one, tell);
    Passing passing = new Passing(one, tell);
    HeldTest leak = defects.isEmpty() ? holding.failed() : null;
    holding.tell(leak);
    passing.sound();
    boolean seen = coverage.share() > 0;
    if (seen) {
      Clear.unseen(tell, coverage);
    }
    if (leak != null) {
      tell.cautionSewage();
      return holding.leaks(leak);
    }
    Optional<Passage> opened = defects.isEmpty() ? passing.opened() : Optional.empty();
    if (opened.isPresent()) {
      return passing.open(opened.get());
    }
    if (!seen) {
      return Clear.notSeen(tell, one);
    }
    if (!holding.provesAll()) {
      tell.caution(Caution.CAMERA_PROVES_NO_TIGHTNESS);
    }
    return defects.isEmpty()
        ? noneSeen(one, tell, coverage, holding)
        : defects(one, tell, coverage, defects);
  }

  private static Answer noneSeen(Case one, Telling tell, Coverage coverage, Holding holding) {
    Argument share = Clear.seen(tell, coverage);
    if (!holding.provesAll()) {
      tell.reason(AnswerKey.SOUND_NOT_TIGHT);
    }
    if (!coverage.open().isEmpty()) {
      return tell.answer(
          State.WITHIN_LIMITS,
          Sureness.OPEN,
          AnswerKey.SOUND_NONE_SO_FAR,
          Clear.soFar(tell, coverage));
    }
    boolean whole = coverage.whole(one.rules().limits().seenShare());
    return tell.answer(
        State.WITHIN_LIMITS,
        whole && !holding.open() ? Sureness.LIKELY : Sureness.OPEN,
        AnswerKey.SOUND_NONE_SEEN,
        share);
  }

  private static Answer defects(
      Case one, Telling tell, Coverage coverage, List<PlacedFinding> defects) {
    Clear.seen(tell, coverage);
    tell.cautionSewage();
    for (PlacedFinding defect : defects.subList(1, defects.size())) {
      tell.reason(
          AnswerKey.ALSO_FOUND,
          tell.finding(defect),
          tell.station(defect.from()),
          tell.from(defect.from()));
    }
    grades(one, tell, defects);
    PlacedFinding first = defects.getFirst();
    return tell.answer(
        State.NO,
        Sureness.SURE,
        AnswerKey.SOUND_DEFECTS,
        tell.figure(FigureKey.COUNT, new Argument.Count(defects.size()), null),
        tell.finding(first),
        tell.station(first.from()),
        tell.from(first.from()));
  }

  /** The worst grade for structure, and what calls for action at once whatever its grade. */
  private static void grades(Case one, Telling tell, List<PlacedFinding> defects) {
    List<FindingGrade> grades =
        defects.stream().map(defect -> one.rules().grade(defect, one.line())).toList();
    LineGrade.Worst worst = Condition.together(grades).worst().get(Aspect.STRUCTURE);
    if (worst == null) {
      tell.reason(AnswerKey.SOUND_UNGRADED);
    }
    for (int i = 0; i < defects.size(); i++) {
      PlacedFinding defect = defects.get(i);
      if (worst != null && worst.at() == i) {
        tell.reason(
            AnswerKey.SOUND_WORST,
            tell.figure(FigureKey.GRADE, new Argument.Said(said(worst.grade())), defect.from()),
            tell.finding(defect),
            tell.station(defect.from()),
            tell.from(defect.from()));
      }
      if (grades.get(i).immediate() instanceof Immediate.Yes) {
        tell.reason(
            AnswerKey.SOUND_AT_ONCE,
            tell.finding(defect),
            tell.station(defect.from()),
            tell.from(defect.from()));
      }
    }
  }

  /** A class is never said without its word. */
  static Statement said(Grade grade) {
    return Statement.of(
        AnswerKey.SOUND_CLASS, new Argument.Number(grade.number()), new Argument.Term(grade.key()));
  }
}
