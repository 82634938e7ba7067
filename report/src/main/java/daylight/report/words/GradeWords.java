package daylight.report.words;

import daylight.line.condition.Aspect;
import daylight.line.condition.FindingGrade;
import daylight.line.condition.Grade;
import daylight.line.condition.GradeScheme;
import daylight.line.condition.Immediate;
import daylight.line.condition.Lack;
import daylight.line.condition.Verdict;
import daylight.line.measure.Argument;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Says the grade of a finding in a few words: number and word, structure and operation apart. */
public record GradeWords(Words words) {

  /** What a finding's grade is; empty where nothing is to be said, as of a bend. */
  public Optional<String> grade(FindingGrade grade) {
    if (grade.ungraded() == FindingGrade.Ungraded.OUTRANKS) {
      return Optional.of(words.word("finding.grade.outranks"));
    }
    List<String> said = new ArrayList<>();
    grade.verdicts().forEach((aspect, verdict) -> said.add(verdict(aspect, verdict)));
    if (grade.immediate() instanceof Immediate.Yes) {
      said.add(words.word("finding.grade.immediate"));
    }
    return said.isEmpty() ? Optional.empty() : Optional.of(words.beside(said));
  }

  /** By which scheme the grades are. */
  public String scheme(GradeScheme scheme) {
    Argument title = new Argument.Text(title(scheme));
    String adapted = adapted(scheme);
    return adapted == null
        ? words.say("finding.grade.scheme", title)
        : words.say("finding.grade.adapted", title, new Argument.Text(adapted));
  }

  /** What a scheme is called: our own in the reader's language, another as it calls itself. */
  public String title(GradeScheme scheme) {
    String key = "grades." + scheme.id() + ".title";
    return words.has(key) ? words.word(key) : scheme.title();
  }

  /** For what a scheme was adapted; null where it was not. */
  public @Nullable String adapted(GradeScheme scheme) {
    String key = "grades." + scheme.id() + ".adapted";
    String own = scheme.adaptedFor();
    return own != null && words.has(key) ? words.word(key) : own;
  }

  private String verdict(Aspect aspect, Verdict verdict) {
    Argument about = new Argument.Term(aspect.key());
    return switch (verdict) {
      case Verdict.Graded graded -> graded(about, graded);
      case Verdict.CannotSay(List<Lack> lacks) ->
          words.say(
              lacks.stream().anyMatch(lack -> lack.why() == Lack.Why.HIGHER_THAN_BORE)
                  ? "finding.grade.higher"
                  : "finding.grade.open",
              about,
              new Argument.Several(lacks.stream().map(this::lack).toList()));
      case Verdict.NoRow none -> words.say("finding.grade.no_row", about);
    };
  }

  private String graded(Argument about, Verdict.Graded graded) {
    List<Grade> between = graded.measure() == null ? List.of() : graded.measure().between();
    Argument number = new Argument.Number(graded.grade().number());
    Argument word = new Argument.Term(graded.grade().key());
    return between.size() < 2
        ? words.say("finding.grade.class", about, number, word)
        : words.say(
            "finding.grade.between",
            about,
            number,
            word,
            new Argument.Number(between.getFirst().number()),
            new Argument.Number(between.getLast().number()));
  }

  private Argument lack(Lack lack) {
    String key = "size." + lack.name();
    return new Argument.Text(words.has(key) ? words.word(key) : lack.name());
  }
}
