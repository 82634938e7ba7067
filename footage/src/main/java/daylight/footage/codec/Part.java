package daylight.footage.codec;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * A file being written beside its place, and moved there when it is whole.
 *
 * @param target its place
 * @param file where it is until then
 */
record Part(Path target, Path file) {
  static Part of(Path target) {
    Path whole = target.toAbsolutePath();
    return new Part(whole, whole.resolveSibling("." + whole.getFileName() + ".part"));
  }

  void finish() throws IOException {
    try (FileChannel written = FileChannel.open(file, StandardOpenOption.WRITE)) {
      written.force(true);
    }
    Files.move(file, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }

  void forget() throws IOException {
    Files.deleteIfExists(file);
  }
}
