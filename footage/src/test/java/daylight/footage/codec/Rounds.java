package daylight.footage.codec;

import daylight.footage.Make;
import daylight.footage.Raster;
import daylight.footage.Rate;
import daylight.footage.Watch;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * A process of its own that looks at one film until it is warm and then at another, and prints by
 * how many bytes it has grown meanwhile. Its heap is small and resident from the beginning, so that
 * what grows is outside the heap, and what does not fit into the heap ends it.
 */
final class Rounds {
  private static final int PATIENCE_SECONDS = 120;

  private Rounds() {}

  /** The growth in bytes; negative where the system does not tell. */
  static long growth(Path warm, int warmTimes, Path film, int times) throws IOException {
    String path = System.getProperty("surefire.test.class.path");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xms64m",
                "-Xmx64m",
                "-XX:+AlwaysPreTouch",
                "-XX:TieredStopAtLevel=1",
                "--enable-native-access=ALL-UNNAMED",
                "-cp",
                path != null ? path : System.getProperty("java.class.path"),
                Rounds.class.getName(),
                warm.toString(),
                Integer.toString(warmTimes),
                film.toString(),
                Integer.toString(times))
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    try {
      if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        process.destroyForcibly();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return Long.parseLong(printed.strip());
  }

  /** Film, rounds, other film, rounds. */
  public static void main(String[] arguments) throws IOException {
    look(Path.of(arguments[0]), Integer.parseInt(arguments[1]));
    long before = residentBytes();
    look(Path.of(arguments[2]), Integer.parseInt(arguments[3]));
    System.out.println(residentBytes() - before);
  }

  private static void look(Path film, int times) throws IOException {
    for (int i = 0; i < times; i++) {
      try (Footage footage = Films.opened(film)) {
        int last = footage.times().count() - 1;
        footage.sweep(List.of(0, last / 3, last / 2, last), Watch.NOBODY, frame -> {});
        Jpeg.of(footage.frame(1).orElseThrow().raster());
      }
      Path half = film.resolveSibling("half.avi");
      try (Film writing = Film.begin(half, Make.MPEG4_AVI, 640, 480, Rate.of(25))) {
        writing.add(new Raster(640, 480));
      }
    }
  }

  private static long residentBytes() throws IOException {
    Path status = Path.of("/proc/self/status");
    return !Files.exists(status)
        ? 0
        : Files.readAllLines(status).stream()
            .filter(line -> line.startsWith("RssAnon:"))
            .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")) * 1024)
            .sum();
  }
}
