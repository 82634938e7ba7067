package daylight.line.fall;

import daylight.line.book.Place;
import daylight.line.course.Line;
import daylight.line.course.Profile;
import daylight.line.measure.Filled;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hipparchus.exception.MathIllegalArgumentException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * Where water stands by the grade: profiles are drawn from the joint covariance of the invert, and
 * each is filled to its lowest lip downstream. No formula gives that probability, for the lip is
 * the highest of many places that err together.
 */
public final class Ponder {
  /** So much of one place's own, as a variance, keeps rounding out of the root, square metres. */
  private static final double ROUNDING = 1e-8;

  /** As a share of the greatest variance. */
  private static final double LEAST_ROUNDING = 1e-12;

  private static final double MORE = 100;

  private static final double LIKELIER_THAN_NOT = 0.5;

  /** What is likelier than this is not ruled out. */
  private static final double OPEN = 0.05;

  private static final double LOW = 0.025;
  private static final double MIDDLE = 0.5;
  private static final double HIGH = 0.975;

  private final Catchment catchment;
  private final Draws draws;
  private final double[][] deep;
  private final int[][] lips;
  private final List<Ponding.Spot> spots = new ArrayList<>();

  private Ponder(Catchment catchment, Profile profile, Draws draws) {
    this.catchment = catchment;
    this.draws = draws;
    int n = catchment.size();
    deep = new double[draws.count()][n];
    lips = new int[draws.count()][n];
    RealMatrix root = root(profile);
    Draws.Stream stream = new Draws.Stream(draws);
    double[] normal = new double[n];
    double[] up = new double[n];
    for (int draw = 0; draw < draws.count(); draw++) {
      for (int i = 0; i < n; i++) {
        normal[i] = stream.normal();
      }
      double[] off = root.operate(normal);
      for (int i = 0; i < n; i++) {
        up[i] = profile.up(i) + off[i];
      }
      catchment.fill(up, deep[draw], lips[draw]);
    }
  }

  /**
   * What rounding takes from a covariance grows with its greatest variance, which in a book that
   * contradicts itself may be vast: as much is given back as is needed.
   */
  private static RealMatrix root(Profile profile) {
    double greatest = 0;
    for (int i = 0; i < profile.places().size(); i++) {
      greatest = Math.max(greatest, profile.covariance(i, i));
    }
    for (double share = LEAST_ROUNDING; share < 1; share *= MORE) {
      Optional<RealMatrix> root = root(profile, ROUNDING + share * greatest);
      if (root.isPresent()) {
        return root.get();
      }
    }
    throw new IllegalStateException("a covariance with its own diagonal again is no covariance");
  }

  private static Optional<RealMatrix> root(Profile profile, double rounding) {
    int n = profile.places().size();
    RealMatrix covariance = new Array2DRowRealMatrix(n, n);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double both = profile.covariance(i, j) + (i == j ? rounding : 0);
        covariance.setEntry(i, j, both);
        covariance.setEntry(j, i, both);
      }
    }
    try {
      return Optional.of(new CholeskyDecomposition(covariance).getL());
    } catch (MathIllegalArgumentException notPositive) {
      return Optional.empty();
    }
  }

  /** Of every line whose heights are known and whose water is known to run one way. */
  public static Ponding of(Line line, Draws draws) {
    return of(line, draws, line::profile);
  }

  /** The same as if no still water had been seen. */
  static Ponding dry(Line line, Draws draws) {
    return of(line, draws, line::dryProfile);
  }

  private static Ponding of(
      Line line, Draws draws, Function<List<Place>, Optional<Profile>> profiles) {
    List<Ponding.Spot> spots = new ArrayList<>();
    List<Ponding.Pool> pools = new ArrayList<>();
    List<Ponding.Open> open = new ArrayList<>();
    for (Catchment catchment : Catchment.of(line)) {
      profiles
          .apply(catchment.places())
          .map(profile -> new Ponder(catchment, profile, draws))
          .ifPresent(one -> one.tell(spots, pools, open));
    }
    return new Ponding(spots, pools, open, draws);
  }

  private void tell(List<Ponding.Spot> into, List<Ponding.Pool> pools, List<Ponding.Open> open) {
    double[] depths = new double[draws.count()];
    for (int i = 0; i < catchment.size(); i++) {
      int deeper = 0;
      for (int draw = 0; draw < depths.length; draw++) {
        depths[draw] = deep[draw][i];
        deeper += depths[draw] > Ponding.FILM ? 1 : 0;
      }
      spots.add(
          new Ponding.Spot(
              catchment.places().get(i), (double) deeper / depths.length, range(depths)));
    }
    into.addAll(spots);
    int begun = 0;
    for (int i = 1; i <= spots.size(); i++) {
      if (i == spots.size() || !together(i - 1, i)) {
        stretch(begun, i, pools, open);
        begun = i;
      }
    }
  }

  /** Whether two places follow each other on a reach and have the same said of them. */
  private boolean together(int a, int b) {
    return spots.get(a).place().reach().equals(spots.get(b).place().reach())
        && sort(spots.get(a)) == sort(spots.get(b));
  }

  /** 0 for dry, 1 for open, 2 for water. */
  private static int sort(Ponding.Spot spot) {
    if (spot.deeper() >= LIKELIER_THAN_NOT) {
      return 2;
    }
    return spot.deeper() > OPEN ? 1 : 0;
  }

  /** Tells places from one up to another, which run against the water. */
  private void stretch(int from, int to, List<Ponding.Pool> pools, List<Ponding.Open> open) {
    Place upstream = spots.get(to - 1).place();
    Place downstream = spots.get(from).place();
    switch (sort(spots.get(from))) {
      case 2 -> pools.add(pool(from, to, upstream, downstream));
      case 1 -> {
        double most =
            spots.subList(from, to).stream().mapToDouble(Ponding.Spot::deeper).max().orElse(0);
        open.add(new Ponding.Open(upstream, downstream, most));
      }
      default -> {}
    }
  }

  private Ponding.Pool pool(int from, int to, Place upstream, Place downstream) {
    double[] depths = new double[draws.count()];
    double[] volumes = new double[draws.count()];
    int[] held = new int[catchment.size()];
    Double bore = catchment.bore(from);
    int wet = 0;
    for (int draw = 0; draw < depths.length; draw++) {
      int deepest = from;
      for (int i = from; i < to; i++) {
        deepest = deep[draw][i] > deep[draw][deepest] ? i : deepest;
        volumes[draw] +=
            bore == null ? 0 : catchment.length(i) * Filled.upTo(bore, deep[draw][i]).area();
      }
      depths[draw] = deep[draw][deepest];
      if (depths[draw] > Ponding.FILM) {
        wet++;
        held[lips[draw][deepest]]++;
      }
    }
    int lip = 0;
    for (int i = 1; i < held.length; i++) {
      lip = held[i] > held[lip] ? i : lip;
    }
    return new Ponding.Pool(
        upstream,
        downstream,
        (double) wet / depths.length,
        range(depths),
        bore == null ? null : range(volumes),
        catchment.places().get(lip));
  }

  private static Ponding.Range range(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return new Ponding.Range(share(sorted, LOW), share(sorted, MIDDLE), share(sorted, HIGH));
  }

  private static double share(double[] sorted, double share) {
    return sorted[(int) Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
  }
}
