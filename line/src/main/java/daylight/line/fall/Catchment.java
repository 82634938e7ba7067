package daylight.line.fall;

import daylight.line.book.Place;
import daylight.line.book.Reach;
import daylight.line.course.Line;
import daylight.line.course.Run;
import daylight.line.measure.Reading;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Places along all pipes whose water leaves by the same end, each with the one that its water
 * reaches next. What is downstream comes first.
 */
final class Catchment {
  /** Places are so far apart at least, metres. */
  private static final double APART = 0.5;

  /** More are not asked for together. */
  private static final int MOST = 300;

  /** Stands for the end by which the water leaves. */
  static final int OUT = -1;

  private final List<Place> places = new ArrayList<>();
  private final List<Integer> next = new ArrayList<>();
  private final List<Double> lengths = new ArrayList<>();
  private final List<@Nullable Double> bores = new ArrayList<>();

  private Catchment() {}

  /** One for each end of a line by which water leaves. */
  static List<Catchment> of(Line line) {
    List<Run> flowing = line.runs().stream().filter(Catchment::flows).toList();
    List<Catchment> catchments = new ArrayList<>();
    for (Run run : flowing) {
      boolean last =
          flowing.stream()
              .noneMatch(other -> other.reach().upstream().equals(run.reach().downstream()));
      if (last) {
        List<Run> all = new ArrayList<>();
        gather(run, flowing, new HashSet<>(), all);
        double apart = Math.max(APART, all.stream().mapToDouble(Catchment::length).sum() / MOST);
        Catchment catchment = new Catchment();
        catchment.add(run, all, OUT, apart);
        catchments.add(catchment);
      }
    }
    return catchments;
  }

  private static boolean flows(Run run) {
    return run.stations().size() >= 2
        && run.stations().getFirst().invert() != null
        && run.reach().use() != Reach.Use.PUMPED
        && !(run.reach().water() instanceof Reach.Water.Unknown);
  }

  private static double length(Run run) {
    return run.stations().getLast().place().distance();
  }

  /** Everything that flows into a run, itself included; a ring is gone round once. */
  private static void gather(Run run, List<Run> flowing, Set<String> seen, List<Run> into) {
    if (!seen.add(run.reach().label())) {
      return;
    }
    into.add(run);
    for (Run other : flowing) {
      if (other.reach().downstream().equals(run.reach().upstream())) {
        gather(other, flowing, seen, into);
      }
    }
  }

  /** Adds a run from its lower end up, and then what flows into it. */
  private void add(Run run, List<Run> all, int below, double apart) {
    int pieces = Math.max(1, (int) Math.ceil(length(run) / apart));
    double piece = length(run) / pieces;
    Reading bore = run.reach().bore();
    int at = below;
    for (int i = pieces; i >= 0; i--) {
      places.add(run.at(i * piece));
      next.add(at);
      lengths.add(i == 0 || i == pieces ? piece / 2 : piece);
      bores.add(bore == null ? null : bore.value());
      at = places.size() - 1;
    }
    int top = at;
    all.stream()
        .filter(other -> other.reach().downstream().equals(run.reach().upstream()))
        .filter(other -> places.stream().noneMatch(p -> p.reach().equals(other.reach().label())))
        .forEach(other -> add(other, all, top, apart));
  }

  List<Place> places() {
    return places;
  }

  int size() {
    return places.size();
  }

  /** Which place the water of one reaches next; {@link #OUT} where it leaves. */
  int next(int place) {
    return next.get(place);
  }

  /** How much pipe a place stands for, metres. */
  double length(int place) {
    return lengths.get(place);
  }

  /** The inside diameter there, metres; null when unknown. */
  @Nullable Double bore(int place) {
    return bores.get(place);
  }

  /**
   * How deep water stands at each place of one profile, metres: up to the highest bottom that it
   * has to pass on its way out, which is its lip. The lip is told, too.
   *
   * @param up height of the bottom at each place
   * @param deep filled with the depths
   * @param lips filled with the place of the lip of each
   */
  void fill(double[] up, double[] deep, int[] lips) {
    for (int i = 0; i < up.length; i++) {
      int below = next(i);
      boolean dry = below == OUT || up[i] >= up[lips[below]];
      lips[i] = dry ? i : lips[below];
      deep[i] = up[lips[i]] - up[i];
    }
  }
}
