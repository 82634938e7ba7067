package daylight.bench;

import daylight.footage.Make;
import daylight.footage.Raster;
import daylight.footage.Rate;
import daylight.footage.codec.Film;
import daylight.footage.scene.Burner;
import daylight.footage.scene.CounterFormat;
import daylight.footage.scene.Lettering;
import daylight.footage.scene.Typeface;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import org.bytedeco.javacpp.Loader;

/**
 * The counter read from a recording, as a whole process, beside the {@code ffmpeg} program of the
 * same library decoding the same recording to nothing with as many threads: in turns, so that both
 * meet the same weather. What a second of recording costs is told apart from what every reading
 * costs. Read ratios, not times.
 *
 * <p>Arguments: minutes of recording (10 if none), pairs (5 if none), width of the picture (all if
 * none).
 */
public final class CounterBench {
  private static final Path FFMPEG = Path.of(Loader.load(org.bytedeco.ffmpeg.ffmpeg.class));

  /** What users start, in the folder that the bench is run in. */
  private static final String LAUNCHER = Path.of("daylight").toAbsolutePath().toString();

  private static final int LOOP_SECONDS = 20;
  private static final int BACKDROPS = 50;
  private static final double SPEED = 0.11;

  /** A kind of recording. */
  private record Kind(String name, Make make, int width, int height, int rate, int tall) {}

  /** What a run took. */
  private record Run(double seconds, long peak) {}

  private CounterBench() {}

  /** Runs it. */
  public static void main(String[] words) throws Exception {
    int minutes = words.length > 0 ? Integer.parseInt(words[0]) : 10;
    int pairs = words.length > 1 ? Integer.parseInt(words[1]) : 5;
    Path folder = Files.createTempDirectory("counter-bench");
    // Ctrl-C, too, leaves nothing of the films behind.
    Thread cleaning = Thread.ofPlatform().unstarted(() -> clean(folder));
    Runtime.getRuntime().addShutdownHook(cleaning);
    for (Kind kind :
        List.of(
            new Kind("1080p H.264", Make.H264_MP4, 1920, 1080, 25, 44),
            new Kind("720 × 480 MPEG-4", Make.MPEG4_AVI, 720, 480, 30, 22))) {
      if (words.length < 3 || Integer.parseInt(words[2]) == kind.width()) {
        measure(kind, minutes, pairs, folder);
      }
    }
  }

  private static void clean(Path folder) {
    try (Stream<Path> films = Files.walk(folder)) {
      for (Path film : films.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(film);
      }
    } catch (IOException e) {
      System.err.println("films are left in " + folder + ": " + e.getMessage());
    }
  }

  private static void measure(Kind kind, int minutes, int pairs, Path folder) throws Exception {
    Path loop = film(kind, folder);
    Path all = folder.resolve("long-" + loop.getFileName());
    int turns = minutes * 60 / LOOP_SECONDS;
    ffmpeg(
        "-stream_loop",
        String.valueOf(turns - 1),
        "-i",
        loop.toString(),
        "-c",
        "copy",
        "-y",
        all.toString());
    double[] ours = new double[pairs];
    double[] theirs = new double[pairs];
    double[] fixed = new double[pairs];
    long peak = 0;
    for (int i = 0; i < pairs; i++) {
      Run brief = read(loop);
      Run whole = read(all);
      double each = (whole.seconds() - brief.seconds()) / (turns - 1);
      ours[i] = each * turns;
      fixed[i] = brief.seconds() - each;
      peak = Math.max(peak, whole.peak());
      double begun = decode(loop);
      theirs[i] = (decode(all) - begun) / (turns - 1) * turns;
    }
    System.out.printf(
        Locale.ROOT,
        "%s, %d min: reading %.1f s, decoding %.1f s, ratio %.2f (%.2f to %.2f); fixed %.1f s;"
            + " peak memory %d MB%n",
        kind.name(),
        minutes,
        median(ours),
        median(theirs),
        median(ratios(ours, theirs)),
        Arrays.stream(ratios(ours, theirs)).min().orElse(0),
        Arrays.stream(ratios(ours, theirs)).max().orElse(0),
        median(fixed),
        peak / 1_000_000);
  }

