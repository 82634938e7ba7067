package daylight.line.course;

import daylight.line.book.FieldBook;
import daylight.line.book.Finding;
import daylight.line.book.Pass;
import daylight.line.book.Place;
import daylight.line.book.Priors;
import daylight.line.book.Visit;
import daylight.line.book.Where;
import daylight.line.counter.Track;
import daylight.line.counter.Tracks;
import daylight.line.measure.Argument;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import daylight.line.measure.Statement;
import daylight.line.normal.Gradient;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Puts stations, findings and sight at their places on one line, solved or not. */
final class Placing {
  private static final int FEWEST_STEPS = 4;

  /** Enough for a kilometre told every few centimetres; a length out of hand ends here. */
  private static final int MOST_STEPS = 20_000;

  private final FieldBook book;
  private final Tracks tracks;
  private final Model model;
  private final @Nullable Solved solved;
  private final Spacing spacing;
  private final double[] x;

  Placing(FieldBook book, Tracks tracks, Model model, @Nullable Solved solved, Spacing spacing) {
    this.book = book;
    this.tracks = tracks;
    this.model = model;
    this.solved = solved;
    this.spacing = spacing;
    this.x = solved != null ? solved.x() : Start.shared(model.gathered(), book, model.priors());
  }

  /**
   * The runs of this line by reach.
   *
   * @param missing what is missing where the line is not solved
   */
  Map<String, Run> runs(@Nullable Statement missing) {
    Map<String, Run> runs = new LinkedHashMap<>();
    List<Tree.Limb> limbs = model.layout().tree().limbs();
    for (int limb = 0; limb < limbs.size(); limb++) {
      runs.put(limbs.get(limb).reach().label(), run(limb, missing));
    }
    return runs;
  }

  private Run run(int limb, @Nullable Statement missing) {
    Tree.Limb of = model.layout().tree().limbs().get(limb);
    Run.Path path;
    Measured length = null;
    boolean measured = model.lengths().measured()[limb];
    if (solved == null) {
      if (measured) {
        length = unsolvedLength(limb);
      }
      path = new Run.Path.NotFound(missing == null ? unlocated(of) : missing);
    } else {
      length = measured || model.lengths().met()[limb] ? solved.length(limb) : null;
      path =
          located(limb) ? new Run.Path.Found(stations(limb)) : new Run.Path.NotFound(unlocated(of));
    }
    return new Run(of.reach(), length, path);
  }

  /** Without a solved line a length is as sure as the tape or the counter that gave it. */
  private Measured unsolvedLength(int limb) {
    double metres = model.layout().length0(limb);
    Reading stated = model.layout().tree().limbs().get(limb).reach().length();
    if (stated != null) {
      return new Measured(metres, model.priors().sd(Priors.Kind.TAPE, stated));
    }
    double reading = model.priors().sd(Priors.Kind.COUNTER_READING, metres);
    double zero = model.priors().sd(Priors.Kind.COUNTER_ZERO, 0);
    double scale = model.priors().sd(Priors.Kind.COUNTER_SCALE, 0) * metres;
    double slack = model.priors().sd(Priors.Kind.SLACK, metres);
    return new Measured(
        metres, Math.sqrt(reading * reading + zero * zero + scale * scale + slack * slack));
  }

  private static Statement unlocated(Tree.Limb limb) {
    return Statement.of(
        CourseKey.REACH_NOT_LOCATED,
        new daylight.line.measure.Argument.Label(limb.reach().label()));
  }

  /** Whether anything on a limb, or beyond it, has a spot of its own: else only its start is. */
  private boolean located(int limb) {
    for (Mark mark : model.marks()) {
      if (model.spotted(mark)) {
        Walk.Reached at = mark.place(model.layout(), x);
        boolean within =
            at.t() > Enough.SHORTEST_BASE || model.layout().tree().limbs().get(limb).parent() < 0;
        if (model.layout().tree().path(at.limb()).contains(limb) && (at.limb() != limb || within)) {
          return true;
        }
      }
    }
    return false;
  }

