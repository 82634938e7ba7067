package daylight.line.counter;

import daylight.line.book.Pass;
import daylight.line.counter.Track.Sample;
import daylight.line.counter.Track.State;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** Fits one recording to its passes. */
final class Fitter {
  /** A moment is typed to within this, seconds; common practice, no source. */
  private static final double TYPED = 0.5;

  /** Readings noted about a setting of the counter may differ by this, metres: the cable eases. */
  private static final double EASE = 0.02;

  /** A zero that was counted out may be off by a foot; common practice, no source. */
  private static final double COUNTED = 0.3048;

  /** While a camera is made ready its cable runs no further, metres; common practice, no source. */
  private static final double MADE_READY = 2;

  private final String medium;
  private final List<Pass> passes;
  private final Track read;
  private final double step;
  private final List<Misfit> misfits = new ArrayList<>();

  Fitter(String medium, List<Pass> passes, Track read, double step) {
    this.medium = medium;
    this.passes = passes;
    this.read = read;
    this.step = step;
  }

  /** From one moment on, the recording shows a pass, or nobody knows what. */
  private record Share(double from, @Nullable Pass pass) {}

  Fitted fitted() {
    Track corrected = corrected(true);
    List<Fitted.OfPass> tracks = new ArrayList<>();
    // Between what was read and what a person put in its place the counter may seem to leap.
    List<Share> shares = shares(corrected(false));
    for (Pass pass : passes) {
      Track own = completed(shared(corrected, shares, pass), unlike(pass, corrected));
      if (own.samples().stream().anyMatch(one -> one.state() != State.UNKNOWN)) {
        tracks.add(new Fitted.OfPass(pass.label(), own, step));
      }
    }
    return new Fitted(tracks, misfits);
  }

  /**
   * What was read, as a person corrected it.
   *
   * @param filled whether with the readings that the person put in the place of what was read
   */
  private Track corrected(boolean filled) {
    List<Pass.Correction> corrections =
        passes.stream()
            .flatMap(pass -> pass.corrections().stream())
            .filter(correction -> correction.media().equals(medium))
            .toList();
    return new Track(
        medium,
        read.samples().stream()
            .map(
                sample ->
                    corrections.stream()
                        .filter(c -> c.fromSeconds() <= sample.seconds())
                        .filter(c -> sample.seconds() <= c.toSeconds())
                        .findFirst()
                        .map(c -> corrected(c, sample, filled))
                        .orElse(sample))
            .toList());
  }

  private static Sample corrected(Pass.Correction correction, Sample sample, boolean filled) {
    var counter = correction.counter();
    return counter == null || !filled
        ? new Sample(sample.seconds(), 0, State.UNKNOWN)
        : new Sample(sample.seconds(), counter.value(), State.READ);
  }

  /** Who has which part of the recording, where the counter was set on the way. */
  private List<Share> shares(Track track) {
    List<Share> shares = new ArrayList<>();
    if (passes.isEmpty()) {
      return shares;
    }
    Pass now = passes.getFirst();
    double from = Double.NEGATIVE_INFINITY;
    shares.add(new Share(from, now));
    for (Events.SetAnew set : Events.of(track, step).resets()) {
      if (now == null) {
        break;
      }
      Pass next = next(now, set);
      if (jumped(now, set)) {
        continue;
      }
      if (next != null) {
        now = next;
      } else if (madeReady(now, set, track, from)) {
        misfits.add(new Misfit.Before(now.label(), set));
        shares.removeLast();
        shares.add(new Share(from, null));
      } else {
        misfits.add(new Misfit.Set(set));
        now = null;
      }
      from = set.to();
      shares.add(new Share(from, now));
    }
    return shares;
  }

  private double ease() {
    return 2 * step + EASE;
  }

  private boolean jumped(Pass pass, Events.SetAnew set) {
    return pass.resets().stream()
        .anyMatch(
            reset ->
                Math.abs(reset.before().value() - set.before()) <= ease()
                    && Math.abs(reset.after().value() - set.after()) <= ease());
  }

  /** The pass that goes on from where the counter was set; null for none. */
  private @Nullable Pass next(Pass now, Events.SetAnew set) {
    for (Pass later : passes.subList(passes.indexOf(now) + 1, passes.size())) {
      OptionalDouble zero = zero(later);
      if (zero.isEmpty()) {
        continue;
      }
      boolean zeroedThere = Math.abs(set.after() - zero.getAsDouble()) <= ease();
      boolean countedOn =
          zero(now).isPresent()
              && Math.abs(
                      zero.getAsDouble() - (zero(now).getAsDouble() + set.after() - set.before()))
                  <= COUNTED + ease();
      if (zeroedThere || countedOn) {
        return later;
      }
    }
    return null;
  }

