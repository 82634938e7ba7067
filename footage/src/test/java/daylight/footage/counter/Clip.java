package daylight.footage.counter;

import daylight.footage.Watch;
import daylight.footage.codec.Footage;
import daylight.footage.codec.Opening;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

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

  /** Reads files that have their truth beside them (name.txt: a line a frame) and prints scores. */
  public static void main(String[] words) throws Exception {
    for (String word : words) {
      Path file = Path.of(word);
      List<String> truth =
          Files.readAllLines(Path.of(word + ".txt")).stream()
              .map(l -> l.split("\t", -1)[0])
              .toList();
      long begun = System.nanoTime();
      Found found = read(file);
      double took = (System.nanoTime() - begun) / 1e9;
      if (!(found instanceof Found.Counter counter)) {
        System.out.printf("%-34s %s %.1f s%n", file.getFileName(), found, took);
        continue;
      }
      int legible = 0;
      int exact = 0;
      int wrong = 0;
      String sample = "";
      for (int i = 0; i < Math.min(truth.size(), counter.readings().size()); i++) {
        Reading reading = counter.readings().get(i);
        String text = truth.get(i);
        boolean read = reading.state() == daylight.line.counter.Track.State.READ;
        legible += text.isEmpty() ? 0 : 1;
        exact += read && reading.shown().equals(text) ? 1 : 0;
        if (read && !reading.shown().equals(text)) {
          wrong++;
          sample =
              sample.length() < 60 ? sample + " " + i + ":" + text + "|" + reading.shown() : sample;
        }
      }
      System.out.printf(
          "%-34s exact %.2f %% wrong %.2f %% of %d leaps %s %.1f s %s%n",
          file.getFileName(),
          100.0 * exact / legible,
          100.0 * wrong / legible,
          legible,
          counter.leaps(),
          took,
          sample);
    }
  }
}
