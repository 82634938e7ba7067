package daylight.line.course;

import daylight.line.book.Bend;
import daylight.line.book.FieldBook;
import daylight.line.book.Finding;
import daylight.line.book.Level;
import daylight.line.book.Material;
import daylight.line.book.Node;
import daylight.line.book.Pass;
import daylight.line.book.Place;
import daylight.line.book.Priors;
import daylight.line.book.Tie;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A property of which the truth is known: one drain beside a house wall, measured with instruments
 * that err as the priors say. Everything follows from the seed.
 *
 * <p>The wall runs north from A, at the origin of the grid, to B; the yard lies to its west. Water
 * goes from N1 to N2. With a branch, N3 joins at the junction J.
 */
public final class SimulatedProperty {
  private static final Priors PRIORS = TestPriors.shipped();

  private final SplitMix64 random;
  private final Traits traits;
  private final Draft draft = new Draft();
  private final Map<String, TruePipe> pipes = new TreeMap<>();
  private final double mainLength;
  private final double junction;
  private final double wall;
  private final List<TruePipe.TrueBend> bends = new ArrayList<>();
  private final FieldBook book;

  /** What sort of property it is. */
  public record Traits(
      boolean rigid, boolean levels, boolean branch, boolean fromOutlet, int bends, int locates) {

    /** Drawn so that all sorts come about. */
    public static Traits drawn(SplitMix64 random) {
      return new Traits(
          random.chance(0.6),
          random.chance(0.5),
          random.chance(0.25),
          random.chance(0.3),
          random.below(4),
          2 + random.below(7));
    }
  }

  /** A property of whatever sort that seed brings. */
  public static SimulatedProperty of(long seed) {
    SplitMix64 random = new SplitMix64(seed);
    return new SimulatedProperty(random, Traits.drawn(random));
  }

  /** A property of one sort. */
  public static SimulatedProperty of(long seed, Traits traits) {
    return new SimulatedProperty(new SplitMix64(seed), traits);
  }

  private SimulatedProperty(SplitMix64 random, Traits traits) {
    this.random = random;
    this.traits = traits;
    wall = random.between(8, 14);
    mainLength = random.between(12, 45);
    junction = traits.branch() ? mainLength * random.between(0.35, 0.65) : mainLength;
    lay();
    ground();
    measure();
    book = draft.book();
  }

  public FieldBook book() {
    return book;
  }

  public Traits traits() {
    return traits;
  }

  /** What is true at a place of the book's reaches. */
  TruePipe.At truth(Place place) {
    TruePipe main = pipe("R1");
    return switch (place.reach()) {
      case "R1" -> main.at(place.distance());
      case "R2" -> main.at(junction + place.distance());
      default -> pipe("R3").at(pipe("R3").length() - place.distance());
    };
  }

  private TruePipe pipe(String reach) {
    TruePipe pipe = pipes.get(reach);
    if (pipe == null) {
      throw new IllegalArgumentException("no pipe " + reach);
    }
    return pipe;
  }

  /** The pipes as they lie: R1 and R2 are one pipe cut at the junction, R3 is drawn from there. */
  private void lay() {
    for (int i = 0; i < traits.bends(); i++) {
      double at = mainLength * (i + random.between(0.2, 0.8)) / traits.bends();
      bends.add(new TruePipe.TrueBend(at, random.chance(0.5) ? Math.PI / 4 : -Math.PI / 4));
    }
    double ground = PRIORS.of(Priors.Kind.GROUND_YARD).a() * random.normal();
    TruePipe.At start =
        new TruePipe.At(
            random.between(-4, -1.5),
            random.between(1, 8),
            -random.between(0.7, 1.8),
            ground,
            -Math.PI / 2 + random.between(-0.6, 0.6),
            PRIORS.sd(Priors.Kind.FALL, 0) * random.normal());
    TruePipe main = new TruePipe(random, PRIORS, start, mainLength, traits.rigid(), bends);
    pipes.put("R1", main);
    if (traits.branch()) {
      TruePipe.At from = main.at(junction);
      double side = random.chance(0.5) ? Math.PI / 4 : -Math.PI / 4;
      TruePipe.At away =
          new TruePipe.At(
              from.east(),
              from.north(),
              from.up(),
              from.ground(),
              from.bearing() + Math.PI + side,
              random.between(0.01, 0.04));
      pipes.put(
          "R3",
          new TruePipe(random, PRIORS, away, random.between(5, 12), traits.rigid(), List.of()));
    }
  }

