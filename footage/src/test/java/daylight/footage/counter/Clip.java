package daylight.footage.counter;

import daylight.footage.Watch;
import daylight.footage.codec.Footage;
import daylight.footage.codec.Opening;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Films a clip with its truth, and scores what is read against it. */
final class Clip {
  /** What is true of a frame: the text shown, empty for none, and its contrast-to-noise. */
  record Truth(String text, double contrast) {}

  private Clip() {}

  static Found read(Path file) throws IOException {
    return switch (Footage.open(file, Watch.NOBODY)) {
      case Opening.Opened(Footage footage) -> {
        try (footage) {
          yield CounterReader.read(footage, null, Watch.NOBODY);
        }
      }
      default -> throw new IOException("not opened: " + file);
    };
  }

  /** Text, a tab, contrast to noise: a line a frame. */
  static List<Truth> truth(List<String> lines) {
    return lines.stream()
        .map(line -> line.split("\t", -1))
        .map(parts -> new Truth(parts[0], Double.parseDouble(parts[1])))
        .toList();
  }

  /** Reads films that have their truth beside them and prints how well. */
  public static void main(String[] words) throws Exception {
    for (String word : words) {
      Path file = Path.of(word);
      List<Truth> truth = truth(Files.readAllLines(Path.of(word + ".txt")));
      long begun = System.nanoTime();
      Found found = read(file);
      double took = (System.nanoTime() - begun) / 1e9;
      if (found instanceof Found.Counter counter) {
        Score score = Score.of(counter, truth);
        System.out.printf(
            Locale.ROOT,
            "%-20s read %.2f %% wrong %.2f %% legible %d of %d, set anew %s, %.1f s%s%n",
            file.getFileName(),
            100 * score.read(),
            100 * score.wrong(),
            score.legible(),
            truth.size(),
            counter.leaps(),
            took,
            score.sample());
      } else {
        System.out.printf(Locale.ROOT, "%-20s %s %.1f s%n", file.getFileName(), found, took);
      }
    }
  }
}
