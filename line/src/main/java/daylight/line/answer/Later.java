package daylight.line.answer;

import daylight.line.book.Reach;
import daylight.line.book.Surroundings;

/** The questions whose rooms are not built yet: they say what they will need. */
final class Later {
  private Later() {}

  static Answer cope(Case one) {
    Telling tell = new Telling(Question.COPE, one);
    Surroundings around = one.book().site().surroundings();
    if (one.runs().stream().anyMatch(run -> run.reach().use() == Reach.Use.PUMPED)) {
      tell.missing(AnswerKey.MISSING_PUMP);
    } else {
      tell.missing(AnswerKey.MISSING_AREA);
    }
    Surroundings.Climate climate = around.climate();
    if (climate == null || climate.rain() == null) {
      tell.missing(AnswerKey.MISSING_RAIN);
    }
    return tell.answer(State.CANNOT_SAY_YET, Sureness.OPEN, AnswerKey.COPE_OPEN);
  }

  static Answer freeze(Case one) {
    Telling tell = new Telling(Question.FREEZE, one);
    tell.missing(AnswerKey.MISSING_FROST);
    if (one.book().site().surroundings().soil() == null) {
      tell.missing(AnswerKey.MISSING_SOIL);
    }
    return tell.answer(State.CANNOT_SAY_YET, Sureness.OPEN, AnswerKey.FREEZE_OPEN);
  }
}
