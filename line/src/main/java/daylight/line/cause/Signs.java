package daylight.line.cause;

import daylight.line.book.Node;
import daylight.line.book.Pass;
import daylight.line.book.Reported;
import daylight.line.book.Test;
import daylight.line.book.WaterWay;
import daylight.line.condition.FindingGrade;
import daylight.line.condition.Grade;
import daylight.line.condition.Immediate;
import daylight.line.condition.Verdict;
import daylight.line.course.PlacedFinding;
import daylight.line.course.PlacedPass;
import daylight.line.course.Run;
import daylight.line.course.Station;
import daylight.line.fall.FallStretch;
import daylight.line.fall.WaterSeen;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Looks for the signs of one cause in what a visit saw and tried. */
final class Signs {
  private static final double SURE = 0.95;

  private static final Set<Pass.Why> HELD_UP =
      Set.of(Pass.Why.OBSTRUCTION, Pass.Why.HEAD_STUCK, Pass.Why.FRICTION);

  private final Scene scene;
  private final Where where;
  private final CauseTable.Row row;
  private final CauseTable.Limits limits;
  private final Reported complaint;
  private final List<Where.Span> spans;

  Signs(Scene scene, Where where, CauseTable.Row row, CauseTable table, Reported complaint) {
    this.scene = scene;
    this.where = where;
    this.row = row;
    this.limits = table.limits();
    this.complaint = complaint;
    this.spans = where.spans(row.where(), table.limits().near());
  }

  /** Every clue, in the table's order; what was found elsewhere comes last. */
  List<Clue> clues() {
    List<Clue> clues = new ArrayList<>(found());
    boolean found = !clues.isEmpty();
    for (CauseTable.SignRow sign : row.signs()) {
      if (sign.sign() != Sign.FOUND && !(found && sign.sign() == Sign.NOT_FOUND)) {
        clues.addAll(of(sign));
      }
    }
    clues.addAll(elsewhere());
    return clues;
  }

  /** What of the asks was not done. */
  List<Ask> open() {
    return row.asks().stream().filter(ask -> !done(ask)).toList();
  }

  private boolean done(Ask ask) {
    return switch (ask) {
      case CAMERA -> !spans.isEmpty() && Sight.share(scene, spans) >= scene.seenShare();
      case WATER_RUN -> tests(Test.Kind.WATER_RUN, Test.Kind.DYE).stream().anyMatch(this::passes);
      case HOLD_TEST -> tests(Test.Kind.HOLD).stream().anyMatch(HoldTests::tells);
      case SMOKE_TEST -> tests(Test.Kind.SMOKE).stream().anyMatch(t -> !t.seen().isEmpty());
      case LEVELS -> !falls().isEmpty() && falls().stream().allMatch(Signs::settled);
      case DEPTH -> depth().isPresent();
      case DRY_SPELL -> complaint.when() == Reported.When.DRY;
      case VENTS, RAIN, METER, OUTLET_WATER, FILL -> false;
    };
  }

  private List<? extends Clue> of(CauseTable.SignRow sign) {
    double times = sign.times();
    return switch (sign.sign()) {
      case FOUND -> List.of();
      case NOT_FOUND -> seen(times);
      case STOPPED -> stopped(times);
      case TOO_FLAT, BACKWARD, FALLS -> slope(sign.sign(), times);
      case ARRIVED, NOT_ARRIVED -> water(sign.sign(), times);
      case HELD, FELL -> filled(sign.sign(), times);
      case SMOKE_INSIDE, SMOKE_FROM_GROUND, NO_SMOKE -> smoke(sign.sign(), times);
      case SHALLOW, DEEP -> deep(sign.sign(), times);
      case WHEN -> {
        Reported.When when = complaint.when();
        yield when != null && sign.is().contains(when)
            ? List.of(new Clue.Shows(times, when))
            : List.of();
      }
    };
  }

  private boolean here(PlacedFinding placed) {
    return spans.stream().anyMatch(span -> span.meets(placed.from(), placed.to()));
  }

  private List<Clue> found() {
    List<Clue> found = new ArrayList<>();
    for (PlacedFinding placed : scene.findings()) {
      if (here(placed)) {
        row.signs().stream()
            .filter(sign -> sign.sign() == Sign.FOUND && meant(sign, placed))
            .mapToDouble(CauseTable.SignRow::times)
            .max()
            .ifPresent(times -> found.add(new Clue.Found(times, placed)));
      }
    }
    found.sort(Comparator.comparingDouble(Clue::times).reversed());
    return found;
  }

