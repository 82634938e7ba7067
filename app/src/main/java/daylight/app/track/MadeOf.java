package daylight.app.track;

import daylight.archive.Sha256;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** What the program that is running is made of, so that nobody can forget to count a version up. */
public final class MadeOf {
  private MadeOf() {}

  /**
   * A line for each file in a folder of the program: its SHA-256 and its name there. Empty where
   * that cannot be told.
   *
   * @param one a class that was loaded from where the folder is, a jar or a folder of classes
   * @param folder its name, with slashes
   * @param counts which files count, by their names in it
   */
  public static Optional<String> lines(Class<?> one, String folder, Predicate<String> counts) {
    CodeSource source = one.getProtectionDomain().getCodeSource();
    if (source == null) {
      return Optional.empty();
    }
    try {
      Path place = Path.of(source.getLocation().toURI());
      if (Files.isDirectory(place)) {
        return Optional.of(lines(place.resolve(folder), counts));
      }
      try (FileSystem jar = FileSystems.newFileSystem(place)) {
        return Optional.of(lines(jar.getPath("/" + folder), counts));
      }
    } catch (IOException | URISyntaxException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private static String lines(Path folder, Predicate<String> counts) throws IOException {
    List<String> names;
    try (Stream<Path> walked = Files.walk(folder)) {
      names =
          walked
              .filter(Files::isRegularFile)
              .map(file -> folder.relativize(file).toString().replace('\\', '/'))
              .filter(counts)
              .sorted()
              .toList();
    }
    StringBuilder lines = new StringBuilder();
    for (String name : names) {
      lines.append(Sha256.of(folder.resolve(name)).hex()).append(' ').append(name).append('\n');
    }
    return lines.toString();
  }
}
