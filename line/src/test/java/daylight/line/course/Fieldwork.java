package daylight.line.course;

import static daylight.line.course.Draft.id;
import static daylight.line.course.Draft.metres;

import daylight.line.book.Bend;
import daylight.line.book.FieldBook;
import daylight.line.book.Finding;
import daylight.line.book.Level;
import daylight.line.book.Locate;
import daylight.line.book.Material;
import daylight.line.book.Node;
import daylight.line.book.Pass;
import daylight.line.book.Priors;
import daylight.line.survey.PlanPoint;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A crew measures a known property with erring tools. */
final class Fieldwork {
  private static final Priors PRIORS = KnownProperty.PRIORS;

  /** A node is seen, not sensed: its paint is as good as this, metres. */
  private static final double SEEN = 0.02;

  private static final double RAISED = 0.3;
  private static final double COVER = 0.2;

  /** Evenly spaced locates begin so far in, metres. */
  private static final double FIRST = 1.5;

  private final KnownProperty property;
  private final SplitMix64 random;
  private final Errors errors;
  private final Draft draft = new Draft();
  private final Tools tools;
  private final Posts posts;
  private final boolean back;
  private final List<Located> located = new ArrayList<>();

  /** A locate, where its transmitter truly was, and the depth that was read. */
  record Located(String label, Tools.Spot spot, double depth) {}

  Fieldwork(KnownProperty property, SplitMix64 random, Errors errors, int locates) {
    this.property = property;
    this.random = random;
    this.errors = errors;
    KnownProperty.Plan plan = property.plan();
    tools = new Tools(random, plan.nature(), errors, PRIORS, property.totalLength());
    posts = new Posts(random, errors, PRIORS, draft, property.main());
    back = plan.is(LineSort.Way.FROM_OUTLET);
    layOut(plan.is(LineSort.Way.FLEXIBLE) ? Material.POLYETHYLENE : Material.PVC);
    draft.kit(0.4, null);
    pushMain(locates);
    if (property.plan().is(LineSort.Way.TWICE)) {
      pushBack();
    }
    LaidPipe branch = property.branch();
    if (branch != null) {
      pushBranch(branch, locates);
    }
    end(back ? "N2" : "N1", property.truth(new Tools.Spot(0, 0)));
    if (random.chance(0.5)) {
      end(back ? "N1" : "N2", property.truth(new Tools.Spot(0, property.mainLength())));
    }
  }

  FieldBook book() {
    return draft.book();
  }

  List<Located> located() {
    return List.copyOf(located);
  }

  /** How far in the middle between the two middle ones of evenly spaced locates is. */
  static double middle(int locates, double apart) {
    int before = locates / 2;
    return FIRST + apart * (before - 0.5);
  }

  private void layOut(Material material) {
    draft.node("N1", Node.Kind.ACCESS).node("N2", Node.Kind.OUTLET);
    if (property.branch() == null) {
      draft.reach(Draft.pipe("R1", "N1", "N2", "main", material, 0.1));
      return;
    }
    draft.node("J", Node.Kind.JUNCTION).node("N3", Node.Kind.ACCESS);
    draft.reach(Draft.pipe("R1", "N1", "J", "main", material, 0.1));
    draft.reach(Draft.pipe("R2", "J", "N2", "main", material, 0.1));
    draft.reach(Draft.pipe("R3", "N3", "J", "main", material, 0.1));
  }

  private void pushMain(int locates) {
    double length = property.mainLength();
    Tools.Cable cable = tools.cable(length);
    String entry = back ? "N2" : "N1";
    Push push = new Push("P1", entry, "R1");
    if (property.branch() != null) {
      push = back ? new Push("P1", entry, "R2", "R1") : new Push("P1", entry, "R1", "R2");
      push.node(cable.reads(property.junction()), "J", Finding.Moving.PUSHING);
    }
    Pass.Why why = back ? Pass.Why.ENOUGH : Pass.Why.OUTLET_REACHED;
    push.end(cable.reads(length), why, back ? "N1" : "N2");
    for (TruePipe.TrueBend bend : property.noted()) {
      Bend.Sense sense = bend.right() > 0 ? Bend.Sense.RIGHT : Bend.Sense.LEFT;
      push.bend(cable.reads(bend.at()), Math.PI / 4, sense);
    }
    if (property.plan().is(LineSort.Way.WET)) {
      new StandingWater(property).noteIn(push, cable, random, errors);
    }
    draft.pass(push);
    double even = property.plan().even();
    for (int i = 0; i < locates; i++) {
      double share = (i + random.between(0.3, 0.7)) / locates;
      double sonde = even > 0 ? FIRST + i * even : 0.8 + share * (length - 1.6);
      locate("L" + (i + 1), "P1", cable, sonde, new Tools.Spot(0, sonde));
    }
  }

