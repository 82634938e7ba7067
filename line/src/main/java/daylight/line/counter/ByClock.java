package daylight.line.counter;

import daylight.line.book.Locate;
import daylight.line.book.Pass;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * From the clock to the counter: where the camera was when it was located, told by the time alone.
 *
 * <p>The camera rests while it is located. A locate with a time and a counter reading says that the
 * recording shows a rest at that reading at that time, so it bounds when the recording began; so
 * does the time at which the pass began, and the recorder's clock where the book says how wrong it
 * is. What most of them agree on is taken, as a range. A locate with a time only is then where the
 * camera rested within that range; where it rested at several readings nobody can say which.
 *
 * <p>Instants are the book's; moments are seconds from the first frame; readings are metres.
 */
public final class ByClock {
  /** Who locates lets the camera rest at least so long, seconds; common practice, no source. */
  private static final double LOCATING = 5;

  /** A time written to the minute may be so much later than the moment, seconds: rounded up. */
  private static final double MINUTE_EARLY = 30;

  /** It may be so much earlier, seconds: seconds left out. */
  private static final double MINUTE_LATE = 60;

  /** A time written to the second is good to this, seconds; common practice, no source. */
  private static final double SECOND = 2;

  /** The recording begins within this of the time noted for the pass; common practice. */
  private static final double BEGAN = 120;

  /** Noted counter readings are good to this beyond the last place, metres. */
  private static final double NOTED = 0.05;

  private ByClock() {}

  /**
   * When the first frame of a recording was.
   *
   * @param media its label
   * @param witnesses how many notes of the book say so
   * @param of how many there are
   */
  public record Began(String media, Instant earliest, Instant latest, int witnesses, int of) {
    /** The middle of the range. */
    public Instant middle() {
      return earliest.plus(Duration.between(earliest, latest).dividedBy(2));
    }

    /** By how much the middle may be off to either side, seconds. */
    public double giveOrTake() {
      return seconds(earliest, latest) / 2;
    }
  }

  /** What came of looking for where the camera was. */
  public sealed interface Outcome {
    /** The locate that has a time only. */
    Locate locate();

    /** The camera rested at one reading then. */
    record At(Locate locate, Track.Between counter) implements Outcome {}

    /**
     * It rested at more than one.
     *
     * @param counters the readings, by rising time
     */
    record Several(Locate locate, List<Double> counters) implements Outcome {
      public Several {
        counters = List.copyOf(counters);
      }
    }

    /** No recording shows a rest at that time. */
    record NoRest(Locate locate) implements Outcome {}

    /** Nothing ties a recording to the clock. */
    record NoClock(Locate locate) implements Outcome {}
  }

  /**
   * When a recording of a pass began.
   *
   * @param locates those made during that pass
   * @param first whether it is the first recording of the pass
   * @param told when the recorder says that it began, put right by what the book says of its clock;
   *     null where either says nothing
   */
  public static Optional<Began> began(
      Pass pass,
      List<Locate> locates,
      Fitted.OfPass recording,
      boolean first,
      @Nullable Instant told) {
    List<List<Range>> witnesses = new ArrayList<>();
    Instant start = pass.start();
    Instant zero = zero(pass, locates, told);
    if (zero == null) {
      return Optional.empty();
    }
    if (first && start != null) {
      double at = seconds(zero, start);
      witnesses.add(List.of(new Range(at - BEGAN, at + BEGAN)));
    }
    if (told != null) {
      double at = seconds(zero, told);
      witnesses.add(List.of(new Range(at - BEGAN, at + BEGAN)));
    }
    List<Events.Rested> rests = rests(recording);
    for (Locate locate : locates) {
      var cable = locate.cable();
      Instant time = locate.time();
      if (cable == null || time == null) {
        continue;
      }
      Range noted = noted(time, zero);
      List<Range> said =
          rests.stream()
              .filter(
                  rest -> Math.abs(rest.counter() - cable.value()) <= 2 * recording.step() + NOTED)
              .map(rest -> new Range(noted.from() - rest.to(), noted.to() - rest.from()))
              .toList();
      if (!said.isEmpty()) {
        witnesses.add(said);
      }
    }
    return agreed(witnesses)
        .map(
            agreed ->
                new Began(
                    recording.track().media(),
                    plus(zero, agreed.range().from()),
                    plus(zero, agreed.range().to()),
                    agreed.votes(),
                    witnesses.size()));
  }

