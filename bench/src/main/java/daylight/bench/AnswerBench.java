package daylight.bench;

import daylight.app.Job;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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

  @Param({"400", "800"})
  private int findings;

  private Path folder = Path.of("");

  /** Writes the book of the drain. */
  @Setup
  public void write() throws IOException {
    folder = Files.createTempDirectory("answer-bench");
    Files.writeString(folder.resolve("field-book.yaml"), LongDrain.book(METRES, LOCATES, findings));
  }

  /** Leaves nothing behind. */
  @TearDown
  public void clean() throws IOException {
    Files.deleteIfExists(folder.resolve("field-book.yaml"));
    Files.deleteIfExists(folder);
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
