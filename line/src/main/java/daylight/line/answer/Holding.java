package daylight.line.answer;

import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Mark;
import daylight.line.measure.Measured;
import daylight.line.proving.HeldTest;
import daylight.line.proving.Hold;
import daylight.line.proving.HoldVerdict;
import daylight.line.proving.Lack;
import daylight.line.proving.Leak;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Tells what the hold tests of a line proved: for the stretch that was held, that day, under that
 * water, and for nothing else.
 */
final class Holding {
  private static final double DAY = 86_400;

  private final Case one;
  private final Telling tell;
  private final List<HeldTest> here;
  private final Set<String> remembered = new HashSet<>();

  Holding(Case one, Telling tell) {
    this.one = one;
    this.tell = tell;
    this.here = one.proving().holds().stream().filter(this::isHere).toList();
  }

  private boolean isHere(HeldTest held) {
    return held.reaches().isEmpty()
        ? one.touches(held.test().at())
        : held.reaches().stream().anyMatch(one::has);
  }

  boolean any() {
    return !here.isEmpty();
  }

  /** The first test that lost more than the deciding criterion allows; null where none did. */
  @Nullable HeldTest failed() {
    return here.stream()
        .filter(held -> verdict(held) == HoldVerdict.Verdict.FAILS)
        .findFirst()
        .orElse(null);
  }

  /** Whether a test was done that neither passed nor failed. */
  boolean open() {
    return here.stream()
        .map(Holding::verdict)
        .anyMatch(
            verdict ->
                verdict != HoldVerdict.Verdict.PASSES && verdict != HoldVerdict.Verdict.FAILS);
  }

  /** Whether every reach of the line was held, and each test passed. */
  boolean provesAll() {
    Set<String> held = new HashSet<>();
    for (HeldTest test : here) {
      if (verdict(test) == HoldVerdict.Verdict.PASSES) {
        held.addAll(test.reaches());
      }
    }
    return failed() == null
        && !one.runs().isEmpty()
        && one.runs().stream().allMatch(run -> held.contains(run.reach().label()));
  }

  private static HoldVerdict.@Nullable Verdict verdict(HeldTest held) {
    return held.deciding().map(HoldVerdict::verdict).orElse(null);
  }

  /** Tells each test; that it failed only where that does not make the headline. */
  void tell(@Nullable HeldTest headline) {
    boolean newWork = false;
    for (HeldTest held : here) {
      Leak leak = held.leak();
      Hold hold = held.hold();
      if (leak != null && hold != null) {
        boolean said = held.equals(headline);
        lost(held, hold, leak);
        for (HoldVerdict verdict : held.against()) {
          boolean deciding = held.deciding().filter(verdict::equals).isPresent();
          if (deciding && !said) {
            decided(held, verdict);
          } else if (!deciding) {
            tell.reason(
                AnswerKey.HOLD_OTHER,
                rule(verdict),
                new Argument.Term("hold." + lower(verdict.verdict())));
          }
          fromMemory(verdict);
        }
        newWork |= !held.against().isEmpty();
      } else {
        tell.noted(held.test(), new Argument.Term("test.hold"));
        tell.reason(AnswerKey.HOLD_NOT_READ, new Argument.Label(held.test().label()));
      }
      missing(held);
    }
    if (newWork) {
      tell.reason(AnswerKey.HOLD_NEW_WORK);
    }
  }

  /** The headline of a stretch that leaks. */
  Answer leaks(HeldTest held) {
    HoldVerdict verdict = held.deciding().orElseThrow();
    Measured allowed = verdict.allowed();
    Leak leak = held.leak();
    if (leak == null || allowed == null) {
      throw new IllegalArgumentException("it did not fail: " + held);
    }
    tell.noted(held.test(), new Argument.Term("test.hold"));
    return tell.answer(
        State.NO,
        Sureness.SURE,
        leak.atLeast() ? AnswerKey.SOUND_LEAKS_AT_LEAST : AnswerKey.SOUND_LEAKS,
        reaches(held),
        aDay(FigureKey.LOST, leak.rate().value()),
        aDay(FigureKey.LOST_OFF, Measured.Z95 * leak.rate().sd()),
        aDay(FigureKey.ALLOWED, allowed.value()),
        rule(verdict));
  }

  private void lost(HeldTest held, Hold hold, Leak leak) {
    tell.noted(held.test(), new Argument.Term("test.hold"));
    Argument at = tell.node(held.test().at());
    Argument time = time(FigureKey.HELD_FOR, hold.duration().value());
    if (leak.atLeast()) {
      tell.reason(AnswerKey.HOLD_LEFT_RISER, at, time, aDay(FigureKey.LOST, leak.rate().value()));
    } else if (leak.lost().value() > 0) {
      tell.reason(
          AnswerKey.HOLD_LOST,
          at,
          time,
          aDay(FigureKey.LOST, leak.rate().value()),
          aDay(FigureKey.LOST_OFF, Measured.Z95 * leak.rate().sd()));
    } else {
      tell.reason(
          AnswerKey.HOLD_NO_DROP,
          at,
          time,
          aDay(FigureKey.LOST_MOST, HoldVerdict.unseen(leak, hold.duration())));
    }
  }

