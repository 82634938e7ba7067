package daylight.line.answer;

import daylight.line.book.Test;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import daylight.line.proving.Passage;
import daylight.line.proving.Poured;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Tells what went through a line, what did not, and what came out where nobody expected it. */
final class Passing {
  private final Case one;
  private final Telling tell;
  private final List<Passage> here;

  Passing(Case one, Telling tell) {
    this.one = one;
    this.tell = tell;
    this.here =
        one.proving().passages().stream().filter(passage -> one.touches(passage.node())).toList();
  }

  /** Water that was put in and did not come where the book says that it must. */
  Optional<Passage> lost() {
    return here.stream()
        .filter(passage -> passage.test().kind() == Test.Kind.WATER_RUN)
        .filter(passage -> passage.meaning() == Passage.Meaning.DID_NOT_COME)
        .findFirst();
  }

  /** Smoke or dye that came out of the ground. */
  Optional<Passage> opened() {
    return here.stream()
        .filter(passage -> passage.meaning() == Passage.Meaning.OUT_OF_THE_GROUND)
        .findFirst();
  }

  /** That something passes, for a line whose bore is asked about. */
  void passes() {
    for (Passage passage : here) {
      boolean came = passage.meaning() == Passage.Meaning.AS_THE_BOOK_SAYS;
      if (passage.test().kind() != Test.Kind.SMOKE && came) {
        noted(passage);
        tell.reason(AnswerKey.CLEAR_PASSES, kind(passage), at(passage), where(passage));
      }
    }
  }

  /** Everything that water and dye did, for a line of which it is asked whether it drains. */
  void drains() {
    for (Passage passage : here) {
      if (passage.test().kind() != Test.Kind.SMOKE) {
        noted(passage);
        told(passage);
      }
    }
    boolean came =
        here.stream()
            .filter(passage -> passage.test().kind() != Test.Kind.SMOKE)
            .anyMatch(passage -> passage.meaning() == Passage.Meaning.AS_THE_BOOK_SAYS);
    if (came) {
      tell.reason(AnswerKey.TEST_PROVES_LITTLE);
    }
    one.proving().poured().stream()
        .filter(poured -> here.stream().anyMatch(p -> p.test().equals(poured.test())))
        .forEach(this::poured);
  }

  private void told(Passage passage) {
    Argument at = at(passage);
    Argument where = where(passage);
    Reading after = passage.seen().after();
    boolean water = passage.test().kind() == Test.Kind.WATER_RUN;
    if (passage.meaning() == Passage.Meaning.ELSEWHERE) {
      tell.reason(AnswerKey.CAME_ELSEWHERE, kind(passage), at, where);
      tell.missing(AnswerKey.MISSING_TRACE, at, where);
    } else if (passage.meaning() == Passage.Meaning.OUT_OF_THE_GROUND) {
      tell.reason(AnswerKey.CAME_OUT_OF_GROUND, kind(passage), at, where);
    } else if (!passage.seen().arrived()) {
      tell.reason(water ? AnswerKey.TEST_DID_NOT_ARRIVE : AnswerKey.DYE_DID_NOT_ARRIVE, at, where);
      boolean nowhere =
          here.stream()
              .filter(other -> other.test().equals(passage.test()))
              .noneMatch(other -> other.seen().arrived());
      if (passage.meaning() == Passage.Meaning.DID_NOT_COME && !water && nowhere) {
        tell.missing(AnswerKey.MISSING_DYE_AGAIN, at);
      }
    } else if (after == null) {
      tell.reason(water ? AnswerKey.TEST_ARRIVED : AnswerKey.DYE_ARRIVED, at, where);
    } else {
      tell.reason(
          water ? AnswerKey.TEST_ARRIVED_AFTER : AnswerKey.DYE_ARRIVED_AFTER,
          at,
          where,
          tell.figure(
              FigureKey.AFTER, new Argument.Quantity(Dimension.DURATION, after.value()), null));
    }
  }

  private void poured(Poured poured) {
    Measured in = poured.in();
    Measured out = poured.out();
    Measured missing = poured.missing();
    if (in == null || out == null || missing == null) {
      return;
    }
    Argument put = volume(FigureKey.PUT_IN, in.value());
    Argument caught = volume(FigureKey.CAUGHT, out.value());
    Argument off = volume(FigureKey.CAUGHT_OFF, Measured.Z95 * missing.sd());
    boolean told = missing.lower95() > 0;
    tell.reason(
        told ? AnswerKey.WATER_NOT_CAUGHT : AnswerKey.WATER_CAUGHT,
        put,
        tell.node(poured.test().at()),
        caught,
        off);
    if (told) {
      tell.missing(AnswerKey.MISSING_HOLD);
    }
  }

  /** The fixtures that smoke came up at, for what to do. */
  List<Passage> indoors() {
    return here.stream().filter(passage -> passage.meaning() == Passage.Meaning.INDOORS).toList();
  }

  /** What smoke and dye say of the pipe and the traps; smoke indoors is the way of sewer gas. */
  void sound() {
    for (Passage passage : here) {
      switch (passage.meaning()) {
        case INDOORS -> {
          noted(passage);
          tell.reason(AnswerKey.SMOKE_INDOORS, at(passage), where(passage));
          tell.caution(Caution.GAS);
        }
        case OUT_OF_THE_GROUND -> {
          noted(passage);
          tell.reason(AnswerKey.CAME_OUT_OF_GROUND, kind(passage), at(passage), where(passage));
          tell.caution(Caution.GAS);
          tell.cautionSewage();
        }
        case ELSEWHERE -> {
          if (passage.test().kind() == Test.Kind.SMOKE) {
            noted(passage);
            tell.reason(AnswerKey.CAME_ELSEWHERE, kind(passage), at(passage), where(passage));
            tell.missing(AnswerKey.MISSING_TRACE, at(passage), where(passage));
            tell.caution(Caution.GAS);
          }
        }
        case AS_THE_BOOK_SAYS, DID_NOT_COME, NOTHING -> {}
      }
    }
  }

  /** The headline of a pipe that is open to the ground. */
  Answer open(Passage passage) {
    return tell.answer(
        State.NO,
        Sureness.LIKELY,
        AnswerKey.SOUND_OPEN,
        kind(passage),
        at(passage),
        where(passage));
  }

  private void noted(Passage passage) {
    String word =
        passage.test().kind() == Test.Kind.WATER_RUN
            ? "test." + passage.seen().arrived()
            : "test." + lower(passage.test().kind()) + "." + passage.seen().arrived();
    tell.noted(passage.test(), new Argument.Term(word));
  }

  private static Argument kind(Passage passage) {
    return new Argument.Term("put_in." + lower(passage.test().kind()));
  }

  private Argument at(Passage passage) {
    return tell.node(passage.test().at());
  }

  private Argument where(Passage passage) {
    return tell.node(passage.seen().where());
  }

  private Argument volume(FigureKey what, double cubicMetres) {
    return tell.figure(what, new Argument.Quantity(Dimension.VOLUME, cubicMetres), null);
  }

  private static String lower(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT);
  }
}
