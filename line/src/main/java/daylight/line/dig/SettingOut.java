package daylight.line.dig;

import daylight.line.book.Landmark;
import daylight.line.book.Priors;
import daylight.line.book.Site;
import daylight.line.course.Line;
import daylight.line.measure.Measured;
import daylight.line.survey.Adjusted;
import daylight.line.survey.Covariance2;
import daylight.line.survey.ErrorEllipse;
import daylight.line.survey.PlanPoint;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds the landmarks from which a spot is found again best: of every two, those whose tapes lead
 * nearest to the pipe.
 */
final class SettingOut {
  /** Tapes that meet flatter than this, or straighter than its complement, find nothing well. */
  private static final double FLATTEST = StrictMath.toRadians(30);

  /** Of tapes that lead within this much of the best, the shortest are laid; common practice. */
  private static final double AS_GOOD = 1.05;

  /** Nearer than this a landmark gives no direction, metres. */
  private static final double NEAREST = 0.3;

  private final Priors priors;
  private final DigLimits limits;
  private final Here here;
  private final @Nullable Adjusted plan;
  private final List<Post> posts = new ArrayList<>();

  /** A landmark, the way to the spot, and the covariance of that vector. */
  private record Post(String label, PlanPoint at, Vector way, Covariance2 spread) {
    double distance() {
      return way.length();
    }

    Measured length() {
      double variance = way.unit().variance(spread);
      return new Measured(distance(), Math.sqrt(Math.max(variance, 1e-12)));
    }
  }

  SettingOut(Line line, Site site, Priors priors, DigLimits limits, Here here) {
    this.priors = priors;
    this.limits = limits;
    this.here = here;
    plan = line.survey() instanceof Adjusted adjusted ? adjusted : null;
    if (plan != null) {
      for (Landmark landmark : site.landmarks()) {
        PlanPoint at = plan.points().get(landmark.label());
        if (at != null) {
          posts.add(
              new Post(
                  landmark.label(),
                  at,
                  Vector.between(at, here.spot()),
                  here.from(line, landmark.label())));
        }
      }
      posts.sort(Comparator.comparing(Post::label));
    }
  }

  /** The two best; those within reach of the tape before all others. */
  @Nullable TapeTies ties() {
    TapeTies near = best(limits.longestTape());
    return near != null ? near : best(Double.POSITIVE_INFINITY);
  }

  private @Nullable TapeTies best(double longest) {
    List<TapeTies> all = new ArrayList<>();
    for (int i = 0; i < posts.size(); i++) {
      for (int j = i + 1; j < posts.size(); j++) {
        TapeTies ties = ties(posts.get(i), posts.get(j), longest);
        if (ties != null) {
          all.add(ties);
        }
      }
    }
    double least = all.stream().mapToDouble(SettingOut::off).min().orElse(0);
    return all.stream()
        .filter(ties -> off(ties) <= AS_GOOD * least)
        .min(Comparator.comparingDouble(SettingOut::taped))
        .orElse(null);
  }

  private static double off(TapeTies ties) {
    return ErrorEllipse.of(ties.spread(), 0.95).semiMajor();
  }

  private static double taped(TapeTies ties) {
    return ties.first().length().value() + ties.second().length().value();
  }

  private @Nullable TapeTies ties(Post a, Post b, double longest) {
    if (outside(a, longest) || outside(b, longest)) {
      return null;
    }
    Vector u = a.way().unit();
    Vector v = b.way().unit();
    double turn = u.cross(v);
    double meet = Math.abs(StrictMath.atan2(turn, u.dot(v)));
    if (meet < FLATTEST || meet > Math.PI - FLATTEST) {
      return null;
    }
    boolean left = Vector.between(a.at(), b.at()).cross(a.way()) > 0;
    return new TapeTies(
        new TapeTies.Tape(a.label(), a.length()),
        new TapeTies.Tape(b.label(), b.length()),
        meet,
        left,
        spread(a, b, u, v));
  }

  private static boolean outside(Post post, double longest) {
    return post.distance() < NEAREST || post.distance() > longest;
  }

  /**
   * The covariance of where the tapes lead to against where the pipe is. The tapes are off by ε₁ =
   * u·δ₁ and ε₂ = v·δ₂, δ being the error of the vector from either landmark, and by their own
   * laying; where they meet is off by M(ε₁, ε₂), M the inverse of the rows u and v. What δ₁ and δ₂
   * share follows from the landmarks' own: Cov(δ₁, δ₂) + Cov(δ₂, δ₁) = C₁ + C₂ − C₁₂.
   */
  private Covariance2 spread(Post a, Post b, Vector u, Vector v) {
    double first = u.variance(a.spread()) + square(taped(a.distance()));
    double second = v.variance(b.spread()) + square(taped(b.distance()));
    double most = 0.999 * Math.sqrt(first * second);
    double both = Math.clamp(shared(a, b, u, v), -most, most);
    double d = u.cross(v);
    // M = [[v.y, −u.y], [−v.x, u.x]] / d
    double xx = square(v.y()) * first - 2 * v.y() * u.y() * both + square(u.y()) * second;
    double xy =
        -v.y() * v.x() * first + (v.y() * u.x() + u.y() * v.x()) * both - u.y() * u.x() * second;
    double yy = square(v.x()) * first - 2 * v.x() * u.x() * both + square(u.x()) * second;
    return new Covariance2(xx / (d * d), xy / (d * d), xy / (d * d), yy / (d * d));
  }

  private double shared(Post a, Post b, Vector u, Vector v) {
    if (plan == null) {
      return 0;
    }
    Covariance2 between = plan.relativeCovariance(a.label(), b.label());
    return (u.covariance(a.spread(), v) + u.covariance(b.spread(), v) - u.covariance(between, v))
        / 2;
  }

  private double taped(double length) {
    return priors.sd(Priors.Kind.TAPE, length);
  }

  /** From the nearest landmark, sighting the farthest one from it. */
  @Nullable TurnedTie turned() {
    Post from =
        posts.stream()
            .filter(post -> post.distance() >= NEAREST)
            .min(Comparator.comparingDouble(Post::distance))
            .orElse(null);
    if (from == null || plan == null) {
      return null;
    }
    Post toward =
        posts.stream()
            .filter(post -> post.at().distanceTo(from.at()) >= NEAREST)
            .max(Comparator.comparingDouble(post -> post.at().distanceTo(from.at())))
            .orElse(null);
    if (toward == null) {
      return null;
    }
    double base = from.at().bearingTo(toward.at());
    double right = from.at().bearingTo(here.spot()) - base;
    double full = 2 * Math.PI;
    Vector way = from.way().unit();
    double aside = new Vector(way.y(), -way.x()).variance(from.spread());
    Vector sight = Vector.of(base + Math.PI / 2);
    double turned = sight.variance(plan.relativeCovariance(from.label(), toward.label()));
    double sd =
        StrictMath.hypot(
            Math.sqrt(aside) / from.distance(),
            Math.sqrt(turned) / from.at().distanceTo(toward.at()));
    return new TurnedTie(
        from.label(),
        toward.label(),
        new Measured(right - full * Math.floor(right / full), Math.max(sd, 1e-9)),
        from.length());
  }

  private static double square(double v) {
    return v * v;
  }
}
