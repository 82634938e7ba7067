package daylight.line.counter;

import daylight.line.book.Pass;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How much of a pass its recordings show, all of them joined in the order of the book.
 *
 * @param breaks where the counter went on between one recording and the next
 * @param missing stretches that the book says were seen and no recording shows, by rising reading
 */
public record Filmed(List<Break> breaks, List<Missing> missing) {
  /** Noted readings are good to this beyond the last place, metres; common practice, no source. */
  private static final double NOTED = 0.3048;

  public Filmed {
    breaks = List.copyOf(breaks);
    missing = List.copyOf(missing);
  }

  /**
   * Between two recordings the counter went on unseen.
   *
   * @param before the last reading of the one, metres
   * @param after the first reading of the next, metres
   */
  public record Break(String first, String next, double before, double after) {}

  /** A stretch of the counter, metres. */
  public record Missing(double from, double to) {}

  /**
   * Joins the recordings of a pass.
   *
   * @param recordings those of the pass, in the order of the book; where there are none nothing is
   *     said
   */
  public static Filmed of(Pass pass, List<Fitted.OfPass> recordings) {
    List<Break> breaks = new ArrayList<>();
    double allowed =
        NOTED + 2 * recordings.stream().mapToDouble(Fitted.OfPass::step).max().orElse(0);
    Track.Sample last = null;
    String lastOf = "";
    for (Fitted.OfPass recording : recordings) {
      List<Track.Sample> known =
          recording.track().samples().stream()
              .filter(sample -> sample.state() != Track.State.UNKNOWN)
              .toList();
      if (known.isEmpty()) {
        continue;
      }
      double first = known.getFirst().counter();
      if (last != null && Math.abs(first - last.counter()) > allowed) {
        breaks.add(new Break(lastOf, recording.track().media(), last.counter(), first));
      }
      last = known.getLast();
      lastOf = recording.track().media();
    }
    return new Filmed(breaks, last == null ? List.of() : missing(pass, recordings, allowed));
  }

  private static List<Missing> missing(Pass pass, List<Fitted.OfPass> recordings, double allowed) {
    List<Missing> shown = shown(recordings);
    List<Missing> missing = new ArrayList<>();
    for (Pass.Sight sight : pass.sight()) {
      double at = sight.from().value();
      double end = sight.to().value();
      for (Missing one : shown) {
        if (one.to() > at && one.from() < end) {
          add(missing, at, one.from(), allowed);
          at = Math.max(at, one.to());
        }
      }
      add(missing, at, end, allowed);
    }
    return missing;
  }

  private static void add(List<Missing> missing, double from, double to, double allowed) {
    if (to - from > allowed) {
      missing.add(new Missing(from, to));
    }
  }

  /** The stretches that are shown, joined, by rising reading. */
  private static List<Missing> shown(List<Fitted.OfPass> recordings) {
    List<Missing> pieces = new ArrayList<>();
    for (Fitted.OfPass recording : recordings) {
      Track.Sample before = null;
      for (Track.Sample sample : recording.track().samples()) {
        boolean known = sample.state() != Track.State.UNKNOWN;
        if (known) {
          double from = before == null ? sample.counter() : before.counter();
          pieces.add(
              new Missing(Math.min(from, sample.counter()), Math.max(from, sample.counter())));
        }
        before = known ? sample : null;
      }
    }
    pieces.sort(Comparator.comparingDouble(Missing::from));
    List<Missing> joined = new ArrayList<>();
    for (Missing piece : pieces) {
      Missing last = joined.isEmpty() ? null : joined.getLast();
      if (last != null && piece.from() <= last.to()) {
        joined.removeLast();
        joined.add(new Missing(last.from(), Math.max(last.to(), piece.to())));
      } else {
        joined.add(piece);
      }
    }
    return joined;
  }
}
