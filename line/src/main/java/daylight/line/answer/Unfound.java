package daylight.line.answer;

import daylight.line.book.Locate;
import daylight.line.book.Pass;
import daylight.line.book.Visit;
import daylight.line.course.CourseKey;
import daylight.line.course.Run;
import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import daylight.line.survey.SurveyKey;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What is missing for a line that has no course at all: exactly, not "measure more". */
final class Unfound {
  private static final Set<SurveyKey> NOT_PLACED =
      Set.of(SurveyKey.POINT_MIRROR, SurveyKey.POINT_UNTIED);

  private Unfound() {}

  static boolean isTrueOf(Case one) {
    return one.runs().stream().allMatch(run -> run.stations().isEmpty());
  }

  /** Names it: a spot that its ties do not settle, else a second place, else two. */
  static void missing(Telling tell, Case one) {
    Set<String> found = locates(one).stream().map(Locate::label).collect(Collectors.toSet());
    List<Statement> open =
        one.line().doubts().stream()
            .filter(doubt -> doubt.key() instanceof SurveyKey key && NOT_PLACED.contains(key))
            .filter(
                doubt ->
                    doubt.arguments().getFirst() instanceof Argument.Label(String label)
                        && found.contains(label))
            .toList();
    open.forEach(tell::missing);
    Argument only = only(one);
    if (open.isEmpty() && only != null) {
      tell.missing(AnswerKey.MISSING_SECOND, only);
    } else if (open.isEmpty()) {
      tell.missing(AnswerKey.MISSING_LOCATES);
    }
  }

  /** Whether somebody read a depth on the line. */
  static boolean deep(Case one) {
    return locates(one).stream().anyMatch(locate -> locate.depth() != null);
  }

  /** The one place of the line that is fixed on the ground; null where there is none. */
  private static @Nullable Argument only(Case one) {
    for (Run run : one.runs()) {
      if (run.path() instanceof Run.Path.NotFound(Statement missing)
          && missing.key() == CourseKey.ONE_SPOT) {
        return missing.arguments().getFirst();
      }
    }
    return null;
  }

  private static List<Locate> locates(Case one) {
    List<Locate> locates = new ArrayList<>();
    for (Visit visit : one.book().visits()) {
      for (Locate locate : visit.locates()) {
        String label = locate.pass();
        boolean here =
            visit.passes().stream()
                .filter(pass -> label == null || pass.label().equals(label))
                .map(Pass::walk)
                .anyMatch(walk -> walk.stream().anyMatch(leg -> one.has(leg.reach())));
        if (here) {
          locates.add(locate);
        }
      }
    }
    return locates;
  }
}
