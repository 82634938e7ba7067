package daylight.line.condition;

import daylight.line.measure.Reading;
import java.util.List;

/**
 * One row of a scheme: what grade a finding of a kind has in one aspect.
 *
 * @param kind id of the kind in the catalogue
 * @param aspect what the grade is about
 * @param applies which findings of the kind it is for
 * @param by how the grade is come by
 */
public record GradeRow(String kind, Aspect aspect, Applies applies, By by, Cited cited) {

  /** How the grade is come by. */
  public sealed interface By {
    /** One grade, whatever the size. */
    record Always(Grade grade) implements By {}

    /**
     * By a size.
     *
     * @param sized which size
     * @param from where classes begin, the worst and largest first
     * @param below the class of what reaches none of them
     */
    record Limits(Sized sized, List<Limit> from, Grade below) implements By {
      public Limits {
        from = List.copyOf(from);
        Limit before = null;
        for (Limit limit : from) {
          boolean falls =
              before == null
                  || (limit.at().value() < before.at().value()
                      && before.grade().worseThan(limit.grade()));
          if (!falls || !limit.grade().worseThan(below) || !(limit.at().value() > 0)) {
            throw new IllegalArgumentException("limits must fall from the worst class on: " + from);
          }
          before = limit;
        }
        if (before == null) {
          throw new IllegalArgumentException("no limit");
        }
      }
    }
  }

  /**
   * Where a class begins.
   *
   * @param at in the SI unit of the size, with the words it stands in
   */
  public record Limit(Grade grade, Reading at) {}
}
