package daylight.line.answer;

import daylight.line.book.Surroundings;

/** The questions whose rooms are not built yet: they say what they will need. */
final class Later {
  private Later() {}

  static Answer freeze(Case one) {
    Telling tell = new Telling(Question.FREEZE, one);
    Surroundings around = one.book().site().surroundings();
    Surroundings.Climate climate = around.climate();
    if (climate == null || climate.freezingIndex() == null) {
      tell.missing(AnswerKey.MISSING_FROST);
    }
    if (around.soil() == null) {
      tell.missing(AnswerKey.MISSING_SOIL);
    }
    unbuilt(tell);
    return tell.answer(State.CANNOT_SAY_YET, Sureness.OPEN, AnswerKey.FREEZE_OPEN);
  }

  /** An answer that cannot say names what is missing; here, at last, it is the computation. */
  private static void unbuilt(Telling tell) {
    if (!tell.misses()) {
      tell.missing(AnswerKey.MISSING_NOTHING_BUT_US);
    }
  }
}
