package daylight.bench;

import daylight.app.Job;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.SortedMap;
import java.util.concurrent.TimeUnit;
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
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * An invented drain of a hundred locates and many findings, from the file of its book to the
 * answers, and on to everything that is handed over. Between the two counts of findings only the
 * ratio means anything: twice as many cost less than twice as much.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 4)
@Measurement(iterations = 5, time = 4)
@Fork(1)
public class AnswerBench {
  private static final int LOCATES = 100;
  private static final double METRES = 200;
  private static final String[] KINDS = {
    "kind: roots, share: 20 %, through: joint",
    "kind: crack, width: 2 mm, direction: along",
    "kind: displaced-joint, offset: 8 mm",
    "kind: deposit-loose, share: 10 %",
    "kind: standing-water, depth: 15 mm, still: yes",
    "kind: grease, share: 5 %"
  };

  @Param({"400", "800"})
  private int findings;

  private Path folder = Path.of("");

  /** Writes the book of the drain. */
  @Setup
  public void write() throws IOException {
    folder = Files.createTempDirectory("answer-bench");
    Files.writeString(folder.resolve("field-book.yaml"), book());
  }

  /** Leaves nothing behind. */
  @TearDown
  public void clean() throws IOException {
    Files.deleteIfExists(folder.resolve("field-book.yaml"));
    Files.deleteIfExists(folder);
  }

  private String book() {
    StringBuilder yaml = new StringBuilder(80_000);
    yaml.append(
        """
        daylight-book: 1
        units: {distance: m, depth: m, bore: mm, level: m}
        site:
          name: Much was seen
          invented: yes
          landmarks:
            - {label: A, what: a corner, kind: corner}
            - {label: B, what: another corner, kind: corner}
          nodes:
            - {label: N1, kind: access, what: a cleanout}
            - {label: N2, kind: outlet, what: a pipe end}
          reaches:
            - {label: R1, line: drain, from: N1, to: N2, water: forward, use: sanitary,
               material: clay, bore: 150 mm}
        visit:
          date: 2026-04-18
          complaint: It drains slowly
          kit: {sonde-behind-lens: 0.4 m, sonde-above-invert: 30 mm}
          passes:
            - {label: P1, entry: N1, walk: [R1], zero: {reads: 0}, head: self-righting}
          end: {cable: 200.8, why: outlet-reached, node: N2}
          spots:
            - {of: N1, along: 0, out: 2}
          ties:
            - {from: A, to: B, tape: 200}
          locates:
        """);
    for (int i = 1; i <= LOCATES; i++) {
      double at = METRES * i / (LOCATES + 1);
      double stray = 0.05 * StrictMath.sin(7.3 * i);
      yaml.append(
          String.format(
              Locale.ROOT,
              "    - {label: L%d, cable: %.2f, along: %.3f, out: %.3f, depth: %.2f}%n",
              i,
              (at + 0.4) * 1.004,
              at + stray,
              2 + stray,
              1.2 + 0.01 * at + 0.02 * StrictMath.sin(3.1 * i)));
    }
    yaml.append("  findings:\n");
    for (int i = 0; i < findings; i++) {
      double at = 0.5 + (METRES - 1) * i / findings;
      yaml.append(
          String.format(
              Locale.ROOT,
              "    - {label: F%d, cable: %.2f, %s, clock: 5-7}%n",
              i + 1,
              at,
              KINDS[i % KINDS.length]));
    }
    return yaml.toString();
  }

  private Job.Outcome.Answered answered() {
    if (Job.answerWithoutFootage(folder, Job.Settings.USUAL)
        instanceof Job.Outcome.Answered answered) {
      return answered;
    }
    throw new IllegalStateException("the book must be answered");
  }

  /** From the file to the answers. */
  @Benchmark
  public Job.Outcome.Answered answers() {
    return answered();
  }

  /** From the file to all that is handed over, the PDF too. */
  @Benchmark
  public SortedMap<String, byte[]> handedOver() {
    return answered().files();
  }
}
