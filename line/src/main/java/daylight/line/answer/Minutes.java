package daylight.line.answer;

import daylight.line.cause.Ask;
import daylight.line.fall.WaterTest;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Statement;
import daylight.line.survey.SurveyKey;
import java.util.OptionalDouble;

/**
 * How long a crew usually needs for what an answer wants: common practice, no source. It orders
 * what to do and promises nothing.
 */
final class Minutes {
  private Minutes() {}

  /** In minutes; empty for what needs no crew, or cannot be done before the van leaves. */
  static OptionalDouble of(Statement missing) {
    return switch (missing.key()) {
      // A third tape, or a look at which side it is.
      case SurveyKey _ -> OptionalDouble.of(2);
      case SoonKey _ -> OptionalDouble.of(2);
      case Ask ask -> of(ask);
      case CopeKey key -> of(key);
      case AnswerKey key -> of(key, missing);
      default -> OptionalDouble.empty();
    };
  }

  private static OptionalDouble of(AnswerKey key, Statement missing) {
    return switch (key) {
      case MISSING_WATER_TEST -> of(missing.arguments().getFirst());
      case MISSING_SOIL,
          MISSING_SOIL_NAME,
          MISSING_SURFACE,
          MISSING_HOLD_REACHES,
          MISSING_HOLD_DURATION,
          MISSING_HOLD_RISER,
          MISSING_HOLD_HEAD ->
          OptionalDouble.of(1);
      case MISSING_SIGHT_NOTES, MISSING_BORE, MISSING_HOLD_LOSS -> OptionalDouble.of(2);
      case MISSING_LENGTH, MISSING_DEPTHS -> OptionalDouble.of(4);
      case MISSING_INVERT_LEVEL, MISSING_PUMP -> OptionalDouble.of(5);
      case MISSING_LOCATE_ON, MISSING_SECOND, MISSING_DRAIN_BACK, MISSING_COVER ->
          OptionalDouble.of(6);
      case MISSING_LOCATES -> OptionalDouble.of(8);
      case MISSING_LEVELS, MISSING_AREA, MISSING_SOIL_WATER -> OptionalDouble.of(10);
      case MISSING_HOLD_SHORTER,
          MISSING_DYE_AGAIN,
          MISSING_TRACE,
          MISSING_SIGHT,
          MISSING_WATER_LOOK ->
          OptionalDouble.of(15);
      case MISSING_PASS, MISSING_PASS_TO -> OptionalDouble.of(20);
      case MISSING_HOLD, MISSING_HOLD_HIGHER, MISSING_HOLD_LOWER, MISSING_HOLD_FINER ->
          OptionalDouble.of(40);
      case MISSING_HOLD_LONGER ->
          missing.arguments().getLast() instanceof Argument.Quantity(Dimension _, double seconds)
              ? OptionalDouble.of(seconds / 60)
              : OptionalDouble.of(40);
      default -> OptionalDouble.empty();
    };
  }

  /** What tells the causes of standing water apart. */
  private static OptionalDouble of(Argument term) {
    if (!(term instanceof Argument.Term(String key))) {
      return OptionalDouble.empty();
    }
    for (WaterTest test : WaterTest.values()) {
      if (test.key().equals(key)) {
        return OptionalDouble.of(
            switch (test) {
              case SEE_OUTLET -> 3;
              case LEVEL -> 10;
              case WAIT -> 30;
              case CLEAN -> 40;
            });
      }
    }
    return OptionalDouble.empty();
  }

  private static OptionalDouble of(CopeKey key) {
    return switch (key) {
      case MISSING_FIXTURES, MISSING_PIT_AREA -> OptionalDouble.of(3);
      case MISSING_FIXTURE_FLOW, MISSING_LIFT, MISSING_FALL -> OptionalDouble.of(5);
      case MISSING_PIT_RISE, MISSING_RISE_AGAIN -> OptionalDouble.of(10);
      case MISSING_RUN -> OptionalDouble.of(20);
      default -> OptionalDouble.empty();
    };
  }

  private static OptionalDouble of(Ask ask) {
    return switch (ask) {
      case METER, DEPTH -> OptionalDouble.of(4);
      case VENTS, LEVELS, RAIN -> OptionalDouble.of(10);
      case CAMERA, WATER_RUN, SMOKE_TEST -> OptionalDouble.of(20);
      case HOLD_TEST -> OptionalDouble.of(40);
      case DRY_SPELL, OUTLET_WATER, FILL -> OptionalDouble.empty();
    };
  }
}
