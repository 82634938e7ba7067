package daylight.report.cut;

import daylight.line.book.Place;
import daylight.line.course.Route;
import daylight.line.survey.PlanPoint;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/** The door: cuts the ways of a site into parts that a sheet holds. */
public final class Cutter {
  /** So much of the pipe beyond a match is on both parts, metres; common practice, no source. */
  public static final double OVERLAP = 5;

  /** So much more of the pipe a sheet has to hold to be turned along it. */
  private static final double WORTH_TURNING = 1.2;

  /** How finely a sheet along the pipe is tried, metres. */
  private static final double TRY = 2;

  private final Ground ground;
  private final Lie lie;
  private final double unit;
  private final List<PlanPoint> beside;
  private final List<Part> parts = new ArrayList<>();
  private boolean torn;

  private Cutter(Ground ground, Lie lie, double unit, List<PlanPoint> beside) {
    this.ground = ground;
    this.lie = lie;
    this.unit = unit;
    this.beside = beside;
  }

  /** How far a sheet that begins somewhere can reach, and which way up. */
  private record Reach(double to, double up) {}

  /**
   * The parts: along the ways one after the other, then those that hold what lies beside them. None
   * where neighbouring points of a pipe lie farther apart than a sheet holds, as they do when a
   * tape was mistyped: no sheet would show what lies between.
   *
   * @param routes the main one first; what of another lies on parts made before is not cut again
   * @param beside everything else that must lie on some part
   * @param unit matches are at whole numbers of it where they can be, metres
   */
  public static List<Part> cut(
      List<Route> routes, List<PlanPoint> beside, Ground ground, Lie lie, double unit) {
    Cutter cutter = new Cutter(ground, lie, unit, beside);
    routes.stream().map(Way::of).filter(way -> !way.isEmpty()).forEach(cutter::along);
    if (cutter.torn) {
      return List.of();
    }
    cutter.rest();
    return List.copyOf(cutter.parts);
  }

  private void along(Way way) {
    double end = way.end();
    int joined = 0;
    for (Part part : parts) {
      double from = heldFrom(way, part);
      if (from < end) {
        end = from;
        joined = part.number();
      }
    }
    if (joined > 0 && end <= way.start()) {
      return;
    }
    double from = way.start();
    boolean onward = false;
    while (from < end || parts.isEmpty()) {
      Reach reach = reach(way, from, end);
      double next = Math.min(end, way.after(from));
      if (reach.to() < next) {
        torn |= way.isFoundAt((from + next) / 2);
        // Of what lies between nobody knows where it runs: the next sheet begins where it is known.
        onward = false;
        from = next;
        continue;
      }
      double to = reach.to() >= end ? end : shared(way, from, end, reach.to());
      add(way, from, to, reach(way, from, to).up());
      if (onward) {
        match(way.place(from), parts.size() - 1, parts.size());
      }
      if (to <= from) {
        break;
      }
      onward = true;
      from = to;
    }
    if (joined > 0) {
      match(way.place(end), joined, parts.size());
    }
  }

  /** From which distance on a part that is there already holds all the rest of a way. */
  private double heldFrom(Way way, Part part) {
    double from = Double.POSITIVE_INFINITY;
    for (Way.Mark mark : way.marks().reversed()) {
      if (!holds(part, mark.spot())) {
        break;
      }
      from = mark.distance();
    }
    if (from <= way.start() || Double.isInfinite(from)) {
      return from;
    }
    double round = StrictMath.ceil(from / unit) * unit;
    return round < way.end() && way.isFoundAt(round) ? round : from;
  }

  /** No further than it can reach, at a round distance, and so that the rest is shared evenly. */
  private double shared(Way way, double from, double end, double most) {
    int sheets = count(way, from, end);
    double even = round(way, from, from + (end - from) / sheets + unit);
    boolean enough = even < most && count(way, even, end) < sheets;
    return enough ? even : round(way, from, most);
  }

  private int count(Way way, double start, double end) {
    int sheets = 0;
    double from = start;
    while (from < end) {
      double to = reach(way, from, end).to();
      double next = Math.min(end, way.after(from));
      if (to < next) {
        from = next;
        continue;
      }
      sheets++;
      from = to >= end ? end : round(way, from, to);
    }
    return sheets;
  }

