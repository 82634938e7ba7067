package daylight.archive;

import daylight.archive.form.Bare;
import daylight.archive.form.Section;
import daylight.archive.form.Shape;
import daylight.line.condition.Aspect;
import daylight.line.condition.Grade;
import daylight.line.condition.GradeScheme;
import daylight.line.condition.ShareOf;
import daylight.line.measure.Dimension;
import daylight.line.measure.Mark;
import java.util.List;

/** Every key of a table of grades. */
final class GradeShape {
  static final String GRADES_KEY = "daylight-grades";

  /** Limits have the dimension of their quantity; their shape is given where they are read. */
  private static final Shape LIMIT = new Shape.Amount(Dimension.LENGTH, Bare.NONE);

  /** Which classes can begin somewhere: all but the mildest. */
  static final List<Grade> BEGINNING =
      List.of(Grade.AT_ONCE, Grade.SHORT_TERM, Grade.MEDIUM_TERM, Grade.LONG_TERM);

  private static final Section FROM = from();

  private static final Section ANY_ROW =
      Section.named("any-row")
          .words("kind", "word", "without", "quantity", "or", "clause", "source", "note")
          .texts("is")
          .oneOf("of", ShareOf.class)
          .oneOf("mark", Mark.class)
          .amount("bore-from", Dimension.LENGTH)
          .amount("bore-to", Dimension.LENGTH)
          .amount("bore-below", Dimension.LENGTH);

  static final Section GRADE_ROW =
      Section.named("grade-row")
          .with(ANY_ROW)
          .oneOf("aspect", Aspect.class)
          .oneOf("class", Grade.class)
          .part("from", FROM)
          .oneOf("below", Grade.class);

  static final Section IMMEDIATE_ROW =
      Section.named("immediate-row").with(ANY_ROW).with("over", LIMIT);

  static final Section GRADES =
      Section.named("grades")
          .words(GRADES_KEY, "id", "title", "edition", "adapted-for", "note")
          .oneOf("on-limit", GradeScheme.OnLimit.class)
          .rows("rows", GRADE_ROW)
          .rows("immediate", IMMEDIATE_ROW);

  private GradeShape() {}

  private static Section from() {
    Section from = Section.named("grade-from");
    for (Grade grade : BEGINNING) {
      from = from.with(Section.word(grade), LIMIT);
    }
    return from;
  }
}
