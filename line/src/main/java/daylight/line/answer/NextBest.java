package daylight.line.answer;

import daylight.line.book.Place;
import daylight.line.course.Extra;
import daylight.line.course.Line;
import daylight.line.course.LocateFit;
import daylight.line.course.Outlook;
import daylight.line.course.Route;
import daylight.line.course.Run;
import daylight.line.course.Wanted;
import daylight.line.measure.Measured;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Which measurement that could still be made tells most about a figure for the minutes it takes.
 *
 * <p>Tried are a locate and a probe at even distances along every reach of the line, and a level at
 * each locate. Minutes are common practice, no source: they order what to do and promise nothing.
 */
public final class NextBest {
  /** So many steps along a line are tried; between two of them little changes. */
  private static final int PLACES = 16;

  private NextBest() {}

  /** What kind of measurement. */
  public enum Kind {
    LOCATE(4),
    LEVEL(3),
    PROBE(20);

    private final double minutes;

    Kind(double minutes) {
      this.minutes = minutes;
    }

    /** How long it usually takes. */
    public double minutes() {
      return minutes;
    }
  }

  /**
   * One measurement and what it would make of the figure.
   *
   * @param now the figure as it is known now
   * @param then its uncertainty afterwards, metres
   */
  public record Option(Kind kind, Extra extra, Measured now, double then) {
    /** By what share of now the uncertainty would shrink for each minute. */
    public double gainPerMinute() {
      return (1 - then / now.sd()) / kind.minutes();
    }
  }

  /**
   * The best of each kind, the one that tells most for its minutes first; empty where the figure is
   * not known at all, and without those that would tell nothing.
   */
  public static List<Option> of(Line line, Wanted wanted) {
    return of(line, line.outlook(), wanted);
  }

  /** The same for one figure of many. */
  static List<Option> of(Line line, Outlook outlook, Wanted wanted) {
    Optional<Measured> now = outlook.now(wanted);
    if (now.isEmpty()) {
      return List.of();
    }
    List<Option> best = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      candidates(line, wanted.reach(), kind).stream()
          .flatMap(
              extra ->
                  outlook
                      .after(wanted, extra)
                      .map(then -> new Option(kind, extra, now.get(), then.sd()))
                      .stream())
          .filter(option -> option.then() < option.now().sd())
          .min(Comparator.comparingDouble(Option::then))
          .ifPresent(best::add);
    }
    best.sort(Comparator.comparingDouble(Option::gainPerMinute).reversed());
    return best;
  }

  /** The runs of the line that a reach belongs to, as far as they have a course. */
  private static List<Run> runs(Line line, String reach) {
    String name = line.findRun(reach).orElseThrow().reach().line();
    return line.runs().stream()
        .filter(run -> run.reach().line().equals(name) && !run.stations().isEmpty())
        .toList();
  }

  private static List<Extra> candidates(Line line, String reach, Kind kind) {
    List<Extra> extras = new ArrayList<>();
    List<Run> runs = runs(line, reach);
    double whole = runs.stream().mapToDouble(Route::extent).sum();
    for (Run run : runs) {
      if (kind == Kind.LEVEL) {
        line.locates().stream()
            .map(LocateFit::place)
            .filter(place -> place.reach().equals(run.reach().label()))
            .forEach(place -> extras.add(new Extra.Level(place)));
      } else {
        int places = Math.max(1, (int) Math.rint(PLACES * Route.extent(run) / whole));
        for (int i = 0; i <= places; i++) {
          Place place = run.at(Route.extent(run) * i / places);
          extras.add(kind == Kind.LOCATE ? new Extra.Locate(place) : new Extra.Probe(place));
        }
      }
    }
    return extras;
  }
}
