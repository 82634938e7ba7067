package daylight.line.answer;

import daylight.line.book.Reach;
import daylight.line.book.Surroundings;

/** The question whose room is not built yet: it says what it will need. */
final class Later {
  private Later() {}

  static Answer cope(Case one) {
    Telling tell = new Telling(Question.COPE, one);
    Surroundings around = one.book().site().surroundings();
    if (one.runs().stream().anyMatch(run -> run.reach().use() == Reach.Use.PUMPED)) {
      tell.missing(AnswerKey.MISSING_PUMP);
    } else if (around.roofs().stream().noneMatch(roof -> drains(one, roof.node()))) {
      tell.missing(AnswerKey.MISSING_AREA);
    }
    Surroundings.Climate climate = around.climate();
    if (climate == null || climate.rain() == null) {
      tell.missing(AnswerKey.MISSING_RAIN);
    }
    unbuilt(tell);
    return tell.answer(State.CANNOT_SAY_YET, Sureness.OPEN, AnswerKey.COPE_OPEN);
  }

  private static boolean drains(Case one, String node) {
    return one.runs().stream()
        .anyMatch(run -> run.reach().from().equals(node) || run.reach().to().equals(node));
  }

  /** An answer that cannot say names what is missing; here, at last, it is the computation. */
  private static void unbuilt(Telling tell) {
    if (!tell.misses()) {
      tell.missing(AnswerKey.MISSING_NOTHING_BUT_US);
    }
  }
}
