package daylight.line.course;

import java.util.ArrayList;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * Observation equations of a line at one vector of unknowns: what was observed less what the model
 * says, with derivatives and uncertainty, each under the name of the entry or prior it comes from.
 */
final class Equations {
  private final int unknowns;
  private final List<Simple> simple = new ArrayList<>();
  private final List<Row> rows = new ArrayList<>();
  private final List<Block> blocks = new ArrayList<>();

  /** What is assumed of one unknown: expected less current value, over sd. */
  record Simple(String source, boolean assumed, int unknown, double misfit, double sd) {}

  /** One observation: observed less modelled. */
  @SuppressWarnings("ArrayRecordComponent") // never leaves this room
  record Row(String source, boolean assumed, double[] derivative, double misfit, double sd) {}

  /** Books the variance of a weighted sum of a block's components under its sources. */
  interface Apportion {
    void book(double[] weights, Ledger ledger);
  }

  /** Observations that share errors. */
  @SuppressWarnings("ArrayRecordComponent") // never leaves this room
  record Block(
      double[][] derivatives, double[] misfits, DMatrixRMaj covariance, Apportion apportion) {}

  Equations(int unknowns) {
    this.unknowns = unknowns;
  }

  void assume(String source, int unknown, double misfit, double sd) {
    simple.add(new Simple(source, true, unknown, misfit, sd));
  }

  void state(String source, int unknown, double misfit, double sd) {
    simple.add(new Simple(source, false, unknown, misfit, sd));
  }

  void observe(String source, double[] derivative, double misfit, double sd) {
    rows.add(new Row(source, false, derivative, misfit, sd));
  }

  void suppose(String source, double[] derivative, double misfit, double sd) {
    rows.add(new Row(source, true, derivative, misfit, sd));
  }

  void observe(Block block) {
    if (block.misfits().length > 0) {
      blocks.add(block);
    }
  }

  List<Simple> simple() {
    return List.copyOf(simple);
  }

  List<Row> rows() {
    return List.copyOf(rows);
  }

  List<Block> blocks() {
    return List.copyOf(blocks);
  }

  /** Weighted sum of squared misfits. */
  double cost() {
    double cost = 0;
    for (Simple s : simple) {
      cost += square(s.misfit() / s.sd());
    }
    for (Row r : rows) {
      cost += square(r.misfit() / r.sd());
    }
    for (Block b : blocks) {
      double[] w = weigh(b.covariance(), b.misfits());
      for (int i = 0; i < w.length; i++) {
        cost += w[i] * b.misfits()[i];
      }
    }
    return cost;
  }

  /** The normal matrix. */
  DMatrixRMaj normal() {
    DMatrixRMaj n = new DMatrixRMaj(unknowns, unknowns);
    for (Simple s : simple) {
      n.add(s.unknown(), s.unknown(), 1 / square(s.sd()));
    }
    for (Row r : rows) {
      addOuter(n, r.derivative(), r.derivative(), 1 / square(r.sd()));
    }
    for (Block b : blocks) {
      DMatrixRMaj inverse = inverse(b.covariance());
      for (int i = 0; i < b.misfits().length; i++) {
        double[] weighed = new double[unknowns];
        for (int j = 0; j < b.misfits().length; j++) {
          addScaled(weighed, b.derivatives()[j], inverse.get(i, j));
        }
        addOuter(n, b.derivatives()[i], weighed, 1);
      }
    }
    return n;
  }

  /** The right-hand side of the normal equations. */
  double[] right() {
    double[] right = new double[unknowns];
    for (Simple s : simple) {
      right[s.unknown()] += s.misfit() / square(s.sd());
    }
    for (Row r : rows) {
      addScaled(right, r.derivative(), r.misfit() / square(r.sd()));
    }
    for (Block b : blocks) {
      double[] w = weigh(b.covariance(), b.misfits());
      for (int i = 0; i < w.length; i++) {
        addScaled(right, b.derivatives()[i], w[i]);
      }
    }
    return right;
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
    for (Simple s : simple) {
      ledger.add(s.source(), s.assumed(), square(follows[s.unknown()] / s.sd()));
    }
    for (Row r : rows) {
      ledger.add(r.source(), r.assumed(), square(dot(r.derivative(), follows) / r.sd()));
    }
    for (Block b : blocks) {
      double[] along = new double[b.misfits().length];
      for (int i = 0; i < along.length; i++) {
        along[i] = dot(b.derivatives()[i], follows);
      }
      b.apportion().book(weigh(b.covariance(), along), ledger);
    }
    return ledger;
  }

  private static double[] weigh(DMatrixRMaj covariance, double[] misfits) {
    LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.chol(misfits.length);
    if (!solver.setA(covariance.copy())) {
      throw new IllegalStateException("covariance of a block is not positive definite");
    }
    DMatrixRMaj out = new DMatrixRMaj(misfits.length, 1);
    solver.solve(DMatrixRMaj.wrap(misfits.length, 1, misfits.clone()), out);
    return out.data.clone();
  }

  private static DMatrixRMaj inverse(DMatrixRMaj covariance) {
    DMatrixRMaj inverse = covariance.copy();
    if (!CommonOps_DDRM.invert(inverse)) {
      throw new IllegalStateException("covariance of a block cannot be inverted");
    }
    return inverse;
  }

  private static void addOuter(DMatrixRMaj n, double[] a, double[] b, double weight) {
    for (int i = 0; i < a.length; i++) {
      double wa = weight * a[i];
      if (wa != 0) {
        int row = i * n.numCols;
        for (int j = 0; j < b.length; j++) {
          n.data[row + j] += wa * b[j];
        }
      }
    }
  }

  private static void addScaled(double[] to, double[] row, double by) {
    for (int i = 0; i < to.length; i++) {
      to[i] += by * row[i];
    }
  }

  static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  private static double square(double v) {
    return v * v;
  }
}
