package daylight.line.course;

import daylight.line.book.Level;
import daylight.line.book.Place;
import daylight.line.book.Priors;
import daylight.line.book.Visit;
import daylight.line.measure.Measured;
import daylight.line.normal.Gradient;
import daylight.line.survey.Covariance2;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.jspecify.annotations.Nullable;

/**
 * What one more measurement would make of a figure, before it is made.
 *
 * <p>With the covariance C of the unknowns, the gradient f of the figure and the gradients a of
 * what would be observed with the errors R, the variance fᵀCf lessens by cᵀ(R + A)⁻¹c, where c =
 * aᵀCf and A = aᵀCa (the update of a linear estimate; Kalman, <em>A new approach to linear
 * filtering and prediction problems</em>, 1960, from memory). What would be read does not matter,
 * only how well.
 */
final class Foresight implements Outlook {
  /** How well a spot is usually tied, metres; common practice, no source. */
  private static final double TIED = 0.04;

  private final Solved line;
  private final Map<Extra, Laid> laid = new HashMap<>();
  private @Nullable Asked asked;

  private record Observed(Gradient gradient, double sd) {}

  /**
   * A further measurement, ready to be weighed.
   *
   * @param errors of what would be observed and of what is known of it now, factored; null where it
   *     would tell nothing
   */
  private record Laid(List<Observed> observed, @Nullable CholeskyDecomposition errors) {}

  /** The figure that was asked for last, and how the unknowns follow it. */
  @SuppressWarnings("ArrayRecordComponent") // never leaves this room
  private record Asked(Wanted wanted, Figure figure, Measured now, double[] follows) {}

  Foresight(Solved line) {
    this.line = line;
  }

  @Override
  public Optional<Measured> after(Wanted wanted, Extra extra) {
    Asked now = ask(wanted);
    if (now == null) {
      return Optional.empty();
    }
    Laid more = laid.computeIfAbsent(extra, this::lay);
    CholeskyDecomposition errors = more.errors();
    if (errors == null) {
      return Optional.empty();
    }
    int n = more.observed().size();
    double[] together = new double[n];
    for (int i = 0; i < n; i++) {
      together[i] = more.observed().get(i).gradient().dot(now.follows());
    }
    double[] weights = errors.getSolver().solve(new ArrayRealVector(together)).toArray();
    double variance = now.now().sd() * now.now().sd();
    for (int i = 0; i < n; i++) {
      variance -= weights[i] * together[i];
    }
    return Optional.of(
        new Measured(now.figure().value(), Math.sqrt(Math.max(now.figure().loose(), variance))));
  }

  @Override
  public Optional<Measured> now(Wanted wanted) {
    return figure(wanted).map(line::measured);
  }

  @Override
  public List<Contribution> why(Wanted wanted) {
    Asked now = ask(wanted);
    return now == null ? List.of() : line.ledger(now.figure(), now.follows()).contributions();
  }

  /** All the variance that is booked to anything: as much as the figure has. */
  double booked(Wanted wanted) {
    Asked now = ask(wanted);
    return now == null ? 0 : line.ledger(now.figure(), now.follows()).variance();
  }

  private @Nullable Asked ask(Wanted wanted) {
    Asked last = asked;
    if (last == null || !last.wanted().equals(wanted)) {
      last =
          figure(wanted)
              .map(
                  figure ->
                      new Asked(
                          wanted,
                          figure,
                          line.measured(figure),
                          line.fit().factor().follows(figure.gradient())))
              .orElse(null);
      asked = last;
    }
    return last;
  }

  private Laid lay(Extra extra) {
    List<Observed> observed = observed(extra);
    int n = observed.size();
    if (n == 0) {
      return new Laid(observed, null);
    }
    RealMatrix errors = new Array2DRowRealMatrix(n, n);
    for (int i = 0; i < n; i++) {
      Observed a = observed.get(i);
      for (int j = 0; j <= i; j++) {
        double c = line.fit().covariance().of(a.gradient(), observed.get(j).gradient());
        errors.setEntry(i, j, c + (i == j ? a.sd() * a.sd() : 0));
        errors.setEntry(j, i, errors.getEntry(i, j));
      }
    }
    return new Laid(observed, new CholeskyDecomposition(errors));
  }