  private static double[] ratios(double[] a, double[] b) {
    double[] ratios = new double[a.length];
    for (int i = 0; i < a.length; i++) {
      ratios[i] = a[i] / b[i];
    }
    return ratios;
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }

  /** A recording that can be played in a loop: pushed out and pulled back. */
  private static Path film(Kind kind, Path folder) throws IOException {
    Path file = folder.resolve(kind.width() + "." + kind.make().extension());
    CounterFormat format = CounterFormat.feet(1, 1, " ft");
    Burner burner =
        new Burner(
            new Lettering(
                Typeface.PLAIN, kind.tall(), 0xF4F4F4, 1, 1, 0, new Lettering.Place(0.05, 0.95)));
    List<int[]> backdrops = backdrops(kind);
    Raster raster = new Raster(kind.width(), kind.height());
    int frames = LOOP_SECONDS * kind.rate();
    try (Film film =
        Film.begin(file, kind.make(), kind.width(), kind.height(), Rate.of(kind.rate()))) {
      for (int n = 0; n < frames; n++) {
        int there = Math.floorMod(n, 2 * BACKDROPS);
        int[] pixels = backdrops.get(there < BACKDROPS ? there : 2 * BACKDROPS - 1 - there);
        System.arraycopy(pixels, 0, raster.pixels(), 0, pixels.length);
        int gone = Math.min(n, frames - n);
        burner.burn(format.text(3 + SPEED * gone / kind.rate()), raster);
        film.add(raster);
      }
      film.finish();
    }
    return file;
  }

  /** Blotches that drift and noise over them, about as hard to decode as a pipe. */
  private static List<int[]> backdrops(Kind kind) {
    List<int[]> backdrops = new ArrayList<>();
    Random chance = new Random(7);
    for (int n = 0; n < BACKDROPS; n++) {
      int[] pixels = new int[kind.width() * kind.height()];
      for (int i = 0; i < pixels.length; i++) {
        int column = i % kind.width();
        double x = (double) column / kind.width();
        int row = i / kind.width();
        double y = (double) row / kind.height();
        double wave =
            Math.sin(9 * x + n * 0.06) * Math.cos(7 * y - n * 0.05)
                + 0.5 * Math.sin(31 * x * y + n * 0.11);
        int level = (int) Math.clamp(95 + 35 * wave + 4 * chance.nextGaussian(), 0.0, 255.0);
        pixels[i] = (level << 16) | ((level * 7 / 8) << 8) | (level * 5 / 8);
      }
      backdrops.add(pixels);
    }
    return backdrops;
  }

  private static Run read(Path film) throws Exception {
    return run(List.of(LAUNCHER, "counter", "--csv", film.toString()));
  }

  private static double decode(Path film) throws Exception {
    return run(List.of(
            FFMPEG.toString(), "-v", "error", "-nostdin", "-i", film.toString(), "-f", "null", "-"))
        .seconds();
  }

  private static void ffmpeg(String... words) throws Exception {
    List<String> command = new ArrayList<>(List.of(FFMPEG.toString(), "-v", "error", "-nostdin"));
    command.addAll(List.of(words));
    run(command);
  }

  private static Run run(List<String> command) throws Exception {
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().put("LD_LIBRARY_PATH", String.valueOf(FFMPEG.getParent()));
    builder.redirectOutput(ProcessBuilder.Redirect.DISCARD);
    builder.redirectError(ProcessBuilder.Redirect.INHERIT);
    long begun = System.nanoTime();
    Process process = builder.start();
    long peak = 0;
    while (process.isAlive()) {
      peak = Math.max(peak, peak(process));
      Thread.sleep(20);
    }
    if (process.exitValue() != 0) {
      throw new IllegalStateException("exit " + process.exitValue() + ": " + command);
    }
    return new Run((System.nanoTime() - begun) / 1e9, peak);
  }

  /** The most memory a process held so far, where the system tells; 0 where not. */
  private static long peak(Process process) {
    try {
      return Files.readAllLines(Path.of("/proc/" + process.pid() + "/status")).stream()
          .filter(line -> line.startsWith("VmHWM:"))
          .mapToLong(line -> 1024 * Long.parseLong(line.replaceAll("\\D", "")))
          .findFirst()
          .orElse(0);
    } catch (IOException e) {
      return 0;
    }
  }
}
