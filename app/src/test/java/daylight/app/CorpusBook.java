package daylight.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A field book of the corpus, with what its comments say of it.
 *
 * @param answer the answers as {@link CorpusLine} writes them
 * @param truth what was so on the invented site the readings were made from; see {@link
 *     CorpusTruth}
 * @param wrong what Daylight is known to get wrong about it; null when nothing
 */
record CorpusBook(Path file, String answer, List<String> truth, @Nullable String wrong) {
  /** All of them, by name. */
  static List<CorpusBook> all() {
    try (Stream<Path> files = Files.list(SourceTree.ofThisProject().file("corpus"))) {
      return files
          .filter(file -> file.toString().endsWith(".yaml"))
          .sorted()
          .map(CorpusBook::of)
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The one whose name begins so. */
  static CorpusBook of(String number) {
    return all().stream()
        .filter(book -> book.name().startsWith(number + "-"))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no book " + number));
  }

  private static CorpusBook of(Path file) {
    String answer = comment(file, "answer");
    String truth = comment(file, "truth");
    return new CorpusBook(
        file,
        answer == null ? "" : answer,
        truth == null ? List.of() : List.of(truth.split("; ")),
        comment(file, "wrong"));
  }

  private static @Nullable String comment(Path file, String word) {
    String start = "# " + word + ": ";
    return text(file)
        .lines()
        .filter(line -> line.startsWith(start))
        .map(line -> line.substring(start.length()))
        .findFirst()
        .orElse(null);
  }

  String name() {
    return String.valueOf(file.getFileName()).replace(".yaml", "");
  }

  String text() {
    return text(file);
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
