package daylight.line.dig;

import daylight.line.book.Boundary;
import daylight.line.book.FieldBook;
import daylight.line.book.Papers;
import daylight.line.book.Place;
import daylight.line.book.Priors;
import daylight.line.book.Reach;
import daylight.line.book.Site;
import daylight.line.book.Visit;
import daylight.line.course.Line;
import daylight.line.course.PlacedFinding;
import daylight.line.course.Run;
import daylight.line.measure.Argument;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import daylight.line.measure.Statement;
import daylight.line.survey.Covariance2;
import daylight.line.survey.PlanPoint;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The door of this room: where to dig for a place of a line, and whose ground it is under. */
public final class Digger {
  private final FieldBook book;
  private final Line line;
  private final Priors priors;
  private final DigLimits limits;

  private Digger(FieldBook book, Line line, Priors priors, DigLimits limits) {
    this.book = book;
    this.line = line;
    this.priors = priors;
    this.limits = limits;
  }

  /**
   * Where to dig for a place.
   *
   * @param book what was measured
   * @param line estimated from it
   * @param priors by which it was estimated
   * @param day on which the ticket has to hold
   */
  public static Dig target(
      FieldBook book, Line line, Priors priors, DigLimits limits, Place place, LocalDate day) {
    return new Digger(book, line, priors, limits).target(place, 0, null, day);
  }

  /** The same for a finding, or for where it starts. */
  public static Dig target(
      FieldBook book,
      Line line,
      Priors priors,
      DigLimits limits,
      PlacedFinding finding,
      LocalDate day) {
    return new Digger(book, line, priors, limits)
        .target(finding.from(), finding.sd(), finding.to(), day);
  }

  private Dig target(Place place, double slack, @Nullable Place to, LocalDate day) {
    Optional<Here> found = Here.of(line, place, slack);
    if (found.isEmpty()) {
      return new Dig.Unknown(unknown(place));
    }
    Here here = found.get();
    SettingOut setting = new SettingOut(line, book.site(), priors, limits, here);
    TapeTies ties = setting.ties();
    TurnedTie turned = setting.turned();
    Covariance2 spread = ties == null ? here.spread() : ties.spread();
    DigBox box = DigBox.around(here.spot(), spread, here.bearing(), limits.margin());
    Measured crown = crown(here);
    return new DigTarget(
        DigTicket.of(book, day),
        place,
        here.spot(),
        here.spread(),
        ties,
        turned,
        here.depth(),
        crown,
        trench(here.depth()),
        box,
        marks(box),
        Grading.of(book, line, here),
        told(here, ties, turned, crown, to));
  }

  private Statement unknown(Place place) {
    Run run = line.findRun(place.reach()).orElse(null);
    if (run == null || run.stations().isEmpty()) {
      return Statement.of(DigKey.NO_COURSE, new Argument.Label(place.reach()));
    }
    return Statement.of(
        DigKey.BEYOND,
        new Argument.Label(place.reach()),
        new Argument.Length(place.distance()),
        new Argument.Length(run.stations().getLast().place().distance()));
  }

  private @Nullable Measured crown(Here here) {
    Measured invert = here.depth();
    Reading bore = bore(here.place());
    if (invert == null || bore == null) {
      return null;
    }
    return invert.minus(new Measured(bore.value(), priors.sd(Priors.Kind.BORE, bore)));
  }

  private @Nullable Reading bore(Place place) {
    return book.site().findReach(place.reach()).map(Reach::bore).orElse(null);
  }

  /** By the deepest that it may well be, or by the estimate with room to get under the pipe. */
  private DigTarget.Trench trench(@Nullable Measured invert) {
    if (invert == null) {
      return DigTarget.Trench.UNKNOWN;
    }
    double deepest = Math.max(invert.upper95(), invert.value() + limits.bedding());
    if (deepest >= limits.protect()) {
      return DigTarget.Trench.PROTECT;
    }
    return deepest >= limits.wayOut() ? DigTarget.Trench.WAY_OUT : DigTarget.Trench.SHALLOW;
  }

