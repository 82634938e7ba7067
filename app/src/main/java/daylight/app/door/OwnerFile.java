package daylight.app.door;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;

/** Files that only their owner can read, where the file system knows owners. */
final class OwnerFile {
  private OwnerFile() {}

  /**
   * Writes a file so that at any time there is the old one or the new one, whole and on the disk.
   */
  static void write(Path file, byte[] bytes) throws IOException {
    Path fresh = file.resolveSibling("." + file.getFileName() + ".new");
    Files.deleteIfExists(fresh);
    FileAttribute<?>[] owner =
        file.getFileSystem().supportedFileAttributeViews().contains("posix")
            ? new FileAttribute<?>[] {
              PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
            }
            : new FileAttribute<?>[0];
    try (FileChannel channel =
        FileChannel.open(
            fresh, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), owner)) {
      ByteBuffer rest = ByteBuffer.wrap(bytes);
      while (rest.hasRemaining()) {
        channel.write(rest);
      }
      channel.force(true);
    }
    Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }
}