  private List<Station> stations(int limb) {
    Solved line = solvedLine();
    List<Station> stations = new ArrayList<>();
    double length = line.shape().length(limb);
    int steps =
        Math.clamp(
            (int) Math.ceil(model.layout().length0(limb) / spacing.stations()),
            FEWEST_STEPS,
            MOST_STEPS);
    boolean downstream = model.layout().tree().limbs().get(limb).downstream();
    for (int i = 0; i <= steps; i++) {
      double t = length * (downstream ? i : steps - i) / steps;
      stations.add(line.here(line.place(limb, t)).station());
    }
    return stations;
  }

  private Solved solvedLine() {
    if (solved == null) {
      throw new IllegalStateException("asked only of a solved line");
    }
    return solved;
  }

  /** Every finding that a counter reading or a track places on this line. */
  List<PlacedFinding> findings() {
    List<PlacedFinding> placed = new ArrayList<>();
    for (Visit visit : book.visits()) {
      for (Pass pass : visit.passes()) {
        Walk walk = model.walks().find(visit.label(), pass.label());
        if (walk != null) {
          for (Finding finding : pass.findings()) {
            PlacedFinding here = place(visit, pass, walk, finding);
            if (here != null) {
              placed.add(here);
            }
          }
        }
      }
    }
    return placed;
  }

  /** Findings noted by a moment of footage that no track covers: nothing places them. */
  List<Statement> doubts() {
    List<Statement> doubts = new ArrayList<>();
    for (Visit visit : book.visits()) {
      for (Pass pass : visit.passes()) {
        if (model.walks().find(visit.label(), pass.label()) != null) {
          pass.findings().stream()
              .filter(finding -> unplaced(finding.where()))
              .forEach(
                  finding ->
                      doubts.add(
                          Statement.of(
                              CourseKey.MOMENT_UNPLACED, new Argument.Label(finding.label()))));
        }
      }
    }
    return doubts;
  }

  private boolean unplaced(Where where) {
    return where instanceof Where.AtMoment(String media, double seconds)
        && tracks.counterAt(media, seconds).isEmpty();
  }

  private @Nullable PlacedFinding place(Visit visit, Pass pass, Walk walk, Finding finding) {
    return switch (finding.where()) {
      case Where.AtCable(Reading cable) ->
          placed(visit, pass, walk, finding, cable.value(), cable.value(), 0);
      case Where.FromTo(Reading from, Reading to) ->
          placed(visit, pass, walk, finding, from.value(), to.value(), 0);
      case Where.AtMoment(String media, double seconds) -> {
        Track.Between counter = tracks.counterAt(media, seconds).orElse(null);
        yield counter == null
            ? null
            : placed(visit, pass, walk, finding, counter.value(), counter.value(), counter.sd());
      }
    };
  }

  @Nullable Double counterAt(String media, double seconds) {
    return tracks.counterAt(media, seconds).map(Track.Between::value).orElse(null);
  }

  private PlacedFinding placed(
      Visit visit,
      Pass pass,
      Walk walk,
      Finding finding,
      double from,
      double to,
      double readingSd) {
    Walk.Reached a = walk.at(x, from, finding.moving(), -1);
    Walk.Reached b = walk.at(x, to, finding.moving(), -1);
    Place start = place(a);
    Place end = from == to ? null : place(b);
    double sd = StrictMath.hypot(sd(walk, a, from), readingSd);
    if (end != null && against(a, start, end)) {
      return new PlacedFinding(visit.label(), pass.label(), finding, end, start, sd);
    }
    return new PlacedFinding(visit.label(), pass.label(), finding, start, end, sd);
  }

  /** Whether the camera went against the water from one place to another, the first at a. */
  private boolean against(Walk.Reached a, Place start, Place end) {
    return end.reach().equals(start.reach())
        ? end.distance() < start.distance()
        : a.away() != model.layout().tree().limbs().get(a.limb()).downstream();
  }

