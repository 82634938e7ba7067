package daylight.app.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Books of the corpus copied to where a test may write, and what lies in a folder. */
final class Books {
  private Books() {}

  /** A copy of a book of the corpus. */
  static Path copied(String number, Path folder) {
    try {
      Files.createDirectories(folder);
      Path corpus = Path.of("..", "corpus").toAbsolutePath().normalize();
      try (Stream<Path> files = Files.list(corpus)) {
        Path book =
            files
                .filter(file -> file.getFileName().toString().startsWith(number + "-"))
                .findFirst()
                .orElseThrow();
        return Files.copy(book, folder.resolve(book.getFileName()));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Every file below a folder by name, with its text. */
  static SortedMap<String, String> below(Path folder) {
    SortedMap<String, String> found = new TreeMap<>();
    try (Stream<Path> walk = Files.walk(folder)) {
      walk.filter(Files::isRegularFile)
          .forEach(file -> found.put(folder.relativize(file).toString(), text(file)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return found;
  }

  /** Byte by byte, whatever the bytes mean. */
  private static String text(Path file) {
    try {
      return Files.readString(file, StandardCharsets.ISO_8859_1);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
