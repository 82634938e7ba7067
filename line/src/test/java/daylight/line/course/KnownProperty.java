package daylight.line.course;

import daylight.line.book.FieldBook;
import daylight.line.book.Place;
import daylight.line.book.Priors;
import daylight.line.survey.PlanPoint;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A property of which the truth is known, of one class and of either nature; everything follows
 * from the seed. The camera goes in at N1 where the water comes in, or at N2 where it goes out; a
 * branch from N3 joins at J.
 *
 * <p>Pipes are drawn outward from the entry. Of those drawn, the first is taken on which every
 * depth reads between {@value #SHALLOWEST} and {@value #DEEPEST} m: what is chosen by its readings
 * alone leaves every region that rests on those readings as true as it was.
 */
final class KnownProperty {
  static final Priors PRIORS = TestPriors.shipped();
  private static final double SHALLOWEST = 0.25;
  private static final double DEEPEST = 6;
  private static final int MOST_TRIES = 5000;

  private final Plan plan;
  private final SplitMix64 random;
  private final Errors errors;
  private final double mainLength;
  private final double junction;
  private final List<TruePipe.TrueBend> bends = new ArrayList<>();
  private final LaidPipe first;
  private final @Nullable LaidPipe second;
  private final @Nullable LaidPipe branch;
  private final FieldBook book;
  private final List<Fieldwork.Located> located;

  /**
   * What to draw.
   *
   * @param exact whether nothing errs and nothing strays from straight and level
   * @param unnoted a bend that nobody wrote down, radians to the right, half-way between the two
   *     middle locates; 0 for none
   * @param even metres between locates; 0 to spread them over the whole length
   * @param stray a spot that was painted in the wrong place; null for none
   */
  record Plan(
      Nature nature,
      LineSort sort,
      boolean exact,
      double unnoted,
      double even,
      @Nullable Stray stray) {
    static Plan of(Nature nature, LineSort sort) {
      return new Plan(nature, sort, false, 0, 0, null);
    }

    /** One without errors or wandering. */
    static Plan exact(LineSort sort) {
      return new Plan(Nature.SUPPOSED, sort, true, 0, 0, null);
    }

    /** As the estimator supposes, with locates at even distances. */
    static Plan even(LineSort sort, double apart) {
      return new Plan(Nature.SUPPOSED, sort, false, 0, apart, null);
    }

    Plan withUnnoted(double bend) {
      return new Plan(nature, sort, exact, bend, even, stray);
    }

    Plan withStray(String label, double by, double bearing) {
      return new Plan(nature, sort, exact, unnoted, even, new Stray(label, by, bearing));
    }

    boolean is(LineSort.Way way) {
      return sort.is(way);
    }
  }

  /** The spot of that label lies so many metres off in the direction of that bearing. */
  record Stray(String label, double by, double bearing) {}

  static KnownProperty of(Nature nature, LineSort sort, long seed) {
    return of(Plan.of(nature, sort), seed);
  }

  static KnownProperty of(Plan plan, long seed) {
    SplitMix64 random =
        new SplitMix64(seed * 1009 + plan.sort().number() * 31L + plan.nature().seed());
    for (int i = 0; i < MOST_TRIES; i++) {
      KnownProperty drawn = new KnownProperty(plan, random);
      if (drawn.located.stream()
          .allMatch(one -> one.depth() >= SHALLOWEST && one.depth() <= DEEPEST)) {
        return drawn;
      }
    }
    throw new IllegalStateException(plan + ": no line that a receiver can read in " + MOST_TRIES);
  }

  private KnownProperty(Plan plan, SplitMix64 random) {
    this.plan = plan;
    this.random = random;
    errors = new Errors(random, plan.nature(), plan.exact() ? 0 : 1);
    int locates = plan.sort().locates(random);
    mainLength = plan.even() > 0 ? plan.even() * locates + 0.8 : plan.sort().length(random);
    boolean branched = plan.is(LineSort.Way.BRANCH);
    junction = branched ? mainLength * random.between(0.35, 0.65) : mainLength;
    turn(locates);
    first = pipe(start(), junction, bendsBetween(0, junction));
    if (branched) {
      TruePipe.At at = first.at(junction);
      second = pipe(onward(at), mainLength - junction, bendsBetween(junction, mainLength));
      branch = pipe(away(at), random.between(5, 12), List.of());
    } else {
      second = null;
      branch = null;
    }
    Fieldwork work = new Fieldwork(this, random, errors, locates);
    located = work.located();
    book = work.book();
  }

  private LaidPipe pipe(TruePipe.At start, double length, List<TruePipe.TrueBend> turns) {
    LaidPipe.Wander wander =
        plan.exact()
            ? LaidPipe.Wander.none()
            : LaidPipe.Wander.of(PRIORS, !plan.is(LineSort.Way.FLEXIBLE));
    return new LaidPipe(
        random, plan.nature(), PRIORS.of(Priors.Kind.GROUND_YARD), wander, start, length, turns);
  }

  /** Bends of about 45°, and where they are. */
  private void turn(int locates) {
    int n = plan.sort().bends();
    for (int i = 0; i < n; i++) {
      double at = mainLength * (i + random.between(0.2, 0.8)) / n;
      double angle = Math.PI / 4 + errors.bend(PRIORS.sd(Priors.Kind.BEND_ANGLE, 0));
      bends.add(new TruePipe.TrueBend(at, random.chance(0.5) ? angle : -angle));
    }
    if (plan.unnoted() != 0) {
      bends.add(new TruePipe.TrueBend(Fieldwork.middle(locates, plan.even()), plan.unnoted()));
    }
  }

  private List<TruePipe.TrueBend> bendsBetween(double from, double to) {
    return bends.stream()
        .filter(bend -> bend.at() >= from && bend.at() < to)
        .map(bend -> new TruePipe.TrueBend(bend.at() - from, bend.right()))
        .toList();
  }

  private TruePipe.At start() {
    double ground = plan.exact() ? 0 : PRIORS.of(Priors.Kind.GROUND_YARD).a() * random.normal();
    double pitch = plan.exact() ? 0 : PRIORS.sd(Priors.Kind.FALL, 0) * random.normal();
    return new TruePipe.At(
        random.between(-4, -1.5),
        random.between(1, 8),
        -random.between(0.7, 2.2),
        ground,
        -Math.PI / 2 + random.between(-0.6, 0.6),
        pitch);
  }

  /** How the main goes on beyond the junction. */
  private TruePipe.At onward(TruePipe.At at) {
    boolean straight = plan.nature() == Nature.OTHERWISE;
    return straight ? at : turned(at, supposedTurn(), supposedTip());
  }

  /**
   * How the branch leaves. As supposed: by no more than other pipes turn at a junction. Otherwise:
   * as such fittings are made, so that its water joins at 45° to that of the main.
   */
  private TruePipe.At away(TruePipe.At at) {
    if (plan.nature() == Nature.SUPPOSED) {
      return turned(at, supposedTurn(), supposedTip());
    }
    double side = random.chance(0.5) ? Math.PI / 4 : -Math.PI / 4;
    double back = plan.is(LineSort.Way.FROM_OUTLET) ? 0 : Math.PI;
    return turned(at, back + side, random.between(0.01, 0.04) - at.pitch());
  }

  private double supposedTurn() {
    return plan.exact() ? 0 : PRIORS.sd(Priors.Kind.JUNCTION_TURN, 0) * random.normal();
  }

  private double supposedTip() {
    return plan.exact() ? 0 : PRIORS.sd(Priors.Kind.FALL, 0) * random.normal();
  }

  private static TruePipe.At turned(TruePipe.At at, double right, double up) {
    return new TruePipe.At(
        at.east(), at.north(), at.up(), at.ground(), at.bearing() + right, at.pitch() + up);
  }

  Plan plan() {
    return plan;
  }

  FieldBook book() {
    return book;
  }

  double mainLength() {
    return mainLength;
  }

  double junction() {
    return junction;
  }

  /** The bends of the main that were noted. */
  List<TruePipe.TrueBend> noted() {
    return bends.subList(0, plan.sort().bends());
  }

  /** The locates and where their transmitters truly were. */
  List<Fieldwork.Located> located() {
    return located;
  }

  LaidPipe[] main() {
    return second == null ? new LaidPipe[] {first} : new LaidPipe[] {first, second};
  }

  @Nullable LaidPipe branch() {
    return branch;
  }

  double totalLength() {
    return mainLength + (branch == null ? 0 : branch.length());
  }

  /** What is true so far from the entry, or on the branch. */
  TruePipe.At truth(Tools.Spot spot) {
    if (spot.leaves() > 0) {
      return Known.known(branch).at(spot.distance());
    }
    return second != null && spot.distance() > junction
        ? second.at(spot.distance() - junction)
        : first.at(spot.distance());
  }

  TruePipe.At truth(Place place) {
    return truth(spot(place));
  }

  /** Where a place of the book's reaches is on the tree of pipes. */
  Tools.Spot spot(Place place) {
    boolean back = plan.is(LineSort.Way.FROM_OUTLET);
    double d = place.distance();
    return switch (place.reach()) {
      case "R1" -> new Tools.Spot(0, back ? mainLength - d : d);
      case "R2" -> new Tools.Spot(0, back ? junction - d : junction + d);
      default -> new Tools.Spot(junction, Known.known(branch).length() - d);
    };
  }

  /** A place drawn evenly over the whole length. */
  Place drawnPlace(SplitMix64 by) {
    double d = by.uniform() * totalLength();
    boolean back = plan.is(LineSort.Way.FROM_OUTLET);
    if (d >= mainLength) {
      return new Place("R3", d - mainLength);
    }
    double fromHead = back ? mainLength - d : d;
    double head = branch == null ? mainLength : back ? mainLength - junction : junction;
    return fromHead <= head ? new Place("R1", fromHead) : new Place("R2", fromHead - head);
  }

  static PlanPoint plan(TruePipe.At at) {
    return new PlanPoint(at.east(), at.north());
  }
}
