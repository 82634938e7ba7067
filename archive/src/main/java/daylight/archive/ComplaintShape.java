package daylight.archive;

import daylight.archive.form.Section;
import daylight.archive.form.Shape;
import daylight.line.book.Reported;

/** Every key of a complaint that says more than words. */
final class ComplaintShape {
  static final Section REPORTED =
      Section.named("complaint")
          .words("words")
          .with("kinds", new Shape.Rows(new Shape.OneOf(Reported.Kind.class)))
          .words("at")
          .oneOf("when", Reported.When.class);

  private ComplaintShape() {}
}
