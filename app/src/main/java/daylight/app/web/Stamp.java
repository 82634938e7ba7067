package daylight.app.web;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** How the files behind an answer look from outside: when each was last written, and its size. */
record Stamp(List<Print> prints) {
  /** One file; a file that is not there has no size. */
  record Print(Path file, long modified, long size) {}

  /** Of the book, the files chosen beside it, and those that it named when it was last read. */
  static Stamp of(Opened opened, @Nullable Reading last) {
    List<Path> files = new ArrayList<>();
    files.add(opened.file());
    files.addAll(opened.settings().rules().files());
    if (last instanceof Reading.Answered answered) {
      answered.media().forEach(media -> files.add(opened.file().resolveSibling(media.file())));
    }
    return new Stamp(files.stream().map(Stamp::print).toList());
  }

  private static Print print(Path file) {
    try {
      BasicFileAttributes seen = Files.readAttributes(file, BasicFileAttributes.class);
      return new Print(file, seen.lastModifiedTime().toMillis(), seen.size());
    } catch (IOException missing) {
      return new Print(file, -1, -1);
    }
  }
}
