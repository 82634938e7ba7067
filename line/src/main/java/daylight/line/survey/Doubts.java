package daylight.line.survey;

import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** What adjusted networks have to say about their own readings. */
final class Doubts {
  /** Below this, metres, a length is said in small units. */
  private static final double SMALL = 0.15;

  private final LikelyReadings likely;

  Doubts(LikelyReadings likely) {
    this.likely = likely;
  }

  List<Statement> of(Adjustment plan) {
    List<Statement> doubts = new ArrayList<>();
    switch (plan) {
      case Adjusted adjusted -> {
        adjusted.undetermined().stream()
            .filter(u -> !givesDirectionOnly(u))
            .forEach(u -> doubts.add(undetermined(u)));
        for (String side : adjusted.contradictedSides()) {
          doubts.add(Statement.of(SurveyKey.SIDE_CONTRADICTED, new Argument.Label(side)));
        }
        doubts.addAll(suspects(adjusted.fit()));
      }
      case Unadjustable not -> {
        if (not.reason() != Unadjustable.Reason.NOTHING_TO_ADJUST) {
          doubts.add(Statement.of(SurveyKey.SURVEY_FAILED, term("unadjustable", not.reason())));
          not.undetermined().forEach(u -> doubts.add(undetermined(u)));
        }
      }
    }
    return doubts;
  }

  /** The far end of a wall that only gives the direction needs no place of its own. */
  private static boolean givesDirectionOnly(Undetermined undetermined) {
    return undetermined instanceof Undetermined.Untied untied
        && untied.reason() == Undetermined.Reason.DISTANCE_UNKNOWN;
  }

  List<Statement> suspects(Fit fit) {
    return fit.suspects().stream().map(this::suspect).toList();
  }

  private Statement suspect(Suspect suspect) {
    if (suspect.inseparable().isEmpty()) {
      return misread(SurveyKey.READING_SUSPECT, suspect.named());
    }
    List<Suspect.Misread> candidates =
        Stream.concat(Stream.of(suspect.named()), suspect.rivals().stream()).toList();
    return Statement.of(
        SurveyKey.READINGS_SUSPECT,
        new Argument.Several(
            candidates.stream()
                .map(Suspect.Misread::entry)
                .distinct()
                .map(entry -> (Argument) new Argument.Label(entry))
                .toList()),
        new Argument.Either(
            candidates.stream()
                .map(c -> (Argument) new Argument.Said(misread(SurveyKey.IF_IT_IS, c)))
                .toList()));
  }

  private Statement misread(SurveyKey key, Suspect.Misread misread) {
    String written = likely.written(misread);
    return Statement.of(
        key,
        new Argument.Label(misread.entry()),
        term("measured", misread.quantity()),
        new Argument.Several(written.isEmpty() ? List.of() : List.of(new Argument.Text(written))),
        by(misread),
        new Argument.Term(misread.blunder() > 0 ? "survey.too_much" : "survey.too_little"),
        new Argument.Either(
            likely.of(misread).stream().map(s -> (Argument) new Argument.Said(s)).toList()));
  }

  private static Argument by(Suspect.Misread misread) {
    double size = Math.abs(misread.blunder());
    if (misread.quantity().angular()) {
      return new Argument.Quantity(Dimension.ANGLE, size);
    }
    return size < SMALL ? new Argument.Small(size) : new Argument.Length(size);
  }

  private static Statement undetermined(Undetermined undetermined) {
    return switch (undetermined) {
      case Undetermined.Untied(String point, Undetermined.Reason reason, _) ->
          Statement.of(
              SurveyKey.POINT_UNTIED, new Argument.Label(point), term("undetermined", reason));
      case Undetermined.Mirror mirror ->
          Statement.of(
              SurveyKey.POINT_MIRROR,
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