  private List<Clue> elsewhere() {
    List<Clue> elsewhere = new ArrayList<>();
    for (PlacedFinding placed : scene.findings()) {
      boolean meant =
          row.signs().stream().anyMatch(s -> s.sign() == Sign.FOUND && meant(s, placed));
      if (meant && !here(placed)) {
        elsewhere.add(new Clue.Elsewhere(placed, row.where()));
      }
    }
    return elsewhere;
  }

  private boolean meant(CauseTable.SignRow sign, PlacedFinding placed) {
    return sign.kinds().contains(placed.finding().kind())
        && fills(sign, placed)
        && graded(sign, placed);
  }

  private boolean fills(CauseTable.SignRow sign, PlacedFinding placed) {
    Double from = sign.shareFrom();
    Double share = share(placed);
    return from == null || (share != null && share >= from);
  }

  /** The share of the bore that was noted, or for water follows from its depth. */
  private @Nullable Double share(PlacedFinding placed) {
    Reading noted = placed.finding().quantities().get("share");
    if (noted != null) {
      return noted.value();
    }
    return scene.fall().water().stream()
        .filter(water -> water.finding().equals(placed.finding().label()))
        .map(WaterSeen::share)
        .filter(java.util.Objects::nonNull)
        .findFirst()
        .orElse(null);
  }

  private boolean graded(CauseTable.SignRow sign, PlacedFinding placed) {
    Grade wanted = sign.grade();
    if (wanted == null) {
      return true;
    }
    FindingGrade grade = scene.grades().apply(placed);
    return grade.immediate() instanceof Immediate.Yes
        || grade.verdicts().values().stream()
            .anyMatch(
                verdict ->
                    verdict instanceof Verdict.Graded graded && !wanted.worseThan(graded.grade()));
  }

  private List<Clue> seen(double times) {
    double share = Sight.share(scene, spans);
    return !spans.isEmpty() && share >= scene.seenShare()
        ? List.of(new Clue.NotFound(times, share))
        : List.of();
  }

  private List<Clue> stopped(double times) {
    List<Clue> stopped = new ArrayList<>();
    for (Pass pass : scene.visit().passes()) {
      Pass.End end = pass.end();
      if (end != null && HELD_UP.contains(end.why()) && endsHere(pass) && stopped.isEmpty()) {
        stopped.add(new Clue.Stopped(times, pass, end));
      }
    }
    return stopped;
  }

  private boolean endsHere(Pass pass) {
    return scene.line().passes().stream()
        .filter(one -> one.visit().equals(scene.visit().label()))
        .filter(one -> one.pass().equals(pass.label()) && !one.legs().isEmpty())
        .map(one -> one.legs().getLast())
        .map(PlacedPass.Leg::to)
        .anyMatch(last -> spans.stream().anyMatch(span -> span.meets(last, null)));
  }

  private List<FallStretch> falls() {
    return scene.fall().stretches().stream()
        .filter(one -> spans.stream().anyMatch(span -> span.meets(one.from(), one.to())))
        .toList();
  }

  private static boolean settled(FallStretch stretch) {
    Double below = stretch.belowLimit();
    return below != null && (below <= 1 - SURE || below >= SURE);
  }

  private static double below(FallStretch stretch) {
    Double below = stretch.belowLimit();
    return below == null ? -1 : below;
  }

  private List<Clue> slope(Sign sign, double times) {
    List<FallStretch> all = falls();
    if (sign == Sign.BACKWARD) {
      return worst(all, sign, times, FallStretch::adverse, SURE);
    }
    if (sign == Sign.TOO_FLAT) {
      return worst(all, sign, times, Signs::below, SURE);
    }
    TreeSet<String> known = new TreeSet<>();
    all.stream().filter(FallStretch::whole).forEach(one -> known.add(one.from().reach()));
    boolean everywhere =
        !all.isEmpty()
            && spans.stream().allMatch(span -> known.contains(span.reach()))
            && all.stream().allMatch(one -> below(one) >= 0 && below(one) <= 1 - SURE);
    return everywhere ? worst(all, sign, times, Signs::below, 0) : List.of();
  }

  private static List<Clue> worst(
      List<FallStretch> all,
      Sign sign,
      double times,
      java.util.function.ToDoubleFunction<FallStretch> by,
      double from) {
    return all.stream()
        .filter(one -> by.applyAsDouble(one) >= from)
        .max(Comparator.comparingDouble(by))
        .<List<Clue>>map(one -> List.of(new Clue.Slope(times, sign, one)))
        .orElse(List.of());
  }

  private List<Test> tests(Test.Kind... kinds) {
    return scene.visit().tests().stream()
        .filter(test -> List.of(kinds).contains(test.kind()))
        .filter(test -> lines(test.at()).stream().anyMatch(ours()::contains))
        .toList();
  }

