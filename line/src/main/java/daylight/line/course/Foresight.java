package daylight.line.course;

import daylight.line.book.Level;
import daylight.line.book.Place;
import daylight.line.book.Priors;
import daylight.line.book.Visit;
import daylight.line.measure.Measured;
import daylight.line.normal.Gradient;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * What one more measurement would make of a figure, before it is made.
 *
 * <p>With the covariance C of the unknowns, the gradient f of the figure and the gradients a of
 * what would be observed with the errors R, the variance fᵀCf lessens by cᵀ(R + A)⁻¹c, where c =
 * aᵀCf and A = aᵀCa (the update of a linear estimate; Kalman, <em>A new approach to linear
 * filtering and prediction problems</em>, 1960, from memory). What would be read does not matter,
 * only how well.
 */
final class Foresight {
  /** How well a spot is usually tied, metres; common practice, no source. */
  private static final double TIED = 0.04;

  private final Solved line;

  private record Observed(Gradient gradient, double sd) {}

  Foresight(Solved line) {
    this.line = line;
  }

  /**
   * The figure with the uncertainty that it would have; empty where it or the place is not known.
   */
  Optional<Measured> after(Wanted wanted, Extra extra) {
    Optional<Figure> figure = figure(wanted);
    List<Observed> observed = observed(extra);
    if (figure.isEmpty() || observed.isEmpty()) {
      return Optional.empty();
    }
    Figure now = figure.get();
    int n = observed.size();
    double[] follows = line.fit().factor().follows(now.gradient());
    RealMatrix errors = new Array2DRowRealMatrix(n, n);
    double[] together = new double[n];
    for (int i = 0; i < n; i++) {
      Observed a = observed.get(i);
      together[i] = a.gradient().dot(follows);
      for (int j = 0; j <= i; j++) {
        double c = line.fit().covariance().of(a.gradient(), observed.get(j).gradient());
        errors.setEntry(i, j, c + (i == j ? a.sd() * a.sd() : 0));
        errors.setEntry(j, i, errors.getEntry(i, j));
      }
    }
    double[] weights =
        new CholeskyDecomposition(errors)
            .getSolver()
            .solve(new ArrayRealVector(together))
            .toArray();
    double variance = line.measured(now).sd() * line.measured(now).sd();
    for (int i = 0; i < n; i++) {
      variance -= weights[i] * together[i];
    }
    return Optional.of(new Measured(now.value(), Math.sqrt(Math.max(now.loose(), variance))));
  }

  /** The figure as it is known now; empty where it is not. */
  Optional<Measured> now(Wanted wanted) {
    return figure(wanted).map(line::measured);
  }

  private Optional<Figure> figure(Wanted wanted) {
    return switch (wanted) {
      case Wanted.Across(Place place) -> Optional.of(across(place));
      case Wanted.Depth(Place place) ->
          line.hasHeights() && line.hasGround()
              ? Optional.of(line.here(place).depth())
              : Optional.empty();
      case Wanted.Fall(Place from, Place to) ->
          line.hasHeights()
              ? Optional.of(line.here(from).invert().less(line.here(to).invert()))
              : Optional.empty();
    };
  }

  private Figure across(Place place) {
    double right = line.here(place).bearing() + Math.PI / 2;
    Figure[] plan = line.here(place).plan();
    Gradient gradient = new Gradient();
    gradient.add(plan[0].gradient(), StrictMath.sin(right));
    gradient.add(plan[1].gradient(), StrictMath.cos(right));
    return Figure.of(0, gradient);
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
