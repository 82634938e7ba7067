package daylight.line.course;

import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Statement;
import daylight.line.survey.Adjusted;
import daylight.line.survey.Adjustment;
import daylight.line.survey.Fit;
import daylight.line.survey.LevelAdjusted;
import daylight.line.survey.LevelAdjustment;
import daylight.line.survey.Quantity;
import daylight.line.survey.Suspect;
import daylight.line.survey.Unadjustable;
import daylight.line.survey.Undetermined;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What the adjusted networks have to say about their own readings. */
final class SurveyDoubts {
  private SurveyDoubts() {}

  static List<Statement> of(Adjustment plan, LevelAdjustment levels) {
    List<Statement> doubts = new ArrayList<>();
    switch (plan) {
      case Adjusted adjusted -> {
        adjusted.undetermined().stream()
            .filter(u -> !givesDirectionOnly(u))
            .forEach(u -> doubts.add(undetermined(u)));
        suspects(adjusted.fit(), doubts);
      }
      case Unadjustable not -> {
        if (not.reason() != Unadjustable.Reason.NOTHING_TO_ADJUST) {
          doubts.add(Statement.of(CourseKey.SURVEY_FAILED, term("unadjustable", not.reason())));
          not.undetermined().forEach(u -> doubts.add(undetermined(u)));
        }
      }
    }
    if (levels instanceof LevelAdjusted adjusted) {
      suspects(adjusted.fit(), doubts);
    }
    return doubts;
  }

  /** The far end of a wall that only gives the direction needs no place of its own. */
  private static boolean givesDirectionOnly(Undetermined undetermined) {
    return undetermined instanceof Undetermined.Untied untied
        && untied.reason() == Undetermined.Reason.DISTANCE_UNKNOWN;
  }

  private static void suspects(Fit fit, List<Statement> doubts) {
    for (Suspect suspect : fit.suspects()) {
      Argument by =
          angular(suspect.quantity())
              ? new Argument.Quantity(Dimension.ANGLE, Math.abs(suspect.blunder()))
              : new Argument.Length(Math.abs(suspect.blunder()));
      if (suspect.inseparable().isEmpty()) {
        doubts.add(
            Statement.of(CourseKey.READING_SUSPECT, new Argument.Label(suspect.entry()), by));
      } else {
        List<Argument> candidates = new ArrayList<>(List.of(new Argument.Label(suspect.entry())));
        suspect.inseparable().forEach(entry -> candidates.add(new Argument.Label(entry)));
        doubts.add(Statement.of(CourseKey.READINGS_SUSPECT, new Argument.Several(candidates), by));
      }
    }
  }

  private static boolean angular(Quantity quantity) {
    return switch (quantity) {
      case BEARING, ANGLE, DIRECTION -> true;
      default -> false;
    };
  }

  private static Statement undetermined(Undetermined undetermined) {
    return switch (undetermined) {
      case Undetermined.Untied(String point, Undetermined.Reason reason, _) ->
          Statement.of(
              CourseKey.POINT_UNTIED, new Argument.Label(point), term("undetermined", reason));
      case Undetermined.Mirror mirror ->
          Statement.of(
              CourseKey.POINT_MIRROR,
              new Argument.Label(mirror.point()),
              new Argument.Several(
                  mirror.entries().stream()
                      .map(entry -> (Argument) new Argument.Label(entry))
                      .toList()));
    };
  }

  private static Argument term(String room, Enum<?> value) {
    return new Argument.Term(room + "." + value.name().toLowerCase(Locale.ROOT));
  }
}
