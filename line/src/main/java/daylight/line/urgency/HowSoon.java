package daylight.line.urgency;

import daylight.line.condition.Aspect;
import daylight.line.condition.Grade;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** How soon something is to be done about one finding. */
public sealed interface HowSoon {

  /** It outranks every grade: stop. */
  record Stop() implements HowSoon {}

  /** At once, for it stands on the published list of what calls for that. */
  record Listed() implements HowSoon {}

  /**
   * By class and consequence.
   *
   * @param urgency the word for it
   * @param aspect in which the class is the worse
   * @param consequence the worst that may come of it, as far as is known or taken
   * @param unknown worse ones of which nobody can tell
   * @param atWorst how soon it would be if the worst of these were so; null where it is no sooner
   */
  record Ruled(
      Urgency urgency,
      Grade grade,
      Aspect aspect,
      Consequence consequence,
      List<Consequence> unknown,
      @Nullable Urgency atWorst)
      implements HowSoon {
    public Ruled {
      unknown = List.copyOf(unknown);
    }
  }

  /** Not known, for it has no class, or not yet. */
  record CannotSay() implements HowSoon {}

  /** There is nothing to be done: it belongs to the pipe. */
  record Nothing() implements HowSoon {}

  /**
   * For putting what is soonest first, from 0. What has no class may be anything, so it comes
   * before what has time.
   */
  default int rank() {
    return switch (this) {
      case Stop stop -> 0;
      case Listed listed -> 1;
      case Ruled ruled ->
          switch (ruled.urgency()) {
            case AT_ONCE -> 10 + ruled.grade().number();
            case WITHIN_WEEKS -> 20 + ruled.grade().number();
            case WITHIN_A_YEAR -> 40 + ruled.grade().number();
            case WATCH -> 50 + ruled.grade().number();
          };
      case CannotSay cannotSay -> 30;
      case Nothing nothing -> 60;
    };
  }
}
