package daylight.footage.counter;

import daylight.footage.Watch;
import daylight.footage.codec.Footage;
import daylight.line.counter.Track.State;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The door: finds the burned-in counter of a recording and reads it on every frame. */
public final class CounterReader {
  private static final int MOST_LINES = 8;
  private static final double LEAST_BELIEF = 0.35;
  private static final double LEAST_SHARE = 0.2;

  /** The same for a figure without a unit or in whole units, which a piece of one looks like. */
  private static final double LEAST_BARE_SHARE = 0.6;

  /** So long a gap is bridged where the reading hardly changed, seconds. */
  private static final double BRIDGE_SECONDS = 3;

  private static final int MOST_FIGURES = 4;

  private final Footage footage;
  private final Watch watch;
  private final Letters letters = Letters.taught();

  private CounterReader(Footage footage, Watch watch) {
    this.footage = footage;
    this.watch = watch;
  }

  /**
   * Reads the counter of a recording.
   *
   * @param window where it is known to stand; null to look for it
   */
  public static Found read(Footage footage, @Nullable Window window, Watch watch)
      throws IOException {
    return new CounterReader(footage, watch).read(window);
  }

  /** By brightness; by colour too where that leaves a doubt, and where it finds nothing. */
  private Found read(@Nullable Window given) throws IOException {
    List<Strip> byLight = lines(View.of(footage, false, given));
    boolean doubt = byLight.stream().anyMatch(strip -> strip.changes() && !strip.beyondDoubt());
    List<Strip> byColour = doubt ? lines(View.of(footage, true, given)) : List.of();
    Found found = read(Stream.concat(byLight.stream(), byColour.stream()).toList());
    if (doubt || !(found instanceof Found.None)) {
      return found;
    }
    List<Strip> others =
        lines(View.of(footage, true, given)).stream()
            .filter(
                strip ->
                    byLight.stream()
                        .noneMatch(one -> one.changes() && one.window().covers(strip.window())))
            .toList();
    return others.isEmpty() || !(read(others) instanceof Found.Counter counter) ? found : counter;
  }

  private List<Strip> lines(View view) {
    return view.windows().parallelStream()
        .flatMap(window -> Strip.in(window, view, letters).stream())
        .filter(strip -> strip.belief() >= LEAST_BELIEF)
        .toList();
  }

  private Found read(List<Strip> strips) throws IOException {
    if (strips.isEmpty()) {
      return new Found.None(Found.Why.NO_LETTERS);
    }
    List<Scroll> scrolls =
        alone(strips).stream()
            .filter(Strip::changes)
            .limit(MOST_LINES)
            .map(strip -> strip.narrowed(letters))
            .map(strip -> new Scroll(strip, footage.times().count()))
            .toList();
    strips.forEach(strip -> strip.view().letGo());
    int count = footage.times().count();
    boolean whole =
        footage.glance(
            IntStream.range(0, count),
            count,
            watch,
            luma -> scrolls.forEach(s -> s.add(luma.number(), s.strip().read(luma))));
    scrolls.forEach(Scroll::settle);
    return whole ? judged(scrolls) : new Found.Stopped();
  }

  /** Without what is only the outline of letters, or the ground between them, seen as letters. */
  private static List<Strip> alone(List<Strip> strips) {
    List<Strip> alone = new ArrayList<>();
    strips.stream()
        .sorted(Comparator.comparingDouble(Strip::merit).reversed())
        .forEach(
            strip -> {
              if (alone.stream().noneMatch(other -> other.window().covers(strip.window()))) {
                alone.add(strip);
              }
            });
    return alone;
  }

  private record Candidate(Scroll scroll, Series series, Mended.Named named, int place) {}

  private Found judged(List<Scroll> scrolls) {
    double[] seconds = new double[footage.times().count()];
    for (int i = 0; i < seconds.length; i++) {
      seconds[i] = footage.times().secondsOf(i);
    }
    List<Candidate> candidates = new ArrayList<>();
    boolean illegible = false;
    for (Scroll scroll : scrolls) {
      for (int place = 0; place < MOST_FIGURES; place++) {
        Series first = Series.of(scroll, scroll.names(), place);
        if (first.share() == 0) {
          break;
        }
        Mended.Named named = Mended.named(scroll, place, seconds);
        Series series = Series.of(scroll, named.names(), place, named.unit());
        Judge.Kind kind = Judge.kind(series, seconds);
        if (kind == Judge.Kind.DISTANCE && series.likeDistance()) {
          boolean plain = series.hasLength() && series.places() != 0;
          if (series.share() >= (plain ? LEAST_SHARE : LEAST_BARE_SHARE)) {
            candidates.add(new Candidate(scroll, series, named, place));
          } else {
            illegible = true;
          }
        }
      }
    }
    Optional<Candidate> best =
        candidates.stream().max(Comparator.comparingDouble(one -> Judge.weight(one.series())));
    if (best.isEmpty()) {
      return new Found.None(illegible ? Found.Why.NOT_LEGIBLE : Found.Why.NO_DISTANCE);
    }
    return told(best.get(), seconds);
  }

  private static Found told(Candidate best, double[] seconds) {
    Series first = best.series();
    SecondLook again =
        new SecondLook(best.scroll(), first, best.named().names(), best.place(), seconds);
    Series series = first.with(again.told(Path.through(first, seconds)));
    double perStep = series.metresPerStep();
    List<Path.Stay> kept = Path.through(series, seconds);
    Reading[] readings = new Reading[seconds.length];
    List<Integer> leaps = new ArrayList<>();
    for (int k = 0; k < kept.size(); k++) {
      Path.Stay stay = kept.get(k);
      for (int i = stay.first(); i <= stay.last(); i++) {
        boolean read = series.at(i) == stay.steps();
        readings[i] =
            new Reading(
                seconds[i],
                stay.steps() * perStep,
                read ? series.shown(i) + series.unit() : "",
                read ? State.READ : State.BRIDGED);
      }
      if (k > 0) {
        Path.Stay before = kept.get(k - 1);
        boolean leap = Path.leaps(before, stay, perStep, seconds);
        if (leap) {
          leaps.add(stay.first());
        }
        between(before, stay, leap, perStep, seconds, readings);
      }
    }
    for (int i = 0; i < readings.length; i++) {
      if (readings[i] == null) {
        readings[i] = new Reading(seconds[i], 0, "", State.UNKNOWN);
      }
    }
    return new Found.Counter(
        best.scroll().strip().window(), series.unit().strip(), perStep, List.of(readings), leaps);
  }

  private static void between(
      Path.Stay a, Path.Stay b, boolean leap, double perStep, double[] seconds, Reading[] into) {
    double lasts = seconds[b.first()] - seconds[a.last()];
    boolean bridged = !leap && (lasts <= BRIDGE_SECONDS || a.steps() == b.steps());
    for (int i = a.last() + 1; i < b.first(); i++) {
      double share = (seconds[i] - seconds[a.last()]) / lasts;
      double metres = (a.steps() + share * (b.steps() - a.steps())) * perStep;
      into[i] = new Reading(seconds[i], metres, "", bridged ? State.BRIDGED : State.UNKNOWN);
    }
  }
}
