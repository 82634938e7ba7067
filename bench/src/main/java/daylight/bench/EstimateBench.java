package daylight.bench;

import daylight.app.Job;
import daylight.archive.Bundled;
import daylight.archive.FieldBookReader;
import daylight.line.book.FieldBook;
import daylight.line.book.Priors;
import daylight.line.counter.Tracks;
import daylight.line.course.Estimator;
import daylight.line.course.Line;
import java.io.IOException;
import java.io.InputStream;
import java.util.concurrent.TimeUnit;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;
import org.jspecify.annotations.Nullable;
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
 * How long the demo property takes to estimate, beside its yardstick: one dense Cholesky inverse of
 * as many unknowns, which no dense estimator can be without. Only the ratio means anything.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class EstimateBench {
  /** Unknowns of the demo property's one line, to the nearest hundred. */
  private static final int UNKNOWNS = 200;

  private @Nullable FieldBook book;
  private final Priors priors = Bundled.priors();
  private DMatrixRMaj matrix = new DMatrixRMaj(0, 0);

  /** Reads the demo property and makes a matrix that can be factored. */
  @Setup
  public void read() throws IOException {
    try (InputStream in = Job.class.getResourceAsStream("demo/shop-roof-drain.yaml")) {
      if (in == null) {
        throw new IllegalStateException("no demo property");
      }
      book = FieldBookReader.read("demo", in.readAllBytes(), null).book();
    }
    matrix = CommonOps_DDRM.identity(UNKNOWNS);
    for (int i = 0; i < UNKNOWNS; i++) {
      for (int j = 0; j < UNKNOWNS; j++) {
        matrix.add(i, j, 1.0 / (1 + Math.abs(i - j)) / 10);
      }
    }
  }

  /** The estimate. */
  @Benchmark
  public Line estimate() {
    FieldBook read = book;
    if (read == null) {
      throw new IllegalStateException("set up first");
    }
    return Estimator.estimate(read, Tracks.NONE, priors);
  }

  /** The yardstick. */
  @Benchmark
  public DMatrixRMaj choleskyInverse() {
    LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.chol(UNKNOWNS);
    if (!solver.setA(matrix.copy())) {
      throw new IllegalStateException("not positive definite");
    }
    DMatrixRMaj inverse = new DMatrixRMaj(UNKNOWNS, UNKNOWNS);
    solver.invert(inverse);
    return inverse;
  }
}
