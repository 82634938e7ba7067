package daylight.archive;

import daylight.archive.form.Section;
import daylight.archive.form.Shape;
import daylight.line.book.Reported;
import daylight.line.cause.Ask;
import daylight.line.cause.CauseTable;
import daylight.line.cause.Sign;
import daylight.line.condition.Grade;
import daylight.line.fall.WaterCause;
import daylight.line.measure.Dimension;
import daylight.line.measure.Mark;

/** Every key of a table of causes and of a list of words of complaints. */
final class CauseShape {
  static final String CAUSES_KEY = "daylight-causes";
  static final String WORDS_KEY = "daylight-complaint-words";

  static final Section SIGN =
      Section.named("sign")
          .oneOf("sign", Sign.class)
          .plain("times", Shape.Kind.NUMBER)
          .texts("kinds")
          .amount("share-from", Dimension.SHARE)
          .oneOf("class", Grade.class)
          .oneOf("held-by", WaterCause.class)
          .with("is", new Shape.Rows(new Shape.OneOf(Reported.When.class)));
  static final Section CAUSE =
      Section.named("cause")
          .words("cause")
          .with("of", new Shape.Rows(new Shape.OneOf(Reported.Kind.class)))
          .with("when", new Shape.Rows(new Shape.OneOf(Reported.When.class)))
          .oneOf("where", CauseTable.Reach.class)
          .rows("signs", SIGN)
          .with("asks", new Shape.Rows(new Shape.OneOf(Ask.class)))
          .words("source")
          .oneOf("mark", Mark.class)
          .words("note");
  static final Section CAUSES =
      Section.named("causes")
          .words(CAUSES_KEY, "id")
          .plain("probable-from", Shape.Kind.NUMBER)
          .plain("unlikely-to", Shape.Kind.NUMBER)
          .amount("near", Dimension.LENGTH)
          .amount("shallow", Dimension.LENGTH)
          .amount("deep", Dimension.LENGTH)
          .rows("causes", CAUSE);

  static final Section PHRASES =
      Section.named("phrases").oneOf("kind", Reported.Kind.class).texts("phrases");
  static final Section WORDS =
      Section.named("complaint-words")
          .words(WORDS_KEY, "language")
          .rows("kinds", PHRASES)
          .texts("denying");

  private CauseShape() {}
}