  private void decided(HeldTest held, HoldVerdict verdict) {
    Measured allowed = verdict.allowed();
    Double within = verdict.within();
    if (allowed == null || within == null) {
      return;
    }
    Argument limit = aDay(FigureKey.ALLOWED, allowed.value());
    Argument rule = rule(verdict);
    switch (verdict.verdict()) {
      case PASSES -> tell.reason(AnswerKey.HOLD_WITHIN, reaches(held), limit, rule);
      case FAILS -> tell.reason(AnswerKey.HOLD_BEYOND, reaches(held), limit, rule);
      case TOO_CLOSE ->
          tell.reason(
              AnswerKey.HOLD_CLOSE,
              reaches(held),
              limit,
              rule,
              tell.figure(FigureKey.WITHIN, new Argument.Probability(within), null));
      case HEAD_UNKNOWN, HEAD_TOO_LOW, HEAD_TOO_HIGH, TOO_SHORT, LEFT_THE_RISER ->
          tell.reason(
              AnswerKey.HOLD_UNDECIDED,
              reaches(held),
              limit,
              rule,
              new Argument.Term("hold." + lower(verdict.verdict())));
    }
  }

  private void missing(HeldTest held) {
    Argument test = new Argument.Label(held.test().label());
    for (Lack lack : held.lacks()) {
      Argument reach = new Argument.Label(lack.reach());
      switch (lack.why()) {
        case LOSS -> tell.missing(AnswerKey.MISSING_HOLD_LOSS, test);
        case DURATION -> tell.missing(AnswerKey.MISSING_HOLD_DURATION, test);
        case RISER -> tell.missing(AnswerKey.MISSING_HOLD_RISER, test);
        case REACHES -> tell.missing(AnswerKey.MISSING_HOLD_REACHES, test);
        case BORE -> tell.missing(AnswerKey.MISSING_BORE, reach);
        case LENGTH -> tell.missing(AnswerKey.MISSING_LENGTH, reach);
      }
    }
    held.deciding().ifPresent(verdict -> missing(test, verdict));
  }

  private void missing(Argument test, HoldVerdict verdict) {
    Double longer = verdict.longer();
    Double from = verdict.limit().headFrom();
    Double to = verdict.limit().headTo();
    switch (verdict.verdict()) {
      case PASSES, FAILS -> {}
      case TOO_CLOSE, TOO_SHORT -> {
        if (longer == null) {
          tell.missing(AnswerKey.MISSING_HOLD_FINER, test);
        } else {
          tell.missing(
              AnswerKey.MISSING_HOLD_LONGER,
              test,
              new Argument.Quantity(Dimension.DURATION, longer));
        }
      }
      case HEAD_UNKNOWN -> tell.missing(AnswerKey.MISSING_HOLD_HEAD, test);
      case HEAD_TOO_LOW ->
          tell.missing(
              AnswerKey.MISSING_HOLD_HIGHER, test, new Argument.Length(from == null ? 0 : from));
      case HEAD_TOO_HIGH ->
          tell.missing(
              AnswerKey.MISSING_HOLD_LOWER, test, new Argument.Length(to == null ? 0 : to));
      case LEFT_THE_RISER -> tell.missing(AnswerKey.MISSING_HOLD_SHORTER, test);
    }
  }

  /** The criterion's name, laid down as evidence with what it allows where it allows something. */
  private Argument rule(HoldVerdict verdict) {
    Measured allowed = verdict.allowed();
    Argument limit =
        allowed == null
            ? new Argument.Term("hold.no_drop")
            : new Argument.Quantity(Dimension.VOLUME, allowed.value() * DAY);
    tell.rule(verdict.limit().title(), verdict.limit().clause(), limit, verdict.limit().source());
    return new Argument.Text(verdict.limit().title());
  }

  private void fromMemory(HoldVerdict verdict) {
    if (verdict.limit().mark() == Mark.FROM_MEMORY && remembered.add(verdict.limit().id())) {
      tell.reason(AnswerKey.HOLD_FROM_MEMORY, new Argument.Text(verdict.limit().title()));
    }
  }

  private static Argument reaches(HeldTest held) {
    List<Argument> labels = new ArrayList<>();
    held.reaches().forEach(label -> labels.add(new Argument.Label(label)));
    return new Argument.Several(labels);
  }

  private Argument time(FigureKey what, double seconds) {
    return tell.figure(what, new Argument.Quantity(Dimension.DURATION, seconds), null);
  }

  private Argument aDay(FigureKey what, double rate) {
    return tell.figure(
        what, new Argument.Quantity(Dimension.VOLUME, Math.max(0, rate) * DAY), null);
  }

  private static String lower(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT);
  }
}
