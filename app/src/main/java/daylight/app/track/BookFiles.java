package daylight.app.track;

import daylight.line.book.Papers.Media;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Where the files lie that a book names.
 *
 * @param folder the book's own, which files are named from; null where it has none
 * @param named where each lies that lies elsewhere, by the name that the book gives it
 */
public record BookFiles(@Nullable Path folder, Map<String, Path> named) {
  public BookFiles {
    named = Map.copyOf(named);
  }

  /** Those in a book's own folder. */
  public static BookFiles in(Path folder) {
    return new BookFiles(folder, Map.of());
  }

  /** The file; null where it is not there. */
  public @Nullable Path find(Media media) {
    Path elsewhere = named.get(media.file());
    if (elsewhere != null || folder == null) {
      return elsewhere;
    }
    try {
      Path file = folder.resolve(media.file());
      return Files.isRegularFile(file) ? file : null;
    } catch (InvalidPathException e) {
      return null;
    }
  }
}