  double sd(Walk walk, Walk.Reached at, double reading) {
    double own = model.priors().sd(Priors.Kind.COUNTER_READING, reading);
    if (solved == null) {
      double out = walk.counter().sinceEntry(reading);
      double scale =
          StrictMath.hypot(walk.counter().scale().sd(), walk.counter().slack().sd()) * out;
      return Math.sqrt(
          own * own + scale * scale + walk.counter().zeroSd() * walk.counter().zeroSd());
    }
    double variance = solved.fit().covariance().variance(at.dt());
    return Math.sqrt(own * own + Math.max(0, variance));
  }

  Place place(Walk.Reached at) {
    Tree.Limb limb = model.layout().tree().limbs().get(at.limb());
    double length = model.layout().length(x, at.limb());
    double t = Math.clamp(at.t(), 0, length);
    return new Place(limb.reach().label(), limb.downstream() ? t : length - t);
  }

  /** Every stretch of sight, cut where it runs from one reach into the next. */
  List<PlacedSight> sights() {
    List<PlacedSight> placed = new ArrayList<>();
    for (Visit visit : book.visits()) {
      for (Pass pass : visit.passes()) {
        Walk walk = model.walks().find(visit.label(), pass.label());
        if (walk != null) {
          for (Pass.Sight sight : pass.sight()) {
            Walk.Reached from = lens(walk, sight.from().value());
            Walk.Reached to = lens(walk, sight.to().value());
            for (PlacedPass.Leg leg : between(walk, from, to)) {
              Place up = leg.down() ? leg.from() : leg.to();
              Place down = leg.down() ? leg.to() : leg.from();
              placed.add(new PlacedSight(visit.label(), pass.label(), up, down, sight.clarity()));
            }
          }
        }
      }
    }
    return placed;
  }

  /** Where each pass on this line went. */
  List<PlacedPass> passes() {
    List<PlacedPass> placed = new ArrayList<>();
    for (Visit visit : book.visits()) {
      for (Pass pass : visit.passes()) {
        Walk walk = model.walks().find(visit.label(), pass.label());
        if (walk != null) {
          placed.add(new Following(this, walk).pass(visit, pass));
        }
      }
    }
    return placed;
  }

  /** Where the lens was when the counter of a push showed this. */
  Walk.Reached lens(Walk walk, double reading) {
    return walk.at(x, reading, Finding.Moving.PUSHING, -1);
  }

  /** Where the lens of a walk was, whatever its counter shows. */
  Camera camera(Walk walk, List<PlacedPass.Leg> legs) {
    return new CountedCamera(
        walk.counter(),
        x[walk.zero()],
        walk.grown(x, Finding.Moving.PUSHING),
        walk.grown(x, Finding.Moving.PULLING),
        legs);
  }

  /** The way of a walk from its entry to a place, one leg for each reach. */
  List<PlacedPass.Leg> upTo(Walk walk, Walk.Reached to) {
    return between(walk, end(walk, walk.limbs().getFirst(), false), to);
  }

  /** The way of a walk from its entry to a node of it; empty where the node is not on its way. */
  List<PlacedPass.Leg> upTo(Walk walk, String node) {
    for (int limb : walk.limbs()) {
      Tree.Limb of = model.layout().tree().limbs().get(limb);
      if ((walk.away(limb) ? of.far() : of.near()).equals(node)) {
        return upTo(walk, end(walk, limb, true));
      }
    }
    return List.of();
  }

  /** Where a walk comes into a limb, or leaves it. */
  private Walk.Reached end(Walk walk, int limb, boolean leaves) {
    boolean away = walk.away(limb);
    double length = model.layout().length(x, limb);
    return new Walk.Reached(limb, away == leaves ? length : 0, new Gradient(), away);
  }

  private List<PlacedPass.Leg> between(Walk walk, Walk.Reached a, Walk.Reached b) {
    List<PlacedPass.Leg> legs = new ArrayList<>();
    for (int limb : walk.limbs()) {
      boolean first = limb == a.limb();
      boolean last = limb == b.limb();
      if (first || !legs.isEmpty()) {
        Place from = place(first ? a : end(walk, limb, false));
        Place to = place(last ? b : end(walk, limb, true));
        legs.add(new PlacedPass.Leg(from, to));
      }
      if (last) {
        return legs;
      }
    }
    return legs;
  }
}
