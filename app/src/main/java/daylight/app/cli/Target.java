package daylight.app.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Where something may be written: never over the recording, over nothing else unless chosen. */
final class Target {
  @Option(names = "--over", description = "Write over a file that is there already.")
  private boolean over;

  /** What a file's name ends with, in small letters, without the dot. */
  static String ending(Path file) {
    String name = String.valueOf(file.getFileName());
    return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
  }

  /**
   * What is wrong with a place; null where nothing is.
   *
   * @param endings those that can be written
   */
  @Nullable String wrong(
      VideoConsole console, String option, Path file, Path video, List<String> endings) {
    String key = reason(file, video, endings);
    return key == null
        ? null
        : console.say(
            key,
            Given.text(option),
            Given.text(file.toString()),
            Given.text("." + String.join(" or .", endings)));
  }

  private @Nullable String reason(Path file, Path video, List<String> endings) {
    if (!endings.contains(ending(file))) {
      return "cli.target.ending";
    }
    Path folder = file.toAbsolutePath().getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      return "cli.target.folder";
    }
    if (isSame(file, video)) {
      return "cli.target.recording";
    }
    return Files.exists(file) && !over ? "cli.target.there" : null;
  }

  private static boolean isSame(Path file, Path video) {
    try {
      return Files.exists(file) && Files.exists(video) && Files.isSameFile(file, video);
    } catch (IOException e) {
      return file.toAbsolutePath().normalize().equals(video.toAbsolutePath().normalize());
    }
  }

  /** Puts a whole file into its place, or none. */
  static void write(Path file, byte[] bytes) throws IOException {
    Path whole = file.toAbsolutePath();
    Path part = whole.resolveSibling("." + whole.getFileName() + ".part");
    try {
      Files.write(part, bytes);
      Files.move(part, whole, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(part);
    }
  }
}
