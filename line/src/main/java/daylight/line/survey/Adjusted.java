package daylight.line.survey;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Adjusted positions with their full joint covariance, relative to the datum of the network. The
 * covariance takes the standard deviations of the readings at face value. Immutable.
 */
public final class Adjusted implements Adjustment {
  private final SortedMap<String, PlanPoint> points;
  private final Map<String, Slots> slots;
  private final Solution solution;
  private final List<Undetermined> undetermined;
  private final List<String> contradicted;
  private final Optional<SiteTie> siteTie;

  /** Where the coordinates of a point stand among the unknowns; −1 for a held coordinate. */
  record Slots(int x, int y) {}

  Adjusted(
      SortedMap<String, PlanPoint> points,
      Map<String, Slots> slots,
      Solution solution,
      List<Undetermined> undetermined,
      List<String> contradicted,
      Optional<SiteTie> siteTie) {
    this.points = Collections.unmodifiableSortedMap(new TreeMap<>(points));
    this.slots = Map.copyOf(slots);
    this.solution = solution;
    this.undetermined = List.copyOf(undetermined);
    this.contradicted = List.copyOf(contradicted);
    this.siteTie = siteTie;
  }

  /** Every determined point, control points included, in order of label. */
  public SortedMap<String, PlanPoint> points() {
    return points;
  }

  /**
   * The position of a point.
   *
   * @throws IllegalArgumentException if the point is not among {@link #points}
   */
  public PlanPoint point(String label) {
    PlanPoint point = points.get(label);
    if (point == null) {
      throw new IllegalArgumentException(
          "point must be one of " + points.keySet() + ", was " + label);
    }
    return point;
  }

  /** The covariance of one position with another or with itself; zero for control points. */
  public Covariance2 covariance(String a, String b) {
    Slots p = slots(a);
    Slots q = slots(b);
    return new Covariance2(
        solution.covariance(p.x, q.x),
        solution.covariance(p.x, q.y),
        solution.covariance(p.y, q.x),
        solution.covariance(p.y, q.y));
  }

  /** The covariance of the vector from one point to another: free of the datum's own placing. */
  public Covariance2 relativeCovariance(String from, String to) {
    Covariance2 a = covariance(from, from);
    Covariance2 b = covariance(to, to);
    Covariance2 ab = covariance(from, to);
    return new Covariance2(
        a.xx() + b.xx() - 2 * ab.xx(),
        a.xy() + b.xy() - ab.xy() - ab.yx(),
        a.yx() + b.yx() - ab.xy() - ab.yx(),
        a.yy() + b.yy() - 2 * ab.yy());
  }

  /** The region that holds the point with the given probability, between 0 and 1. */
  public ErrorEllipse ellipse(String point, double probability) {
    return ErrorEllipse.of(covariance(point, point), probability);
  }

  /** Residuals, redundancy and suspects. */
  public Fit fit() {
    return solution.fit();
  }

  /** Which entries the variance of a linear function of coordinates comes from. */
  public Shares sharesOf(List<CoordinateWeight> weights) {
    double[] byUnknown = new double[solution.unknowns()];
    for (CoordinateWeight weight : weights) {
      Slots at = slots(weight.point());
      if (at.x >= 0) {
        byUnknown[at.x] += weight.wx();
      }
      if (at.y >= 0) {
        byUnknown[at.y] += weight.wy();
      }
    }
    return solution.shares(byUnknown);
  }

  /** The points that could not be determined, in order of label. */
  public List<Undetermined> undetermined() {
    return undetermined;
  }

  /** Entries of side hints that the adjusted positions contradict, in order. */
  public List<String> contradictedSides() {
    return contradicted;
  }

  /** How the grid lies on the earth; empty when satellite fixes do not tie it. */
  public Optional<SiteTie> siteTie() {
    return siteTie;
  }

  private Slots slots(String label) {
    point(label);
    return slots.getOrDefault(label, new Slots(-1, -1));
  }
}
