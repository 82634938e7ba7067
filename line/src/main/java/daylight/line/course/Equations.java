package daylight.line.course;

import daylight.line.book.Priors;
import daylight.line.normal.Gradient;
import daylight.line.normal.Normal;
import daylight.line.normal.Pattern;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Observation equations of a line at one vector of unknowns: what was observed less what the model
 * says, with derivatives and uncertainty, each with the entries or priors that its error comes
 * from.
 */
final class Equations {
  private final Pattern pattern;
  private final List<Row> rows = new ArrayList<>();
  private final List<Block> blocks = new ArrayList<>();

  /**
   * One observation or assumption: observed less modelled.
   *
   * @param origin what its error comes from
   * @param about what it speaks of, where a test wants to know
   * @param block whose apportioning books its variance; null when it is booked under its origin
   */
  record Row(
      Origin origin,
      Gradient gradient,
      double misfit,
      double sd,
      @Nullable About about,
      @Nullable Block block) {}

  /** What a row speaks of. */
  sealed interface About {
    /** Where a mark lies in plan; the two rows of one mark follow each other. */
    record SpotOf(Pinned pin) implements About {}

    /** How deep a mark lies. */
    record DepthOf(Pinned pin) implements About {}

    /** How the pipe turns in plan on the way to a knot. */
    record TurnTo(int limb, int knot) implements About {}

    /** How far it is along the pipe to a knot. */
    record WayTo(int limb, int knot) implements About {}
  }

  /** Books the variance of a weighted sum of a block's whitened rows under its sources. */
  interface Apportion {
    void book(List<Double> weights, Ledger ledger);
  }

  /** Rows whose errors come from one survey. */
  record Block(Apportion apportion) {}

  Equations(Pattern pattern) {
    this.pattern = pattern;
  }

  void assume(Origin origin, int unknown, double misfit, double sd) {
    rows.add(new Row(origin, one(unknown), misfit, sd, null, null));
  }

  void assume(Priors.Kind prior, int unknown, double misfit, double sd) {
    assume(Origin.of(prior), unknown, misfit, sd);
  }

  void observe(Origin origin, Gradient gradient, double misfit, double sd) {
    rows.add(new Row(origin, gradient, misfit, sd, null, null));
  }

  void observe(Origin origin, Gradient gradient, double misfit, double sd, About about) {
    rows.add(new Row(origin, gradient, misfit, sd, about, null));
  }

  void suppose(Priors.Kind prior, Gradient gradient, double misfit, double sd) {
    rows.add(new Row(Origin.of(prior), gradient, misfit, sd, null, null));
  }

  void add(Row row) {
    rows.add(row);
  }

  /** A block whose rows are added one by one. */
  void add(Block block) {
    blocks.add(block);
  }

  static Gradient one(int unknown) {
    Gradient gradient = new Gradient();
    gradient.add(unknown, 1);
    return gradient;
  }

  List<Row> rows() {
    return rows;
  }

  /** Weighted sum of squared misfits. */
  double cost() {
    double cost = 0;
    for (Row r : rows) {
      cost += square(r.misfit() / r.sd());
    }
    return cost;
  }

  /** The normal equations. */
  Normal normal() {
    Normal normal = new Normal(pattern);
    for (Row r : rows) {
      normal.observe(r.gradient(), r.misfit(), r.sd());
    }
    return normal;
  }

  /**
   * Which sources the variance of a figure comes from. With the figure's gradient g, the covariance
   * C of the unknowns and an equation with derivative j and weight w, the estimate follows its
   * error by gᵀC·j·w; the squares of those, times its variance, sum to gᵀCg.
   *
   * @param follows C·g
   */
  Ledger ledger(double[] follows) {
    Ledger ledger = new Ledger();
    for (Row r : rows) {
      if (r.block() == null && !r.origin().parts().isEmpty()) {
        ledger.add(r.origin(), square(r.gradient().dot(follows) / r.sd()));
      }
    }
    for (Block block : blocks) {
      List<Double> weights = new ArrayList<>();
      for (Row r : rows) {
        if (block.equals(r.block())) {
          weights.add(r.gradient().dot(follows) / r.sd());
        }
      }
      block.apportion().book(weights, ledger);
    }
    return ledger;
  }

  private static double square(double v) {
    return v * v;
  }
}
