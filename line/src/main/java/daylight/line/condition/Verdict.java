package daylight.line.condition;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a scheme says of a finding in one aspect. */
public sealed interface Verdict {

  /**
   * A grade.
   *
   * @param row what gave it
   * @param measure the size and limits that gave it; null where the row asks for no size
   */
  record Graded(Grade grade, GradeRow row, @Nullable Measure measure) implements Verdict {}

  /** No grade before something more is known. */
  record CannotSay(List<Lack> lacks) implements Verdict {
    public CannotSay {
      lacks = List.copyOf(lacks);
    }
  }

  /**
   * The scheme has rows for the kind, but none for such a one.
   *
   * @param by the particular that none of them is for; {@code bore} for the bore of the pipe
   * @param choices the texts of it that they are for
   */
  record NoRow(String by, List<String> choices) implements Verdict {
    public NoRow {
      choices = List.copyOf(choices);
    }
  }

  /**
   * A size against the limits of its row.
   *
   * @param reached the limit at which the class given begins; null for the class below all limits
   * @param next the limit at which the next worse class begins; null for the worst of the row
   * @param onLimit whether the size lies right on the limit reached or the next
   * @param chances of each class of the row, the worst first; empty where the size has no doubt
   * @param between the classes in which it lies 19 times of 20, the worst first; empty likewise
   */
  record Measure(
      Size size,
      GradeRow.@Nullable Limit reached,
      GradeRow.@Nullable Limit next,
      boolean onLimit,
      List<Chance> chances,
      List<Grade> between) {
    public Measure {
      chances = List.copyOf(chances);
      between = List.copyOf(between);
    }
  }

  /** The chance, from 0 to 1, that a finding is of a class, by the normal distribution. */
  record Chance(Grade grade, double chance) {}
}
