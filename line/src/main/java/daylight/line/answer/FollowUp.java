package daylight.line.answer;

import daylight.line.book.Papers;
import daylight.line.course.PlacedFinding;
import daylight.line.measure.Key;
import daylight.line.urgency.HowSoon;
import daylight.line.urgency.TimeLimits;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Something to come back to after the visit.
 *
 * @param id an identity that the same thing keeps when the book is answered again
 * @param line the label of the line; null where it is of the site
 * @param stopped whether that line has a stop order, which comes before all else
 */
public record FollowUp(UUID id, What what, Due due, @Nullable String line, boolean stopped) {

  /** When. */
  public sealed interface Due {
    /**
     * On a day, or until its end.
     *
     * @param limit by which length of time from the visit; null where the book itself says the day
     */
    record On(LocalDate day, TimeLimits.@Nullable Limit limit) implements Due {}

    /** No day can be told, and none is made up. */
    record Open(Why why) implements Due {}
  }

  /** Why no day can be told. */
  public enum Why implements Key {
    /** Nobody noted the day of the visit. */
    NO_DAY,
    /** How soon cannot be said: what was found has no class, or not yet. */
    NO_CLASS,
    /** The table of urgency says of no length of time. */
    NO_LENGTH;

    @Override
    public String key() {
      return "follow.open." + name().toLowerCase(Locale.ROOT);
    }
  }

  /** Where a finding is, as the answers say it. */
  public record Spot(double station, String from) {}

  /** What. */
  public sealed interface What {
    /** A stop order: whose pipe or cable it is has to be told at once. */
    record Stop(PlacedFinding finding, Spot spot) implements What {}

    /**
     * Something to be done about a finding.
     *
     * @param how how soon by the rule
     * @param atWorst the day where a consequence that nobody knows were so; null where that is no
     *     sooner or cannot be told
     * @param dig where to dig for it; null where nobody need or may
     */
    record Work(
        PlacedFinding finding,
        Spot spot,
        HowSoon how,
        @Nullable LocalDate atWorst,
        @Nullable DigPlace dig)
        implements What {}

    /**
     * A line to be looked at again.
     *
     * @param reasons the earliest first, at least one
     * @param watched what is to be watched until then
     */
    record Look(List<Reason> reasons, List<Watched> watched) implements What {
      public Look {
        reasons = List.copyOf(reasons);
        watched = List.copyOf(watched);
      }
    }

    /** A ticket of the notify-before-you-dig service that runs out. */
    record Ticket(Papers.Ticket ticket) implements What {}

    /** Somebody's consent, on the day it was given. */
    record Consent(Papers.Consent consent) implements What {}
  }

  /**
   * Why a line is looked at again.
   *
   * @param why an {@link daylight.line.urgency.Occasion}, or {@link
   *     daylight.line.urgency.Urgency#WATCH}
   * @param due by when for that reason
   */
  public record Reason(Key why, Due due) {}

  /** A finding to be watched. */
  public record Watched(PlacedFinding finding, Spot spot) {}
}
