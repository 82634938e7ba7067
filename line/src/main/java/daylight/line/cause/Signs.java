package daylight.line.cause;

import daylight.line.book.Pass;
import daylight.line.book.Reported;
import daylight.line.condition.FindingGrade;
import daylight.line.condition.Grade;
import daylight.line.condition.Immediate;
import daylight.line.condition.Verdict;
import daylight.line.course.PlacedFinding;
import daylight.line.course.PlacedPass;
import daylight.line.course.Station;
import daylight.line.fall.FallStretch;
import daylight.line.fall.WaterCause;
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
  private final CauseTable.Row row;
  private final CauseTable.Limits limits;
  private final Reported complaint;
  private final List<Where.Span> spans;
  private final Trials trials;

  Signs(Scene scene, Where where, CauseTable.Row row, CauseTable table, Reported complaint) {
    this.scene = scene;
    this.row = row;
    this.limits = table.limits();
    this.complaint = complaint;
    this.spans = where.spans(row.where(), table.limits().near());
    this.trials = new Trials(scene, where.known(), spans);
  }

  /** Every clue, in the table's order; what was found elsewhere comes last. */
  List<Clue> clues() {
    List<Clue> clues = new ArrayList<>(found());
    // What is of a kind that counts, but was held by something else, was there all the same.
    boolean found = scene.findings().stream().anyMatch(p -> here(p) && ofTheKinds(p));
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
      case WATER_RUN, HOLD_TEST, SMOKE_TEST -> trials.done(ask);
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
      case ARRIVED, NOT_ARRIVED, HELD, FELL, SMOKE_INSIDE, SMOKE_FROM_GROUND, NO_SMOKE ->
          trials.clues(sign.sign(), times);
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

  private boolean ofTheKinds(PlacedFinding placed) {
    return row.signs().stream().anyMatch(sign -> sign.kinds().contains(placed.finding().kind()));
  }

  private boolean meant(CauseTable.SignRow sign, PlacedFinding placed) {
    return sign.kinds().contains(placed.finding().kind())
        && fills(sign, placed)
        && graded(sign, placed)
        && held(sign, placed);
  }

  /** Water counts unless what holds it was found to be something else. */
  private boolean held(CauseTable.SignRow sign, PlacedFinding placed) {
    WaterCause wanted = sign.heldBy();
    return wanted == null
        || water(placed)
            .flatMap(water -> water.held().found())
            .map(found -> found.cause() == wanted)
            .orElse(true);
  }

  private Optional<WaterSeen> water(PlacedFinding placed) {
    return scene.fall().water().stream()
        .filter(water -> water.finding().equals(placed.finding().label()))
        .findFirst();
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
    return water(placed).map(WaterSeen::share).orElse(null);
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
