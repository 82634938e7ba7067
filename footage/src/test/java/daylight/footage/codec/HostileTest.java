package daylight.footage.codec;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.footage.Make;
import daylight.footage.Watch;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Films with bytes changed at random: opened and looked at, or refused, and nothing worse. */
class HostileTest {
  private static final Duration PATIENCE = Duration.ofSeconds(30);

  @TempDir Path folder = Path.of("");

  @Test
  void changedBytesDoNoHarm() throws IOException {
    changed(34);
  }

  @Test
  @Tag("long")
  void manyChangedBytesDoNoHarm() throws IOException {
    changed(2000);
  }

  private void changed(int times) throws IOException {
    int opened = 0;
    int tried = 0;
    for (Make make : Make.values()) {
      Path film = TestFilm.of(make).frames(20).size(64, 48).write(folder.resolve("film"));
      byte[] whole = Files.readAllBytes(film);
      for (int seed = 0; seed < times; seed++) {
        Path changed = Files.write(folder.resolve("changed"), changed(whole, seed));
        tried++;
        opened += Assertions.assertTimeoutPreemptively(PATIENCE, () -> look(changed)) ? 1 : 0;
      }
    }

    assertThat(opened).isBetween(tried / 4, tried);
  }

  private static byte[] changed(byte[] whole, int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    byte[] bytes = whole.clone();
    // Half of them in the beginning, where the container describes itself.
    int reach = seed % 2 == 0 ? Math.min(bytes.length, 1500) : bytes.length;
    int changes = 1 << random.nextInt(8);
    for (int i = 0; i < changes; i++) {
      bytes[random.nextInt(reach)] = (byte) random.nextInt(256);
    }
    return bytes;
  }

  private static boolean look(Path film) throws IOException {
    if (!(Footage.open(film, Watch.NOBODY) instanceof Opening.Opened(Footage footage))) {
      return false;
    }
    try (footage) {
      int last = footage.times().count() - 1;
      footage.sweep(List.of(0, last / 2, last), Watch.NOBODY, frame -> {});
      footage.frame(last / 3);
      footage.at(footage.times().seconds() / 2);
    }
    return true;
  }
}
