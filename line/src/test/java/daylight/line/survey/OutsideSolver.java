package daylight.line.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/**
 * A general-purpose solver beside our own: Hipparchus's Levenberg–Marquardt, with derivatives by
 * differences, the models written down anew and the weight matrix inverted by Hipparchus.
 */
final class OutsideSolver {
  private static final double STEP = 1e-4;

  private final List<ToDoubleFunction<double[]>> misfits = new ArrayList<>();
  private final List<double[][]> covariances = new ArrayList<>();

  /** A reading: model minus reading as a function of the unknowns. */
  OutsideSolver with(double sd, ToDoubleFunction<double[]> misfit) {
    return with(new double[][] {{sd * sd}}, List.of(misfit));
  }

  /** Readings that err together. */
  OutsideSolver with(double[][] covariance, List<ToDoubleFunction<double[]>> together) {
    misfits.addAll(together);
    covariances.add(covariance);
    return this;
  }

  /** The unknowns and their covariance. */
  record Solved(RealVector at, RealMatrix covariance) {
    double sd(int unknown) {
      return Math.sqrt(covariance.getEntry(unknown, unknown));
    }
  }

  Solved from(double... start) {
    int count = misfits.size();
    RealMatrix joint = new Array2DRowRealMatrix(count, count);
    int next = 0;
    for (double[][] block : covariances) {
      joint.setSubMatrix(block, next, next);
      next += block.length;
    }
    RealMatrix weight = MatrixUtils.inverse(joint);
    RealMatrix root = new CholeskyDecomposition(weight, 1e-9, 1e-12).getLT();
    LeastSquaresOptimizer.Optimum best =
        new LevenbergMarquardtOptimizer()
            .withCostRelativeTolerance(1e-14)
            .withParameterRelativeTolerance(1e-14)
            .optimize(
                new LeastSquaresBuilder()
                    .start(start)
                    .target(new double[count])
                    .maxEvaluations(1000)
                    .maxIterations(1000)
                    .model(
                        point -> {
                          RealVector at = root.operate(values(point.toArray()));
                          return new Pair<>(at, root.multiply(derivatives(point.toArray())));
                        })
                    .build());
    return new Solved(best.getPoint(), best.getCovariances(1e-14));
  }

  private RealVector values(double[] point) {
    double[] values = new double[misfits.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = misfits.get(i).applyAsDouble(point);
    }
    return new ArrayRealVector(values);
  }

  private RealMatrix derivatives(double[] point) {
    RealMatrix derivatives = new Array2DRowRealMatrix(misfits.size(), point.length);
    for (int k = 0; k < point.length; k++) {
      double[] up = point.clone();
      double[] down = point.clone();
      up[k] += STEP;
      down[k] -= STEP;
      derivatives.setColumnVector(k, values(up).subtract(values(down)).mapDivide(2 * STEP));
    }
    return derivatives;
  }
}
