package daylight.line.survey;

import java.util.List;
import java.util.SortedSet;

/** What to say of the points that are not in the result. */
final class Missing {
  private final Ties ties;
  private final Placement placement;
  private final Plan plan;
  private final SortedSet<String> points;

  Missing(Ties ties, Placement placement, Plan plan, SortedSet<String> points) {
    this.ties = ties;
    this.placement = placement;
    this.plan = plan;
    this.points = points;
  }

  List<Undetermined> list() {
    return points.stream().filter(p -> !plan.scene().knows(p)).map(this::why).toList();
  }

  private Undetermined why(String point) {
    List<PlanPoint> mirrors = placement.mirrors().get(point);
    List<String> entries =
        ties.sightings().stream()
            .filter(s -> s.points().contains(point))
            .map(Sighting::entry)
            .distinct()
            .toList();
    return mirrors != null
        ? new Undetermined.Mirror(point, mirrors, entries)
        : new Undetermined.Untied(point, reason(point), entries);
  }

  private Undetermined.Reason reason(String point) {
    Scene scene = plan.scene();
    if (scene.datum().northward().filter(point::equals).isPresent()) {
      return Undetermined.Reason.DISTANCE_UNKNOWN;
    }
    if (placement.flat().contains(point)) {
      return Undetermined.Reason.TOO_FLAT;
    }
    long leading =
        ties.placing(scene, point).stream().filter(tie -> scene.covers(tie, point)).count();
    if (leading > 0) {
      return leading == 1 ? Undetermined.Reason.ONE_TIE_ONLY : Undetermined.Reason.TOO_FLAT;
    }
    return ties.all(Sighting.Gnss.class).anyMatch(fix -> fix.point().equals(point))
        ? Undetermined.Reason.FIX_NOT_TIED
        : Undetermined.Reason.NOT_REACHED;
  }

  /** Why there is nothing to adjust at all. */
  Unadjustable.Reason reason() {
    return placement.mirrors().isEmpty()
        ? Unadjustable.Reason.POINT_NOT_REACHED
        : Unadjustable.Reason.MIRROR_UNRESOLVED;
  }
}