  private void ground() {
    draft.landmark("A", true).landmark("B", true);
    draft.node("N1", Node.Kind.ACCESS).node("N2", Node.Kind.OUTLET);
    Material material = traits.rigid() ? Material.PVC : Material.POLYETHYLENE;
    if (traits.branch()) {
      draft.node("J", Node.Kind.JUNCTION).node("N3", Node.Kind.ACCESS);
      draft.reach(Draft.pipe("R1", "N1", "J", "main", material, 0.1));
      draft.reach(Draft.pipe("R2", "J", "N2", "main", material, 0.1));
      draft.reach(Draft.pipe("R3", "N3", "J", "main", material, 0.1));
    } else {
      draft.reach(Draft.pipe("R1", "N1", "N2", "main", material, 0.1));
    }
  }

  /** The errors that all readings of the visit share. */
  private void measure() {
    draft.tape("A", "B", wall + PRIORS.sd(Priors.Kind.TAPE, wall) * random.normal());
    Instruments instruments = new Instruments(random, PRIORS);
    draft.kit(0.4, null);
    pushMain(instruments);
    if (traits.branch()) {
      pushBranch(instruments);
    }
    tie("N1", pipe("R1").at(0), 0.03);
    if (random.chance(0.5)) {
      tie("N2", pipe("R1").at(mainLength), 0.03);
    }
  }

  private void pushMain(Instruments instruments) {
    Instruments.Cable cable = instruments.cable();
    boolean back = traits.fromOutlet();
    Push push =
        traits.branch()
            ? new Push("P1", back ? "N2" : "N1", back ? "R2" : "R1", back ? "R1" : "R2")
            : new Push("P1", back ? "N2" : "N1", "R1");
    push.end(cable.reads(mainLength), Pass.Why.OUTLET_REACHED, back ? "N1" : "N2");
    if (traits.branch()) {
      double to = back ? mainLength - junction : junction;
      push.node(cable.reads(to), "J", Finding.Moving.PUSHING);
    }
    for (TruePipe.TrueBend bend : bends) {
      double at = back ? mainLength - bend.at() : bend.at();
      boolean right = bend.right() > 0 != back;
      double angle =
          Math.abs(bend.right()) + PRIORS.sd(Priors.Kind.BEND_ANGLE, 0) * random.normal();
      push.bend(cable.reads(at), angle, right ? Bend.Sense.RIGHT : Bend.Sense.LEFT);
    }
    draft.pass(push);
    Instruments.Receiver receiver = instruments.receiver();
    int n = traits.locates();
    for (int i = 0; i < n; i++) {
      double share = (i + random.between(0.3, 0.7)) / n;
      double sonde = 0.8 + share * (mainLength - 1.6);
      double from = back ? mainLength - sonde : sonde;
      TruePipe.At at = pipe("R1").at(from);
      double reads = cable.reads(sonde + instruments.behind());
      locate("L" + (i + 1), "P1", reads, at, receiver);
    }
  }

  private void pushBranch(Instruments instruments) {
    Instruments.Cable cable = instruments.cable();
    TruePipe branch = pipe("R3");
    double length = branch.length();
    draft.pass(new Push("P2", "N3", "R3").end(cable.reads(length), Pass.Why.MAIN_REACHED, "J"));
    Instruments.Receiver receiver = instruments.receiver();
    for (int i = 0; i < 2; i++) {
      double sonde = length * (i == 0 ? 0.25 : 0.7);
      double reads = cable.reads(sonde + instruments.behind());
      locate("M" + (i + 1), "P2", reads, branch.at(length - sonde), receiver);
    }
    tie("N3", branch.at(length), 0.03);
  }

  private void locate(
      String label, String pass, double reads, TruePipe.At at, Instruments.Receiver receiver) {
    double depth = receiver.reads(at.ground() - at.up(), at);
    draft.locate(label, pass, reads, depth);
    tie(label, at, PRIORS.sd(Priors.Kind.LOCATE_SPOT, depth));
    if (traits.levels()) {
      double sd = PRIORS.sd(Priors.Kind.LEVEL, 0);
      draft.height(label, Level.Part.GROUND, at.ground() + sd * random.normal());
    }
  }

  /** Ties a spot that itself lies beside the truth by an error of that size. */
  private void tie(String label, TruePipe.At at, double spotSd) {
    boolean node = label.startsWith("N");
    double sd = node ? 0.02 : spotSd;
    double east = at.east() + sd * random.normal();
    double north = at.north() + sd * random.normal();
    if (east > -12 && random.chance(0.6)) {
      double along = north + PRIORS.sd(Priors.Kind.ALONG, north) * random.normal();
      double out = -east + PRIORS.sd(Priors.Kind.OUT, -east) * random.normal();
      draft.along(label, along, out);
      return;
    }
    double toA = StrictMath.hypot(east, north);
    double toB = StrictMath.hypot(east, north - wall);
    draft.tape("A", label, toA + PRIORS.sd(Priors.Kind.TAPE, toA) * random.normal());
    draft.tape("B", label, toB + PRIORS.sd(Priors.Kind.TAPE, toB) * random.normal());
    draft.tie(new Tie.Side(draft.tieId(), label, "A", "B", east < 0));
  }
}