  private Set<String> ours() {
    Set<String> ours = new TreeSet<>();
    spans.forEach(
        span -> scene.line().findRun(span.reach()).ifPresent(run -> ours.add(run.reach().line())));
    return ours;
  }

  private Set<String> lines(String node) {
    Set<String> lines = new TreeSet<>();
    for (Run run : scene.line().runs()) {
      if (run.reach().from().equals(node) || run.reach().to().equals(node)) {
        lines.add(run.reach().line());
      }
    }
    return lines;
  }

  /** Whether what a test let in goes through the pipe in question: all of it, or some. */
  private boolean passes(Test test) {
    return spans.stream()
        .map(Where.Span::reach)
        .anyMatch(WaterWay.below(scene.book().site(), test.at())::contains);
  }

  private boolean passesAll(Test test) {
    return spans.stream()
        .map(Where.Span::reach)
        .allMatch(WaterWay.below(scene.book().site(), test.at())::contains);
  }

  private List<Clue> water(Sign sign, double times) {
    boolean came = sign == Sign.ARRIVED;
    for (Test test : tests(Test.Kind.WATER_RUN, Test.Kind.DYE)) {
      boolean tells = (came && where.known()) ? passesAll(test) : passes(test);
      for (Test.Seen seen : test.seen()) {
        if (tells && seen.arrived() == came && reachesEnd(test, seen)) {
          return List.of(new Clue.Tried(times, sign, test, seen));
        }
      }
    }
    return List.of();
  }

  /** Water that came out halfway says nothing of the rest. */
  private boolean reachesEnd(Test test, Test.Seen seen) {
    Set<String> through = WaterWay.below(scene.book().site(), test.at());
    Set<String> after = WaterWay.below(scene.book().site(), seen.where());
    return spans.stream()
        .map(Where.Span::reach)
        .filter(through::contains)
        .noneMatch(after::contains);
  }

  private List<Clue> filled(Sign sign, double times) {
    for (Test test : tests(Test.Kind.HOLD)) {
      Reading drop = test.drop();
      if (HoldTests.tells(test)
          && drop != null
          && HoldTests.held(drop, limits.holdDrop()) == (sign == Sign.HELD)) {
        return List.of(new Clue.Filled(times, sign, test, drop));
      }
    }
    return List.of();
  }

  private List<Clue> smoke(Sign sign, double times) {
    List<Test> all = tests(Test.Kind.SMOKE).stream().filter(t -> !t.seen().isEmpty()).toList();
    if (sign == Sign.NO_SMOKE) {
      return all.isEmpty()
              || all.stream().anyMatch(t -> t.seen().stream().anyMatch(Test.Seen::arrived))
          ? List.of()
          : List.of(new Clue.Tried(times, sign, all.getFirst(), null));
    }
    for (Test test : all) {
      for (Test.Seen seen : test.seen()) {
        if (seen.arrived() && tells(seen.where()) == sign) {
          return List.of(new Clue.Tried(times, sign, test, seen));
        }
      }
    }
    return List.of();
  }

  /** Out of an outlet smoke comes from every drain. */
  private @Nullable Sign tells(String node) {
    boolean fixture =
        scene.book().site().surroundings().fixtures().stream()
            .anyMatch(one -> one.node().equals(node));
    Node.Kind kind = scene.book().site().findNode(node).map(Node::kind).orElse(Node.Kind.END);
    return fixture
        ? Sign.SMOKE_INSIDE
        : switch (kind) {
          case INLET, ACCESS, PIT -> Sign.SMOKE_INSIDE;
          case JUNCTION, END -> Sign.SMOKE_FROM_GROUND;
          case OUTLET -> null;
        };
  }

  private Optional<Station> depth() {
    return scene.line().runs().stream()
        .flatMap(run -> run.stations().stream())
        .filter(station -> station.depth() != null)
        .filter(s -> spans.stream().anyMatch(span -> span.meets(s.place(), null)))
        .min(Comparator.comparingDouble(Signs::middle));
  }

  private static double middle(Station station) {
    Measured depth = station.depth();
    return depth == null ? Double.POSITIVE_INFINITY : depth.value();
  }

  private List<Clue> deep(Sign sign, double times) {
    Optional<Station> least = depth();
    Measured depth = least.map(Station::depth).orElse(null);
    if (least.isEmpty() || depth == null) {
      return List.of();
    }
    boolean so =
        sign == Sign.SHALLOW ? depth.upper95() < limits.shallow() : depth.lower95() > limits.deep();
    return so ? List.of(new Clue.Depth(times, sign, least.get().place(), depth)) : List.of();
  }
}
