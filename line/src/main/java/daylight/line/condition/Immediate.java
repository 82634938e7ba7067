package daylight.line.condition;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Whether a finding stands on the list of those that call for action at once. */
public sealed interface Immediate {

  /**
   * It does.
   *
   * @param past its size against the limit; null where the row asks for none
   */
  record Yes(ImmediateRow row, @Nullable Against past) implements Immediate {}

  /** It does not reach the limit of the list; where it has several, the nearest is told. */
  record No(ImmediateRow row, Against against) implements Immediate {}

  /** Not known before something more is. */
  record Open(List<Lack> lacks) implements Immediate {
    public Open {
      lacks = List.copyOf(lacks);
    }
  }

  /** The list has no row for such a finding. */
  record NotListed() implements Immediate {}

  /**
   * A size against the limit of the list.
   *
   * @param onLimit whether it lies right on it
   * @param chance that it is past the limit, from 0 to 1; null where the size has no doubt
   */
  record Against(Size size, ImmediateRow.Over over, boolean onLimit, @Nullable Double chance) {}
}
