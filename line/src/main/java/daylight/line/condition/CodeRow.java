package daylight.line.condition;

import daylight.line.measure.Reading;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One code, and the findings that it is for.
 *
 * @param code as it is written
 * @param kinds ids of the kinds in the catalogue that it is for
 * @param applies which findings of them
 * @param range which sizes; null for all
 * @param name what the code is called where it comes from; null when it has no name of its own
 */
public record CodeRow(
    String code,
    List<String> kinds,
    Applies applies,
    @Nullable Range range,
    @Nullable String name) {
  public CodeRow {
    kinds = List.copyOf(kinds);
  }

  /**
   * Sizes that a code is for: the lower end belongs to it, the upper one does not.
   *
   * @param quantity its name in the catalogue
   * @param from the smallest, in the SI unit of the quantity; null for any
   * @param below what it must stay below; null for any
   */
  public record Range(String quantity, @Nullable Double from, @Nullable Double below) {
    boolean holds(Reading size) {
      return (from == null || size.value() >= from) && (below == null || size.value() < below);
    }
  }

  /** Whether the row is for every finding of its kinds that another one is for. */
  public boolean covers(CodeRow later) {
    boolean all = applies.equals(Applies.ALWAYS) || applies.equals(later.applies);
    return all && (range == null || range.equals(later.range));
  }

  /** Whether what was noted of a finding shows that it is meant. */
  boolean fits(Seen seen) {
    return kinds.contains(seen.kind()) && !applies.excludes(seen) && noted(seen) && sized(seen);
  }

  private boolean noted(Seen seen) {
    return applies.lacks(seen).isEmpty();
  }

  private boolean sized(Seen seen) {
    if (range == null) {
      return true;
    }
    Reading size = seen.sizes().get(range.quantity());
    return size != null && range.holds(size);
  }

  /** Whether it might be meant, had somebody noted what the row asks for. */
  boolean mightFit(Seen seen) {
    boolean sizeOpen = range == null || !seen.sizes().containsKey(range.quantity()) || sized(seen);
    return kinds.contains(seen.kind()) && !applies.excludes(seen) && sizeOpen;
  }
}