  private Optional<Figure> figure(Wanted wanted) {
    return switch (wanted) {
      case Wanted.Across(Place place) -> {
        Here here = line.here(place);
        yield Optional.of(here.toward(here.bearing() + Math.PI / 2));
      }
      case Wanted.Widest(Place place) -> {
        Here here = line.here(place);
        yield Optional.of(here.toward(widest(here.spread())));
      }
      case Wanted.Depth(Place place) ->
          line.hasHeights() && line.hasGround()
              ? Optional.of(line.here(place).depth())
              : Optional.empty();
      case Wanted.Fall(Place from, Place to) ->
          line.hasHeights()
              ? Optional.of(line.here(from).invert().less(line.here(to).invert()))
              : Optional.empty();
      case Wanted.Length(String reach) ->
          Optional.of(line.lengthOf(line.model().layout().tree().indexOf(reach)));
    };
  }

  /** The bearing of the longer axis of an error ellipse. */
  private static double widest(Covariance2 spread) {
    return StrictMath.atan2(spread.xy() + spread.yx(), spread.yy() - spread.xx()) / 2;
  }

  private Figure across(Place place) {
    return line.here(place).toward(line.here(place).bearing() + Math.PI / 2);
  }

  private List<Observed> observed(Extra extra) {
    Priors priors = line.model().priors();
    Place place = extra.place();
    return switch (extra) {
      case Extra.Locate _ -> located(place);
      case Extra.Level _ ->
          line.hasGround() && levelled()
              ? List.of(
                  new Observed(
                      line.here(place).ground().gradient(), priors.sd(Priors.Kind.LEVEL, 0)))
              : List.of();
      case Extra.Probe _ -> {
        List<Observed> list = new ArrayList<>();
        for (Figure axis : line.here(place).plan()) {
          list.add(new Observed(axis.gradient(), TIED));
        }
        if (line.hasHeights() && line.hasGround()) {
          list.add(
              new Observed(
                  line.here(place).depth().gradient(), priors.sd(Priors.Kind.EXPOSURE, 0)));
        }
        yield list;
      }
    };
  }

  /** A levelled height helps only where others are levelled. */
  private boolean levelled() {
    return line.model().marks().stream()
        .anyMatch(mark -> line.model().levelled(mark, Level.Part.GROUND));
  }

  private List<Observed> located(Place place) {
    Priors priors = line.model().priors();
    boolean deep = line.hasHeights() && line.hasGround();
    double depth = deep ? Math.max(0.1, line.here(place).depth().value()) : 1;
    double spot = StrictMath.hypot(TIED, priors.sd(Priors.Kind.LOCATE_SPOT, depth));
    double along = StrictMath.hypot(spot, priors.sd(Priors.Kind.COUNTER_READING, 0));
    double bearing = line.here(place).bearing();
    Figure[] plan = line.here(place).plan();
    Gradient ahead = new Gradient();
    ahead.add(plan[0].gradient(), StrictMath.sin(bearing));
    ahead.add(plan[1].gradient(), StrictMath.cos(bearing));
    List<Observed> list = new ArrayList<>();
    list.add(new Observed(across(place).gradient(), spot));
    list.add(new Observed(ahead, along));
    if (deep) {
      list.add(read(place, depth));
    }
    return list;
  }

  /** A depth read with the receiver of the last visit, if that one read depths. */
  private Observed read(Place place, double depth) {
    Priors priors = line.model().priors();
    Gradient gradient = new Gradient();
    gradient.add(line.here(place).depth().gradient());
    double own = priors.sd(Priors.Kind.DEPTH_READING, depth);
    double bent = priors.sd(Priors.Kind.DEPTH_DISTORTION, depth);
    gradient.add(line.here(place).bent(), bent);
    String visit = "";
    for (Visit each : line.model().visits()) {
      for (Mark mark : line.model().marks()) {
        if (mark.visit().equals(each.label())
            && mark.depth() instanceof Mark.DepthRead.ByReceiver) {
          visit = each.label();
        }
      }
    }
    if (visit.isEmpty()) {
      double scale = priors.sd(Priors.Kind.RECEIVER_SCALE, 0) * depth;
      return new Observed(gradient, StrictMath.hypot(own, scale));
    }
    gradient.add(line.model().layout().named("receiver/" + visit), depth);
    gradient.add(line.model().layout().named("above/" + visit), -1);
    return new Observed(gradient, own);
  }
}
