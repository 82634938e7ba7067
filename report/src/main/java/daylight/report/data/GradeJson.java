package daylight.report.data;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.line.condition.Aspect;
import daylight.line.condition.Cited;
import daylight.line.condition.FindingGrade;
import daylight.line.condition.GradeScheme;
import daylight.line.condition.Immediate;
import daylight.line.condition.Lack;
import daylight.line.condition.Verdict;
import daylight.report.words.GradeWords;
import daylight.report.words.Words;
import java.util.List;
import java.util.Locale;

/** The grade of a finding: class and word by aspect with the source, and action at once. */
final class GradeJson {
  private final Words words;

  GradeJson(Words words) {
    this.words = words;
  }

  /** By which scheme the grades are. */
  ObjectNode scheme(GradeScheme scheme) {
    return Json.object()
        .put("id", scheme.id())
        .put("title", scheme.title())
        .put("adaptedFor", scheme.adaptedFor())
        .put("onLimit", lower(scheme.onLimit()));
  }

  ObjectNode of(FindingGrade grade) {
    ObjectNode json = Json.object();
    grade.verdicts().forEach((aspect, verdict) -> verdict(json, aspect, verdict));
    FindingGrade.Ungraded ungraded = grade.ungraded();
    json.put("ungraded", ungraded == null ? null : lower(ungraded));
    json.put("immediate", immediate(grade.immediate()));
    return json.put("sentence", new GradeWords(words).grade(grade).orElse(null));
  }

  private void verdict(ObjectNode into, Aspect aspect, Verdict verdict) {
    ObjectNode json = into.putObject(lower(aspect));
    switch (verdict) {
      case Verdict.Graded graded -> {
        json.put("class", graded.grade().number()).put("word", words.word(graded.grade()));
        Verdict.Measure measure = graded.measure();
        ArrayNode chances = json.putArray("chances");
        if (measure != null) {
          for (Verdict.Chance chance : measure.chances()) {
            chances
                .addObject()
                .put("class", chance.grade().number())
                .put("chance", Json.number(chance.chance()));
          }
        }
        Cited cited = graded.row().cited();
        json.put("source", cited.source()).put("clause", cited.clause());
        json.put("mark", lower(cited.mark()));
      }
      case Verdict.CannotSay(List<Lack> lacks) -> {
        ArrayNode missing = json.putArray("missing");
        lacks.forEach(lack -> missing.add(lack.name()));
      }
      case Verdict.NoRow(String by, var choices) -> json.put("noRow", by);
    }
  }

  private static String immediate(Immediate immediate) {
    return switch (immediate) {
      case Immediate.Yes yes -> "yes";
      case Immediate.No no -> "no";
      case Immediate.Open open -> "open";
      case Immediate.NotListed none -> "not_listed";
    };
  }

  private static String lower(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }
}
