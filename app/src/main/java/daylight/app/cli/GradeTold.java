package daylight.app.cli;

import daylight.line.condition.Aspect;
import daylight.line.condition.Cited;
import daylight.line.condition.Condition;
import daylight.line.condition.FindingGrade;
import daylight.line.condition.Grade;
import daylight.line.condition.GradeRow;
import daylight.line.condition.GradeScheme;
import daylight.line.condition.Immediate;
import daylight.line.condition.Lack;
import daylight.line.condition.ShareOf;
import daylight.line.condition.Size;
import daylight.line.condition.Verdict;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Mark;
import daylight.line.measure.Reading;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What is said of one finding's grade. */
final class GradeTold {
  private final GradeScheme scheme;
  private final @Nullable Reading bore;
  private final boolean usual;
  private final Figured figured = new Figured("grade");

  /**
   * @param bore as it was written; null where it was not
   * @param usual whether a depth was given the doubt that is usual
   */
  GradeTold(Condition condition, @Nullable Reading bore, boolean usual) {
    this.scheme = condition.scheme();
    this.bore = bore;
    this.usual = usual;
  }

  Figured figured(FindingGrade grade) {
    Argument kind = new Argument.Term("kind." + grade.kind());
    if (grade.ungraded() == FindingGrade.Ungraded.OUTRANKS) {
      return figured.saying("outranks", kind);
    }
    if (grade.ungraded() == FindingGrade.Ungraded.FEATURE) {
      return figured.saying("feature", kind);
    }
    if (grade.ungraded() != null) {
      figured.saying("ungraded", kind);
    }
    grade.verdicts().forEach(this::verdict);
    immediate(grade.immediate());
    String adapted = scheme.adaptedFor();
    if (adapted == null) {
      figured.saying("scheme", text(scheme.title()));
    } else {
      figured.saying("adapted", text(scheme.title()), text(adapted));
    }
    String note = scheme.note();
    if (note != null) {
      figured.saying("note", text(note));
    }
    return figured.saying("caution");
  }

  private void verdict(Aspect aspect, Verdict verdict) {
    switch (verdict) {
      case Verdict.Graded graded -> graded(aspect, graded);
      case Verdict.CannotSay(List<Lack> lacks) -> lacks(new Argument.Term(aspect.key()), lacks);
      case Verdict.NoRow(String by, List<String> choices) ->
          figured.saying(
              "no-row", new Argument.Term(aspect.key()), text(by), new Argument.Choices(choices));
    }
  }

  private void graded(Aspect aspect, Verdict.Graded graded) {
    figured.with(
        aspect.name().toLowerCase(Locale.ROOT),
        new Argument.Number(graded.grade().number()),
        new Argument.Term(graded.grade().key()));
    Verdict.Measure measure = graded.measure();
    if (measure == null) {
      figured.saying("always");
    } else {
      workedOut(measure.size());
      limits(measure);
      doubt(measure);
    }
    source(graded.row().cited());
  }

  private void workedOut(Size size) {
    Reading inside = bore;
    if (size.workedOut() && inside != null) {
      figured.with(
          "worked-out",
          new Argument.Quantity(size.sized().dimension(), size.value()),
          new Argument.Term("size." + size.from()),
          text(size.reading().written()),
          text(inside.written()),
          name(size));
    }
  }

  private void limits(Verdict.Measure measure) {
    Size size = measure.size();
    GradeRow.Limit reached = measure.reached();
    GradeRow.Limit next = measure.next();
    if (reached != null) {
      figured.with(
          "limit",
          exact(size, reached.at().value()),
          name(size),
          said(size),
          text(reached.at().written()),
          new Argument.Number(reached.grade().number()));
    }
    if (next != null) {
      figured.with(
          reached == null ? "below" : "next",
          exact(size, next.at().value()),
          name(size),
          said(size),
          text(next.at().written()),
          new Argument.Number(next.grade().number()));
    }
    if (measure.onLimit()) {
      figured.saying("on-limit-" + scheme.onLimit().name().toLowerCase(Locale.ROOT));
    }
  }

  private void doubt(Verdict.Measure measure) {
    if (measure.size().doubt() == null) {
      figured.saying("no-doubt");
      return;
    }
    if (usual) {
      figured.saying("usual-doubt");
    }
    List<Grade> between = measure.between();
    if (between.size() < 2) {
      figured.saying("sure");
      return;
    }
    for (Verdict.Chance chance : measure.chances()) {
      if (between.contains(chance.grade())) {
        figured.with(
            "class-" + chance.grade().number(),
            new Argument.Probability(chance.chance()),
            new Argument.Number(chance.grade().number()),
            new Argument.Term(chance.grade().key()));
      }
    }
    figured.saying(
        "between",
        new Argument.Number(between.getFirst().number()),
        new Argument.Number(between.getLast().number()));
  }

  private void immediate(Immediate immediate) {
    switch (immediate) {
      case Immediate.Yes(var row, var past) -> {
        if (past == null) {
          figured.saying("immediate");
        } else {
          against("immediate-limit", past);
        }
        source(row.cited());
      }
      case Immediate.No(var row, var against) -> {
        against("not-immediate", against);
        source(row.cited());
      }
      case Immediate.Open(List<Lack> lacks) ->
          lacks(new Argument.Term("figure.grade.action"), lacks);
      case Immediate.NotListed() -> figured.saying("not-listed");
    }
  }

  private void against(String key, Immediate.Against against) {
    Size size = against.size();
    figured.with(
        key,
        exact(size, against.over().limit().value()),
        name(size),
        said(size),
        text(against.over().limit().written()));
    Double chance = against.chance();
    if (chance != null) {
      figured.with("immediate-chance", new Argument.Probability(chance));
    }
  }

  private void lacks(Argument what, List<Lack> lacks) {
    for (Lack lack : lacks) {
      figured.saying(
          "lack-" + lack.why().name().toLowerCase(Locale.ROOT).replace('_', '-'),
          what,
          text(lack.why() == Lack.Why.BORE ? "--bore" : GradeSizes.option(lack.name())),
          lack.why() == Lack.Why.SIZE ? options(lack) : new Argument.Choices(lack.choices()));
    }
    figured.contradicted();
  }

  private static Argument options(Lack lack) {
    return new Argument.Choices(lack.choices().stream().map(GradeSizes::option).toList());
  }

  private void source(Cited cited) {
    figured.saying(
        "source",
        text(cited.source()),
        text(cited.clause()),
        new Argument.Term(cited.mark().key()));
    if (cited.mark() == Mark.FROM_MEMORY) {
      figured.saying("from-memory");
    }
    String note = cited.note();
    if (note != null) {
      figured.saying("note", text(note));
    }
  }

  /** The size as it was written, or worked out. */
  private static Argument said(Size size) {
    return size.workedOut()
        ? new Argument.Quantity(size.sized().dimension(), size.value())
        : text(size.reading().written());
  }

  private static Argument name(Size size) {
    ShareOf of = size.sized().of();
    return new Argument.Term(of == null ? "size." + size.sized().quantity() : of.key());
  }

  private static Argument exact(Size size, double value) {
    return size.sized().dimension() == Dimension.LENGTH
        ? new Argument.Small(value)
        : new Argument.Quantity(size.sized().dimension(), value);
  }

  private static Argument text(String text) {
    return new Argument.Text(text);
  }
}
