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
import java.util.Locale;
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
    StringBuilder yaml = new StringBuilder(20_000);
    yaml.append("daylight-book: 1\n")
        .append("units: {distance: m, depth: m, bore: mm, level: m}\n")
        .append("site:\n  name: A kilometre\n  invented: yes\n  landmarks:\n")
        .append("    - {label: A, what: a corner, kind: corner}\n")
        .append("    - {label: B, what: another corner, kind: corner}\n")
        .append("  nodes:\n    - {label: N1, kind: access, what: a cleanout}\n")
        .append("    - {label: N2, kind: outlet, what: a pipe end}\n")
        .append("  reaches:\n    - {label: R1, line: drain, from: N1, to: N2, water: forward,")
        .append(" use: storm, material: pvc, bore: 150 mm}\n")
        .append("visit:\n  date: 2026-04-18\n  complaint: Where does it run?\n")
        .append("  kit: {sonde-behind-lens: 0.4 m, sonde-above-invert: 30 mm}\n  passes:\n")
        .append("    - {label: P1, entry: N1, walk: [R1], zero: {reads: 0}, head: self-righting}\n")
        .append("  end: {cable: 1004, why: outlet-reached, node: N2}\n")
        .append("  spots:\n    - {of: N1, along: 0, out: 2}\n  locates:\n");
    for (int i = 1; i <= LOCATES; i++) {
      double at = METRES * i / (LOCATES + 1);
      double stray = 0.1 * StrictMath.sin(7.3 * i);
      yaml.append(
          String.format(
              Locale.ROOT,
              "    - {label: L%d, cable: %.2f, along: %.3f, out: %.3f, depth: %.2f}%n",
              i,
              (at + 0.4) * 1.004,
              at + stray,
              2 + stray,
              1.2 + 0.02 * StrictMath.sin(3.1 * i)));
    }
    yaml.append("  ties:\n    - {from: A, to: B, tape: 1000}\n");
    book =
        FieldBookReader.read("bench", yaml.toString().getBytes(StandardCharsets.UTF_8), null)
            .book();
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