  /** Whether the counter was zeroed at the entry and what went before is not of the push. */
  private boolean madeReady(Pass pass, Events.SetAnew set, Track track, double from) {
    OptionalDouble zero = zero(pass);
    if (zero.isEmpty() || Math.abs(set.after() - zero.getAsDouble()) > ease()) {
      return false;
    }
    boolean spokenOf =
        pass.anchors().stream().anyMatch(a -> a.media().equals(medium) && a.seconds() <= set.from())
            || pass.findings().stream()
                .flatMap(finding -> Fitted.noted(finding, medium).stream())
                .anyMatch(seconds -> seconds <= set.from());
    var before =
        track.samples().stream()
            .filter(s -> s.state() != State.UNKNOWN)
            .filter(s -> s.seconds() >= from && s.seconds() <= set.from())
            .mapToDouble(Sample::counter)
            .summaryStatistics();
    return !spokenOf && before.getMax() - before.getMin() <= MADE_READY;
  }

  private static OptionalDouble zero(Pass pass) {
    return pass.zero() instanceof Pass.Zero.Reads reads
        ? OptionalDouble.of(reads.counter().value())
        : OptionalDouble.empty();
  }

  /** The track as far as a pass has a share in it. */
  private Track shared(Track track, List<Share> shares, Pass pass) {
    return new Track(
        medium,
        track.samples().stream()
            .map(
                sample ->
                    pass.equals(holder(shares, sample.seconds()))
                        ? sample
                        : new Sample(sample.seconds(), 0, State.UNKNOWN))
            .toList());
  }

  private static @Nullable Pass holder(List<Share> shares, double seconds) {
    Pass holder = null;
    for (Share share : shares) {
      holder = share.from() <= seconds ? share.pass() : holder;
    }
    return holder;
  }

  /** Compares the typed readings of a pass with what was read; gives those beside which is none. */
  private List<Pass.Anchor> unlike(Pass pass, Track track) {
    List<Pass.Anchor> alone = new ArrayList<>();
    for (Pass.Anchor anchor : pass.anchors()) {
      if (!anchor.media().equals(medium)) {
        continue;
      }
      var about =
          track.samples().stream()
              .filter(s -> s.state() != State.UNKNOWN)
              .filter(s -> Math.abs(s.seconds() - anchor.seconds()) <= TYPED)
              .toList();
      if (about.isEmpty()) {
        alone.add(anchor);
        continue;
      }
      var stated = anchor.counter().sd();
      double allowed = 1.01 * step + EASE / 4 + (stated == null ? 0 : 2 * stated);
      double least = about.stream().mapToDouble(Sample::counter).min().orElseThrow();
      double most = about.stream().mapToDouble(Sample::counter).max().orElseThrow();
      double typed = anchor.counter().value();
      if (typed < least - allowed || typed > most + allowed) {
        Sample nearest =
            about.stream()
                .min(Comparator.comparingDouble(s -> Math.abs(s.seconds() - anchor.seconds())))
                .orElseThrow();
        misfits.add(new Misfit.Anchor(anchor, nearest.counter()));
      }
    }
    return alone;
  }

  /** The track with typed readings where nothing was read; between them the counter went evenly. */
  private Track completed(Track track, List<Pass.Anchor> alone) {
    if (alone.isEmpty()) {
      return track;
    }
    List<Sample> samples = new ArrayList<>(track.samples());
    for (Pass.Anchor anchor : alone) {
      samples.removeIf(sample -> sample.seconds() == anchor.seconds());
      samples.add(new Sample(anchor.seconds(), anchor.counter().value(), State.READ));
    }
    samples.sort(Comparator.comparingDouble(Sample::seconds));
    return new Track(medium, withoutDoubtBeside(samples, alone));
  }

  /** Takes out what is not known between a typed reading and another reading. */
  private static List<Sample> withoutDoubtBeside(List<Sample> samples, List<Pass.Anchor> alone) {
    List<Sample> kept = new ArrayList<>();
    int at = 0;
    while (at < samples.size()) {
      int after = at;
      while (after < samples.size() && samples.get(after).state() == State.UNKNOWN) {
        after++;
      }
      boolean between = after > at && at > 0 && after < samples.size();
      boolean beside =
          between && (typed(samples.get(at - 1), alone) || typed(samples.get(after), alone));
      if (!beside) {
        kept.addAll(samples.subList(at, after));
      }
      if (after < samples.size()) {
        kept.add(samples.get(after));
      }
      at = after + 1;
    }
    return kept;
  }

  private static boolean typed(Sample sample, List<Pass.Anchor> alone) {
    return alone.stream().anyMatch(anchor -> anchor.seconds() == sample.seconds());
  }
}
