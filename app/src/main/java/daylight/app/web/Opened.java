package daylight.app.web;

import daylight.app.Job;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A field book to look at.
 *
 * @param book its file, or a folder that holds {@code field-book.yaml}
 * @param settings by which it is answered
 */
public record Opened(Path book, Job.Settings settings) {
  /** The file of the book. */
  Path file() {
    Path whole = book.toAbsolutePath().normalize();
    return Files.isDirectory(whole) ? whole.resolve("field-book.yaml") : whole;
  }
}