  /** From the other end until all bends were seen, and no further. */
  private void pushBack() {
    double length = property.mainLength();
    Tools.Cable cable = tools.cable(length);
    Push push = new Push("P9", back ? "N1" : "N2", "R1");
    double furthest = 0;
    for (TruePipe.TrueBend bend : property.noted().reversed()) {
      Bend.Sense sense = bend.right() > 0 ? Bend.Sense.LEFT : Bend.Sense.RIGHT;
      furthest = length - bend.at();
      push.bend(cable.reads(furthest), Math.PI / 4, sense);
    }
    push.end(cable.reads(Math.min(length - 0.5, furthest + 1)), Pass.Why.FRICTION, null);
    draft.pass(push);
  }

  private void pushBranch(LaidPipe branch, int locates) {
    double length = branch.length();
    Tools.Cable cable = tools.cable(length);
    draft.pass(new Push("P2", "N3", "R3").end(cable.reads(length), Pass.Why.MAIN_REACHED, "J"));
    int n = Math.min(locates, 2);
    for (int i = 0; i < n; i++) {
      double sonde = length * (i == 0 ? 0.25 : 0.7);
      Tools.Spot spot = new Tools.Spot(property.junction(), length - sonde);
      locate("M" + (i + 1), "P2", cable, sonde, spot);
    }
    end("N3", branch.at(length));
  }

  private void locate(String label, String pass, Tools.Cable cable, double sonde, Tools.Spot spot) {
    TruePipe.At at = property.truth(spot);
    KnownProperty.Plan plan = property.plan();
    double raised = plan.is(LineSort.Way.HELD) ? RAISED : 0;
    double cover = plan.is(LineSort.Way.COVERED) ? COVER : 0;
    double shown = tools.depth(at.ground() + raised + cover - at.up(), spot);
    located.add(new Located(label, spot, shown));
    draft.locate(
        locate(
            label,
            pass,
            cable.reads(sonde + tools.behind()),
            shown,
            raised > 0 ? raised : null,
            cover > 0 ? cover : null));
    PlanPoint paint = astray(at, PRIORS.sd(Priors.Kind.LOCATE_SPOT, shown));
    KnownProperty.Stray stray = plan.stray();
    if (stray != null && stray.label().equals(label)) {
      paint =
          new PlanPoint(
              paint.x() + stray.by() * StrictMath.sin(stray.bearing()),
              paint.y() + stray.by() * StrictMath.cos(stray.bearing()));
    }
    posts.tie(label, paint);
    if (plan.is(LineSort.Way.LEVELLED)) {
      double error = errors.of(PRIORS.sd(Priors.Kind.LEVEL, 0));
      draft.height(label, Level.Part.GROUND, at.ground() + error);
    }
  }

  private static Locate locate(
      String label,
      String pass,
      double cable,
      double depth,
      @Nullable Double raised,
      @Nullable Double cover) {
    return new Locate(
        id("locate", label),
        pass,
        metres(cable),
        Finding.Moving.PUSHING,
        metres(depth),
        raised == null ? null : metres(raised),
        "yard",
        cover == null ? null : metres(cover),
        Locate.Signal.GOOD,
        List.of(),
        Locate.OffOn.NO,
        null,
        null);
  }

  private void end(String node, TruePipe.At at) {
    posts.tie(node, astray(at, SEEN));
  }

  private PlanPoint astray(TruePipe.At at, double sd) {
    return new PlanPoint(at.east() + errors.of(sd), at.north() + errors.of(sd));
  }
}
