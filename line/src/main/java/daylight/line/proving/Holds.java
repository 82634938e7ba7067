package daylight.line.proving;

import daylight.line.measure.Measured;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The door for a hold test by itself: what it lost, and what published criteria say to that. */
public final class Holds {
  /** Sure enough either way. */
  private static final double SURE = 0.95;

  /** Nobody waits longer than a day, in seconds; common practice, no source. */
  private static final double WORTH_WAITING = 86_400;

  /** Times to wait are told in steps of five minutes. */
  private static final double STEP = 300;

  /** Lengths that were changed from one unit into another are the same within this share. */
  private static final double SAME = 1e-9;

  private Holds() {}

  /**
   * What was lost. The free surface is that of the riser, π/4 × bore²; its doubt is that of the
   * drop and of the riser's bore. Where the level fell by more than the head it left the riser, and
   * the loss is at least what stood in it.
   */
  public static Leak leak(Hold hold) {
    Measured duration = hold.duration();
    return switch (hold.loss()) {
      case Hold.Loss.Drop(Measured drop, Measured riser) -> {
        Double head = hold.head();
        double stood = head == null ? Double.POSITIVE_INFINITY : head;
        boolean left = drop.value() > stood * (1 + SAME);
        double fell = left ? stood : drop.value();
        double surface = StrictMath.PI / 4 * riser.value() * riser.value();
        double reading = surface * drop.sd();
        double byBore = StrictMath.abs(fell) * StrictMath.PI / 2 * riser.value() * riser.sd();
        Measured lost = new Measured(fell * surface, StrictMath.hypot(reading, byBore));
        yield new Leak(lost, over(lost, duration), reading, left);
      }
      case Hold.Loss.ToppedUp(Measured volume) ->
          new Leak(volume, over(volume, duration), volume.sd(), false);
    };
  }

  private static Measured over(Measured volume, Measured duration) {
    double rate = volume.value() / duration.value();
    double byTime = rate * duration.sd() / duration.value();
    return new Measured(rate, StrictMath.hypot(volume.sd() / duration.value(), byTime));
  }

  /**
   * Each criterion by itself; one that goes by bore and length is left out where these are not
   * known.
   */
  public static List<HoldVerdict> against(Hold hold, HoldLimits limits) {
    List<HoldVerdict> verdicts = new ArrayList<>();
    Leak leak = leak(hold);
    for (HoldLimit limit : limits.rows()) {
      Double rate = limit.perBoreAndLength();
      Measured held = hold.boreTimesLength();
      if (rate == null) {
        verdicts.add(drop(hold, leak, limit));
      } else if (held != null) {
        verdicts.add(allowance(hold, leak, limit, held.times(rate)));
      }
    }
    return List.copyOf(verdicts);
  }

  private static HoldVerdict allowance(Hold hold, Leak leak, HoldLimit limit, Measured allowed) {
    double time = hold.duration().value();
    double least = orZero(limit.hold());
    boolean hurried = time < least * (1 - SAME);
    double within = within(leak, allowed, hold.duration(), time);
    // What the criterion allows over its whole time may have gone in less.
    boolean gone = within(leak, allowed, hold.duration(), hurried ? least : time) <= 1 - SURE;
    if (gone) {
      return said(limit, beyond(limit, hold.head()), allowed, within, null);
    }
    if (leak.atLeast()) {
      return said(limit, HoldVerdict.Verdict.LEFT_THE_RISER, allowed, within, null);
    }
    if (hurried) {
      double longer = within >= SURE ? least : Math.max(least, orZero(longer(hold, leak, allowed)));
      return said(limit, HoldVerdict.Verdict.TOO_SHORT, allowed, within, longer);
    }
    if (within >= SURE) {
      return said(limit, inside(limit, hold.head()), allowed, within, null);
    }
    return said(limit, HoldVerdict.Verdict.TOO_CLOSE, allowed, within, longer(hold, leak, allowed));
  }

  private static HoldVerdict said(
      HoldLimit limit,
      HoldVerdict.Verdict verdict,
      Measured allowed,
      double within,
      @Nullable Double longer) {
    return new HoldVerdict(limit, verdict, allowed, within, longer);
  }

  /** The probability that what was lost is no more than what may be lost in a time. */
  private static double within(Leak leak, Measured allowed, Measured duration, double time) {
    double byWatch = allowed.value() * duration.sd();
    double sd = StrictMath.hypot(StrictMath.hypot(leak.lost().sd(), allowed.sd() * time), byWatch);
    return new Measured(leak.lost().value() - allowed.value() * time, sd).probabilityBelow(0);
  }

  /**
   * The time after which it would be told if it goes on losing as it did: the reading errs no more
   * then, and everything else grows with time.
   */
  private static @Nullable Double longer(Hold hold, Leak leak, Measured allowed) {
    double time = hold.duration().value();
    double apart = StrictMath.abs(allowed.value() - leak.lost().value() / time);
    double fixed =
        HoldVerdict.Z90 * StrictMath.hypot(leak.reading(), allowed.value() * hold.duration().sd());
    double lostSd = leak.lost().sd();
    double scale = StrictMath.sqrt(Math.max(0, lostSd * lostSd - leak.reading() * leak.reading()));
    double grows = HoldVerdict.Z90 * StrictMath.hypot(allowed.sd(), scale / time);
    if (apart <= grows) {
      return null;
    }
    double needed = fixed / StrictMath.sqrt(apart * apart - grows * grows);
    double step = StrictMath.ceil(Math.max(needed, time + STEP) / STEP) * STEP;
    return step > WORTH_WAITING ? null : Double.valueOf(step);
  }

  private static HoldVerdict drop(Hold hold, Leak leak, HoldLimit limit) {
    double time = hold.duration().value();
    double lost = leak.lost().value();
    double seen = HoldVerdict.Z90 * leak.reading();
    double least = orZero(limit.hold());
    if (lost > seen) {
      return new HoldVerdict(limit, beyond(limit, hold.head()), null, null, null);
    }
    if (time < least * (1 - SAME)) {
      return new HoldVerdict(limit, HoldVerdict.Verdict.TOO_SHORT, null, null, least);
    }
    if (lost > 0) {
      double longer = StrictMath.ceil(time * seen / lost / STEP) * STEP;
      Double worth = longer > WORTH_WAITING ? null : Double.valueOf(longer);
      return new HoldVerdict(limit, HoldVerdict.Verdict.TOO_CLOSE, null, null, worth);
    }
    return new HoldVerdict(limit, inside(limit, hold.head()), null, null, null);
  }

  /** Under more water than the criterion allows, a loss beyond it is no failure by it. */
  private static HoldVerdict.Verdict beyond(HoldLimit limit, @Nullable Double head) {
    Double most = limit.headTo();
    if (most == null || (head != null && head <= most * (1 + SAME))) {
      return HoldVerdict.Verdict.FAILS;
    }
    return head == null ? HoldVerdict.Verdict.HEAD_UNKNOWN : HoldVerdict.Verdict.HEAD_TOO_HIGH;
  }

  /** Under less water than the criterion asks, a loss within it is no pass by it. */
  private static HoldVerdict.Verdict inside(HoldLimit limit, @Nullable Double head) {
    Double least = limit.headFrom();
    if (least == null || (head != null && head >= least * (1 - SAME))) {
      return HoldVerdict.Verdict.PASSES;
    }
    return head == null ? HoldVerdict.Verdict.HEAD_UNKNOWN : HoldVerdict.Verdict.HEAD_TOO_LOW;
  }

  private static double orZero(@Nullable Double seconds) {
    return seconds == null ? 0 : seconds;
  }
}