  private List<MarkNear> marks(DigBox box) {
    List<MarkNear> marks = new ArrayList<>();
    for (Visit visit : book.visits()) {
      for (Papers.ServiceMark mark : visit.papers().services()) {
        List<PlanPoint> points = Grounds.points(line, mark.points());
        Double away = points.isEmpty() ? null : Boxes.distance(box, points);
        boolean byHand = away == null || away <= limits.nearMark();
        marks.add(new MarkNear(mark.label(), mark.service(), away, byHand));
      }
    }
    marks.sort(
        Comparator.comparingDouble((MarkNear m) -> m.away() == null ? -1 : m.away())
            .thenComparing(MarkNear::label));
    return marks;
  }

  private List<Statement> told(
      Here here,
      @Nullable TapeTies ties,
      @Nullable TurnedTie turned,
      @Nullable Measured crown,
      @Nullable Place to) {
    List<Statement> told = new ArrayList<>();
    if (to != null) {
      double on = Math.abs(to.distance() - here.place().distance());
      told.add(Statement.of(DigKey.RUNS_ON, new Argument.Length(on)));
    }
    if (ties == null) {
      told.add(Statement.of(turned == null ? DigKey.FEW_LANDMARKS : DigKey.FLAT_TIES));
    } else {
      for (TapeTies.Tape tape : List.of(ties.first(), ties.second())) {
        if (tape.length().value() > limits.longestTape()) {
          told.add(
              Statement.of(
                  DigKey.LONG_TAPE,
                  new Argument.Label(tape.landmark()),
                  new Argument.Length(limits.longestTape())));
        }
      }
    }
    if (here.depth() == null) {
      told.add(Statement.of(DigKey.NO_DEPTH));
    } else if (crown == null) {
      told.add(Statement.of(DigKey.NO_BORE));
    }
    boolean iron =
        book.site()
            .findReach(here.place().reach())
            .filter(reach -> Ferrous.at(line, reach, here.place()))
            .isPresent();
    if (iron && here.depth() != null) {
      told.add(Statement.of(DigKey.IRON));
    }
    told.addAll(Grounds.open(line, book.site()));
    return told;
  }

  /**
   * On which side of every boundary a place lies; none where the place or the boundary has none.
   */
  public static List<GroundSide> sides(Line line, Site site, Place place) {
    return Here.of(line, place, 0).map(here -> Grounds.sides(line, site, here)).orElse(List.of());
  }

  /**
   * How far a place is from buildings, wells and trees, nearest first.
   *
   * @param limit how near is too near, metres
   */
  public static List<Clearance> clearances(Line line, Site site, Place place, double limit) {
    if (!(limit > 0) || Double.isInfinite(limit)) {
      throw new IllegalArgumentException("limit must be positive and finite, in m, was " + limit);
    }
    return Here.of(line, place, 0)
        .map(here -> Grounds.clearances(line, site, here, limit))
        .orElse(List.of());
  }

  /** Where the estimated course of a run crosses a boundary, upstream first. */
  public static List<Crossing> crossings(Line line, Run run, Boundary boundary) {
    return Crossing.of(line, run, boundary.points());
  }

  /**
   * The place of a run that may lie beyond a boundary which the run is not thought to cross; empty
   * where it is, or where a point of the boundary has no place.
   */
  public static Optional<Overlap> overlap(Line line, Run run, Boundary boundary) {
    return Overlap.of(line, run, boundary);
  }

  /** The letter of a place by how it was found; empty where the course has no such place. */
  public static Optional<LocatedQuality> quality(FieldBook book, Line line, Place place) {
    return Here.of(line, place, 0).map(here -> Grading.of(book, line, here));
  }

  /** Every mark of another service on record, of all visits, and how it lies to the line. */
  public static List<ServiceFound> services(FieldBook book, Line line) {
    return ServiceFound.of(book, line);
  }
}
