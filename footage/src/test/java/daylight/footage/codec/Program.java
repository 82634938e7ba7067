package daylight.footage.codec;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.bytedeco.javacpp.Loader;

/**
 * The command-line programs that come with the library: an outside witness, and a second writer.
 */
final class Program {
  private static final Path FFMPEG = Path.of(Loader.load(org.bytedeco.ffmpeg.ffmpeg.class));
  private static final Path FFPROBE = Path.of(Loader.load(org.bytedeco.ffmpeg.ffprobe.class));
  private static final int PATIENCE_SECONDS = 60;

  private Program() {}

  /** Runs the converter; what it prints are the bytes of its output {@code -}. */
  static byte[] ffmpeg(String... arguments) throws IOException {
    List<String> command = new ArrayList<>(List.of(FFMPEG.toString(), "-v", "error", "-y"));
    command.addAll(List.of(arguments));
    return run(command);
  }

  /** The same as text. */
  static String text(String... arguments) throws IOException {
    return new String(ffmpeg(arguments), StandardCharsets.UTF_8);
  }

  /** What the prober says, line by line, errors left out. */
  static List<String> probed(String... arguments) throws IOException {
    List<String> command = new ArrayList<>(List.of(FFPROBE.toString(), "-v", "error"));
    command.addAll(List.of(arguments));
    return new String(run(command), StandardCharsets.UTF_8)
        .lines()
        .filter(line -> !line.isBlank())
        .toList();
  }

  /** One line of comma-separated values about the stream of pictures, its frames counted. */
  static String probe(Path film, String entries) throws IOException {
    return new String(
            run(
                List.of(
                    FFPROBE.toString(),
                    "-v",
                    "error",
                    "-count_frames",
                    "-select_streams",
                    "v:0",
                    "-show_entries",
                    entries,
                    "-of",
                    "csv=p=0",
                    film.toString())),
            StandardCharsets.UTF_8)
        .lines()
        .filter(line -> !line.isBlank())
        .findFirst()
        .orElse("");
  }

  private static byte[] run(List<String> command) throws IOException {
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().put("LD_LIBRARY_PATH", String.valueOf(FFMPEG.getParent()));
    builder.redirectError(ProcessBuilder.Redirect.DISCARD);
    Process process = builder.start();
    process.getOutputStream().close();
    byte[] printed = process.getInputStream().readAllBytes();
    try {
      if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        process.destroyForcibly();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return printed;
  }
}
