package daylight.bench;

import daylight.line.normal.Covariance;
import daylight.line.normal.Factor;
import daylight.line.normal.Gradient;
import daylight.line.normal.Normal;
import daylight.line.normal.Pattern;
import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * One step of the adjustment with the covariance of every knot: by blocks for 400 and 10 000 knots,
 * and with the matrix written out in full for 400, which is the yardstick.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class NormalBench {
  private static final int OF_KNOT = 7;
  private static final int SHARED = 12;
  private static final int FEW = 400;
  private static final int MANY = 10_000;

  private Normal few = new Normal(new Pattern(0, new int[0], new int[0]));
  private Normal many = few;
  private Normal twice = few;
  private DMatrixRMaj full = new DMatrixRMaj(0, 0);

  /** Makes the equations of a pipe. */
  @Setup
  public void make() {
    full = new DMatrixRMaj(SHARED + OF_KNOT * FEW, SHARED + OF_KNOT * FEW);
    few = pipe(FEW, full);
    many = pipe(MANY, null);
    twice = pipe(2 * MANY, null);
  }

  private static Normal pipe(int knots, @org.jspecify.annotations.Nullable DMatrixRMaj into) {
    int[] parents = new int[knots];
    Arrays.setAll(parents, i -> i - 1);
    int[] sizes = new int[knots];
    Arrays.fill(sizes, OF_KNOT);
    Pattern pattern = new Pattern(SHARED, parents, sizes);
    Normal normal = new Normal(pattern);
    for (int shared = 0; shared < SHARED; shared++) {
      Gradient gradient = new Gradient();
      gradient.add(shared, 1);
      add(normal, into, gradient, 1);
    }
    for (int knot = 0; knot < knots; knot++) {
      for (int k = 0; k < OF_KNOT; k++) {
        Gradient gradient = new Gradient();
        gradient.add(pattern.first(knot) + k, 1);
        if (knot > 0) {
          gradient.add(pattern.first(knot - 1) + k, -1);
          gradient.add(pattern.first(knot - 1) + (k + 1) % OF_KNOT, 0.1);
        }
        add(normal, into, gradient, 0.1);
        if (knot % 10 == 0) {
          Gradient observed = new Gradient();
          observed.add(pattern.first(knot) + k, 1);
          observed.add(k, 0.3);
          observed.add(k + 5, 0.01 * (knot % 37));
          add(normal, into, observed, 0.2);
        }
      }
    }
    return normal;
  }

  private static void add(
      Normal normal,
      @org.jspecify.annotations.Nullable DMatrixRMaj into,
      Gradient gradient,
      double sd) {
    normal.observe(gradient, 0.01, sd);
    for (int i = 0; into != null && i < gradient.count(); i++) {
      for (int j = 0; j < gradient.count(); j++) {
        into.add(
            gradient.unknown(i),
            gradient.unknown(j),
            gradient.value(i) * gradient.value(j) / (sd * sd));
      }
    }
  }

  private static Covariance solved(Normal normal) {
    Factor factor = normal.factor(0).orElseThrow();
    normal.step(factor);
    return factor.covariance();
  }

  /** By blocks, 400 knots. */
  @Benchmark
  public Covariance blocks400() {
    return solved(few);
  }

  /** By blocks, 10 000 knots. */
  @Benchmark
  public Covariance blocks10000() {
    return solved(many);
  }

  /** By blocks, 20 000 knots. */
  @Benchmark
  public Covariance blocks20000() {
    return solved(twice);
  }

  /** The yardstick: the same 400 knots as one dense matrix. */
  @Benchmark
  public DMatrixRMaj dense400() {
    LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.chol(full.numRows);
    if (!solver.setA(full.copy())) {
      throw new IllegalStateException("not positive definite");
    }
    DMatrixRMaj inverse = new DMatrixRMaj(full.numRows, full.numRows);
    solver.invert(inverse);
    return inverse;
  }
}
