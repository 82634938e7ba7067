package daylight.archive;

import daylight.archive.form.Bare;
import daylight.archive.form.Section;
import daylight.archive.form.Shape;
import daylight.line.book.Catalogue;
import daylight.line.book.Priors;
import daylight.line.book.Reach;
import daylight.line.measure.Dimension;
import daylight.line.measure.Mark;

/** Every key of the files of data. */
final class DataShape {
  static final String PRIORS_KEY = "daylight-priors";
  static final String CATALOGUE_KEY = "daylight-catalogue";
  static final String LIMITS_KEY = "daylight-limits";
  static final String FALL_RULES_KEY = "daylight-fall-rules";
  static final String HOLD_LIMITS_KEY = "daylight-hold-limits";

  /** A prior's a and b have the dimension of its kind; their shape is given where they are read. */
  static final Section PRIOR =
      Section.named("prior")
          .oneOf("kind", Priors.Kind.class)
          .with("a", new Shape.Amount(Dimension.LENGTH, Bare.NONE))
          .amount("b", Dimension.SLOPE)
          .amount("correlation-length", Dimension.LENGTH)
          .with("typical", new Shape.Amount(Dimension.LENGTH, Bare.NONE))
          .with("typical-sd", new Shape.Amount(Dimension.LENGTH, Bare.NONE))
          .plain("fair", Shape.Kind.NUMBER)
          .plain("poor", Shape.Kind.NUMBER)
          .words("source")
          .oneOf("mark", Mark.class)
          .words("note");

  static final Section PRIORS = Section.named("priors").words(PRIORS_KEY).rows("priors", PRIOR);

  static final Section QUANTITIES =
      Section.named("quantities").open(new Shape.OneOf(Dimension.class));
  static final Section SAYS =
      Section.named("says").open(new Shape.Rows(new Shape.Plain(Shape.Kind.WORDS)));
  static final Section KIND =
      Section.named("kind")
          .words("id")
          .oneOf("bears", Catalogue.Bears.class)
          .oneOf("hazard", Catalogue.Hazard.class)
          .plain("stretch", Shape.Kind.YES_NO)
          .part("quantities", QUANTITIES)
          .texts("words")
          .part("says", SAYS)
          .words("symbol", "letters-unchecked");
  static final Section CATALOGUE =
      Section.named("catalogue").words(CATALOGUE_KEY).rows("kinds", KIND);

  static final Section FALL_ROW =
      Section.named("fall-row")
          .amount("bore-from", Dimension.LENGTH)
          .amount("bore-to", Dimension.LENGTH)
          .with("uses", new Shape.Rows(new Shape.OneOf(Reach.Use.class)))
          .amount("slope", Dimension.SLOPE)
          .words("clause", "source")
          .oneOf("mark", Mark.class);
  static final Section FALL_RULES =
      Section.named("fall-rules")
          .words(FALL_RULES_KEY, "id", "title", "edition", "note")
          .rows("rows", FALL_ROW);

  static final Section LIMIT =
      Section.named("limit")
          .oneOf("what", LimitsReader.What.class)
          .amount("share", Dimension.SHARE)
          .amount("depth", Dimension.LENGTH)
          .amount("length", Dimension.LENGTH)
          .words("source")
          .oneOf("mark", Mark.class)
          .words("note");
  static final Section LIMITS = Section.named("limits").words(LIMITS_KEY).rows("limits", LIMIT);

  static final Section HOLD_LIMIT =
      Section.named("hold-limit")
          .words("id", "title")
          .amount("loss", Dimension.VOLUME)
          .amount("per-surface", Dimension.AREA)
          .amount("per-bore", Dimension.LENGTH)
          .amount("per-length", Dimension.LENGTH)
          .amount("in", Dimension.DURATION)
          .plain("no-drop", Shape.Kind.YES_NO)
          .amount("hold", Dimension.DURATION)
          .amount("head-from", Dimension.LENGTH)
          .amount("head-to", Dimension.LENGTH)
          .words("clause", "source")
          .oneOf("mark", Mark.class)
          .words("note");
  static final Section HOLD_LIMITS =
      Section.named("hold-limits").words(HOLD_LIMITS_KEY).rows("limits", HOLD_LIMIT);

  private DataShape() {}
}