  /** Where the camera was at a locate that has a time only, by the recordings that began. */
  public static Outcome place(Locate locate, List<Fitted.OfPass> recordings, List<Began> began) {
    Instant time = locate.time();
    if (time == null || began.isEmpty()) {
      return new Outcome.NoClock(locate);
    }
    List<Double> counters = new ArrayList<>();
    double sd = 0;
    for (Fitted.OfPass recording : recordings) {
      for (Began one : began) {
        if (!one.media().equals(recording.track().media())) {
          continue;
        }
        Range noted = noted(time, one.earliest());
        double latest = seconds(one.earliest(), one.latest());
        Range moments = new Range(noted.from() - latest, noted.to());
        for (Events.Rested rest : rests(recording)) {
          if (rest.from() <= moments.to() && rest.to() >= moments.from()) {
            sd = Math.max(sd, Math.max(recording.step(), NOTED / 2) / StrictMath.sqrt(12));
            double same = 2 * recording.step() + NOTED;
            if (counters.stream().noneMatch(c -> Math.abs(c - rest.counter()) <= same)) {
              counters.add(rest.counter());
            }
          }
        }
      }
    }
    return switch (counters.size()) {
      case 0 -> new Outcome.NoRest(locate);
      case 1 -> new Outcome.At(locate, new Track.Between(counters.getFirst(), sd));
      default -> new Outcome.Several(locate, counters);
    };
  }

  private static List<Events.Rested> rests(Fitted.OfPass recording) {
    return Events.of(recording.track(), recording.step()).rests().stream()
        .filter(rest -> rest.to() - rest.from() >= LOCATING)
        .toList();
  }

  /** Any instant near by, to count seconds from; null where the book has none. */
  private static @Nullable Instant zero(Pass pass, List<Locate> locates, @Nullable Instant told) {
    Instant start = pass.start() == null ? told : pass.start();
    return start != null
        ? start
        : locates.stream()
            .flatMap(locate -> Optional.ofNullable(locate.time()).stream())
            .min(Comparator.naturalOrder())
            .orElse(null);
  }

  /** A stretch of seconds. */
  private record Range(double from, double to) {
    boolean holds(double seconds) {
      return from <= seconds && seconds <= to;
    }
  }

  private record Agreed(Range range, int votes) {}

  /** What most witnesses agree on; nothing where fewer than half do. */
  private static Optional<Agreed> agreed(List<List<Range>> witnesses) {
    TreeSet<Double> ends = new TreeSet<>();
    for (List<Range> witness : witnesses) {
      witness.forEach(range -> ends.addAll(List.of(range.from(), range.to())));
    }
    int most = 0;
    double from = 0;
    double to = 0;
    for (double end : ends) {
      int votes =
          (int)
              witnesses.stream()
                  .filter(witness -> witness.stream().anyMatch(range -> range.holds(end)))
                  .count();
      if (votes > most) {
        most = votes;
        from = end;
      }
      to = votes == most ? end : to;
    }
    return most > 0 && 2 * most > witnesses.size()
        ? Optional.of(new Agreed(new Range(from, to), most))
        : Optional.empty();
  }

  /** When a written time may have been, seconds from an instant. */
  private static Range noted(Instant time, Instant zero) {
    double at = seconds(zero, time);
    boolean minutes = Math.floorMod(time.getEpochSecond(), 60) == 0 && time.getNano() == 0;
    return minutes
        ? new Range(at - MINUTE_EARLY, at + MINUTE_LATE)
        : new Range(at - SECOND, at + SECOND);
  }

  private static double seconds(Instant from, Instant to) {
    return Duration.between(from, to).toMillis() / 1000.0;
  }

  private static Instant plus(Instant zero, double seconds) {
    return zero.plusMillis(Math.round(seconds * 1000));
  }
}
