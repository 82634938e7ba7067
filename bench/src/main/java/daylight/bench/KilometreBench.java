package daylight.bench;

import daylight.archive.Bundled;
import daylight.archive.FieldBookReader;
import daylight.line.book.FieldBook;
import daylight.line.book.Priors;
import daylight.line.counter.Tracks;
import daylight.line.course.Estimator;
import daylight.line.course.Line;
import daylight.line.course.Spacing;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * An invented drain of a kilometre with a hundred locates, told every so many metres with position,
 * depth and covariance: the whole estimate, survey included. Between the two spacings only the
 * ratio means anything: twice the stations cost little more.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class KilometreBench {
  private static final int LOCATES = 100;
  private static final double METRES = 1000;

  /** How far apart the stations are, metres. */
  @Param({"0.1", "0.05"})
  private double stations;

  private @Nullable FieldBook book;
  private final Priors priors = Bundled.priors();

  /** Writes the book of the drain and reads it. */
  @Setup
  public void write() {
    String yaml = LongDrain.book(METRES, LOCATES, 0);
    book = FieldBookReader.read("bench", yaml.getBytes(StandardCharsets.UTF_8), null).book();
  }

  /** The estimate. */
  @Benchmark
  public Line estimate() {
    FieldBook read = book;
    if (read == null) {
      throw new IllegalStateException("set up first");
    }
    return Estimator.estimate(read, Tracks.NONE, priors, new Spacing(stations, 1.0));
  }
}
