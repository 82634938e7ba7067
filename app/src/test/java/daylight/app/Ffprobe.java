package daylight.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.bytedeco.javacpp.Loader;

/**
 * The command-line programs that come with the codec library: outside witnesses of what we write.
 */
public final class Ffprobe {
  private static final Path FFPROBE = Path.of(Loader.load(org.bytedeco.ffmpeg.ffprobe.class));
  private static final Path FFMPEG = Path.of(Loader.load(org.bytedeco.ffmpeg.ffmpeg.class));

  private Ffprobe() {}

  /** What the prober says of a file, errors left out. */
  public static String says(Path file, String... arguments) throws IOException {
    List<String> command = new ArrayList<>(List.of(FFPROBE.toString(), "-v", "error"));
    command.addAll(List.of(arguments));
    command.add(file.toString());
    return run(command);
  }

  /** What the converter prints. */
  public static String ffmpeg(String... arguments) throws IOException {
    List<String> command = new ArrayList<>(List.of(FFMPEG.toString(), "-v", "error", "-y"));
    command.addAll(List.of(arguments));
    return run(command);
  }

  private static String run(List<String> command) throws IOException {
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().put("LD_LIBRARY_PATH", String.valueOf(FFPROBE.getParent()));
    builder.redirectError(ProcessBuilder.Redirect.DISCARD);
    Process process = builder.start();
    process.getOutputStream().close();
    return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
  }
}