  /** The round distance before one, where that is further on and there is a pipe. */
  private double round(Way way, double from, double to) {
    double round = StrictMath.floor(to / unit) * unit;
    if (round > from && way.isFoundAt(round)) {
      return round;
    }
    return way.marks().stream()
        .mapToDouble(Way.Mark::distance)
        .filter(distance -> distance <= to && distance > from)
        .max()
        .orElse(to);
  }

  private Reach reach(Way way, double from, double end) {
    Reach best = new Reach(from, 0);
    for (double up : lie.upright()) {
      double to = upright(way, from, end, up);
      best = to > best.to() ? new Reach(to, up) : best;
    }
    if (lie == Lie.NORTH_UP || best.to() >= end) {
      return best;
    }
    Reach lying = lying(way, from, end);
    boolean worth = lying.to() - from >= WORTH_TURNING * (best.to() - from);
    return worth ? lying : best;
  }

  private double upright(Way way, double from, double end, double up) {
    List<PlanPoint> before = way.between(from - OVERLAP, from);
    Extent extent = before.isEmpty() ? null : Extent.of(before, up);
    for (Way.Mark mark : way.marks()) {
      if (mark.distance() < from) {
        continue;
      }
      extent = extent == null ? Extent.of(List.of(mark.spot()), up) : extent.with(mark.spot());
      if (!ground.holds(extent)) {
        return Math.max(from, mark.distance() - OVERLAP - 1);
      }
    }
    return end;
  }

  private Reach lying(Way way, double from, double end) {
    Reach best = new Reach(from, Lie.lying(way.between(from - OVERLAP, from + OVERLAP)));
    for (double to = Math.min(end, from + TRY); ; to = Math.min(end, to + TRY)) {
      List<PlanPoint> points = way.between(from - OVERLAP, to + OVERLAP);
      double up = Lie.lying(points);
      if (!ground.holds(Extent.of(points, up))) {
        return best;
      }
      best = new Reach(to, up);
      if (to >= end) {
        return best;
      }
    }
  }

  private void add(Way way, double from, double to, double up) {
    Extent extent = Extent.of(way.between(from - OVERLAP, to + OVERLAP), up);
    add(withMore(extent), way.place(from), way.place(to));
  }

  private void add(Extent extent, @Nullable Place from, @Nullable Place to) {
    parts.add(new Part(parts.size() + 1, extent.up(), extent.middle(), from, to, List.of()));
  }

  /** With as much of what lies beside it as there is room for, the nearest first. */
  private Extent withMore(Extent own) {
    Extent extent = own;
    List<PlanPoint> near = beside.stream().sorted(Comparator.comparingDouble(own::away)).toList();
    for (PlanPoint point : near) {
      Extent more = extent.with(point);
      extent = ground.holds(more) ? more : extent;
    }
    return extent;
  }

  private void match(Place place, int one, int other) {
    parts.set(one - 1, parts.get(one - 1).matching(new Part.Match(place, other)));
    parts.set(other - 1, parts.get(other - 1).matching(new Part.Match(place, one)));
  }

  /** What lies on no part yet gets some of its own, north up. */
  private void rest() {
    List<PlanPoint> left = new ArrayList<>(beside);
    left.removeIf(point -> holding(point).isPresent());
    while (!left.isEmpty()) {
      Extent first = Extent.of(List.of(left.getFirst()), 0);
      Extent extent = first;
      List<PlanPoint> near = left.stream().sorted(Comparator.comparingDouble(first::away)).toList();
      for (PlanPoint point : near) {
        Extent more = extent.with(point);
        extent = ground.holds(more) ? more : extent;
      }
      add(withMore(extent), null, null);
      left.removeIf(point -> holds(parts.getLast(), point));
    }
  }

  private OptionalInt holding(PlanPoint point) {
    return parts.stream().filter(part -> holds(part, point)).mapToInt(Part::number).findFirst();
  }

  private boolean holds(Part part, PlanPoint point) {
    PlanPoint seen = part.seen(point);
    double slack = 1e-6;
    return Math.abs(seen.x()) <= ground.width() / 2 + slack
        && Math.abs(seen.y()) <= ground.height() / 2 + slack;
  }
}
