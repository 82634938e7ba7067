package daylight.footage.counter;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.footage.Watch;
import daylight.footage.codec.Footage;
import daylight.footage.codec.Opening;
import daylight.footage.scene.Torture;
import daylight.line.counter.Track.State;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Recordings with bytes changed in their second half, and cut ones. */
class DamagedTest {
  private static final Duration PATIENCE = Duration.ofSeconds(60);

  /** What is damaged may look like something else: one recording in so many may be misread. */
  private static final int ONE_IN = 200;

  private static final long MOST_GROWTH = 150_000_000;

  @TempDir private Path folder = Path.of("");

  @Test
  void whatStandsBeforeTheDamageIsRead() throws Exception {
    damaged(6);
  }

  @Test
  @Tag("long")
  void aThousandDamagedRecordingsInARowDoNoHarm() throws Exception {
    damaged(1000);
  }

  private void damaged(int times) throws Exception {
    Path film = Torture.film("matrix-ft", folder);
    byte[] whole = Files.readAllBytes(film);
    List<Clip.Truth> truth =
        Clip.truth(Files.readAllLines(film.resolveSibling(film.getFileName() + ".txt")));
    Path changed = folder.resolve("changed.mp4");
    long settled = 0;
    int read = 0;
    int misread = 0;
    for (int seed = 0; seed < times; seed++) {
      Files.write(changed, changed(whole, seed));
      Optional<Found> found = Assertions.assertTimeoutPreemptively(PATIENCE, () -> read(changed));
      if (found.isPresent() && found.get() instanceof Found.Counter counter) {
        read++;
        misread += wrongInTheFirstThird(counter, truth) > 0 ? 1 : 0;
      }
      if (seed == Math.min(times, 40) / 2) {
        settled = nativeBytes();
      }
    }

    assertThat(read).isGreaterThan(times / 3);
    assertThat(misread).isLessThanOrEqualTo(times / ONE_IN);
    long grown = nativeBytes() - settled;
    Files.writeString(
        Path.of("target", "damaged.txt"),
        "%d damaged: %d read, %d misread, %d bytes more%n".formatted(times, read, misread, grown));
    assertThat(grown).isLessThan(MOST_GROWTH);
  }

  private static long wrongInTheFirstThird(Found.Counter counter, List<Clip.Truth> truth) {
    long wrong = 0;
    for (int i = 0; i < Math.min(counter.readings().size(), truth.size() / 3); i++) {
      Reading reading = counter.readings().get(i);
      wrong +=
          reading.state() == State.READ && !reading.shown().equals(truth.get(i).text()) ? 1 : 0;
    }
    return wrong;
  }

  private static byte[] changed(byte[] whole, int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    byte[] bytes = whole.clone();
    if (seed % 5 == 0) {
      return java.util.Arrays.copyOf(bytes, whole.length / 2 + random.nextInt(whole.length / 2));
    }
    int changes = 1 << random.nextInt(9);
    for (int i = 0; i < changes; i++) {
      bytes[whole.length / 2 + random.nextInt(whole.length / 2)] = (byte) random.nextInt(256);
    }
    return bytes;
  }

  private static Optional<Found> read(Path film) throws IOException {
    if (!(Footage.open(film, Watch.NOBODY) instanceof Opening.Opened(Footage footage))) {
      return Optional.empty();
    }
    try (footage) {
      return Optional.of(CounterReader.read(footage, null, Watch.NOBODY));
    }
  }

  /** What lies in memory beside the heap, which grows as it pleases; 0 where nobody tells. */
  private static long nativeBytes() throws IOException {
    Path status = Path.of("/proc/self/status");
    if (!Files.exists(status)) {
      return 0;
    }
    System.gc();
    long all =
        Files.readAllLines(status).stream()
            .filter(line -> line.startsWith("RssAnon:"))
            .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")) * 1024)
            .sum();
    return all - Runtime.getRuntime().totalMemory();
  }
}
