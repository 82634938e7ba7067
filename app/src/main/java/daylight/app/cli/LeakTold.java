package daylight.app.cli;

import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Mark;
import daylight.line.measure.Measured;
import daylight.line.proving.Hold;
import daylight.line.proving.HoldLimit;
import daylight.line.proving.HoldLimits;
import daylight.line.proving.HoldVerdict;
import daylight.line.proving.Holds;
import daylight.line.proving.Leak;
import java.util.List;
import java.util.Locale;

/** What is said of one hold test. */
final class LeakTold {
  private static final double DAY = 86_400;

  private final Hold hold;
  private final HoldLimits limits;
  private final boolean usual;
  private final Figured figured = new Figured("leak");

  /**
   * @param usual whether some reading was given the doubt that is usual
   */
  LeakTold(Hold hold, HoldLimits limits, boolean usual) {
    this.hold = hold;
    this.limits = limits;
    this.usual = usual;
  }

  Figured figured() {
    Leak leak = Holds.leak(hold);
    lost(leak);
    List<HoldVerdict> verdicts = Holds.against(hold, limits);
    verdicts.forEach(verdict -> against(verdict, leak));
    Measured stretch = hold.boreTimesLength();
    if (stretch == null) {
      figured.saying("no-stretch");
    }
    verdicts.forEach(this::source);
    if (usual) {
      figured.saying("usual-doubt");
    }
    boolean told =
        verdicts.stream()
            .filter(verdict -> verdict.allowed() != null)
            .findFirst()
            .map(HoldVerdict::verdict)
            .filter(
                verdict ->
                    verdict == HoldVerdict.Verdict.PASSES || verdict == HoldVerdict.Verdict.FAILS)
            .isPresent();
    if (!told) {
      figured.contradicted();
    }
    return figured.saying("new-work").saying("caution");
  }

  private void lost(Leak leak) {
    Argument time = new Argument.Quantity(Dimension.DURATION, hold.duration().value());
    Measured lost = leak.lost();
    if (leak.atLeast()) {
      figured.with("lost-at-least", volume(lost.value()), time);
    } else {
      figured.with("lost", volume(lost.value()), time, volume(Measured.Z95 * lost.sd()));
    }
    figured.with(
        "rate", volume(leak.rate().value() * DAY), volume(Measured.Z95 * leak.rate().sd() * DAY));
    double unseen = HoldVerdict.unseen(leak, hold.duration());
    figured.with("most", volume(unseen * DAY));
    Measured stretch = hold.boreTimesLength();
    if (stretch != null) {
      figured.with("wall", new Argument.Quantity(Dimension.AREA, StrictMath.PI * stretch.value()));
    }
  }

  private void against(HoldVerdict verdict, Leak leak) {
    Argument title = Given.text(verdict.limit().title());
    String word = verdict.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-');
    Measured allowed = verdict.allowed();
    Double within = verdict.within();
    if (allowed != null && within != null) {
      figured.with(word, volume(allowed.value() * DAY), title, new Argument.Probability(within));
    } else {
      boolean read = leak.lost().value() > 0;
      double rate = read ? leak.rate().value() : HoldVerdict.unseen(leak, hold.duration());
      figured.with("no-drop-" + word, volume(rate * DAY), title);
    }
  }

  private void source(HoldVerdict verdict) {
    HoldLimit limit = verdict.limit();
    Double longer = verdict.longer();
    Argument title = Given.text(limit.title());
    if (longer != null) {
      figured.saying("longer", new Argument.Quantity(Dimension.DURATION, longer), title);
    } else if (verdict.verdict() == HoldVerdict.Verdict.TOO_CLOSE) {
      figured.saying("not-by-waiting", title);
    }
    figured.saying(
        "source",
        Given.text(limit.source()),
        Given.text(limit.clause()),
        new Argument.Term("mark." + limit.mark().name().toLowerCase(Locale.ROOT)));
    String note = limit.note();
    if (note != null) {
      figured.saying("note", Given.text(note));
    }
    if (limit.mark() == Mark.FROM_MEMORY) {
      figured.saying("from-memory", title);
    }
  }

  private static Argument volume(double cubicMetres) {
    return new Argument.Quantity(Dimension.VOLUME, Math.max(0, cubicMetres));
  }
}
