package daylight.archive.store;

import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;

/** An archive in one file, and back. Nothing is half there: the last step is a rename. */
final class Backups {
  private static final String ARCHIVE = "archive.db";

  private Backups() {}

  static Optional<Statement> save(Jdbi jdbi, Path file) {
    if (Files.exists(file)) {
      return Optional.of(
          Statement.of(ArchiveTrouble.THERE_ALREADY, new Argument.Text(file.toString())));
    }
    Path folder = file.toAbsolutePath().getParent();
    try {
      Files.createDirectories(folder);
      Path work = Files.createTempDirectory(folder, ".backup");
      try {
        Path copy = work.resolve(ARCHIVE);
        // A copy of one moment, whatever is written meanwhile.
        jdbi.useHandle(handle -> handle.execute("VACUUM INTO ?", copy.toString()));
        Path packed = work.resolve("packed");
        pack(copy, packed);
        Files.move(packed, file, StandardCopyOption.ATOMIC_MOVE);
      } finally {
        remove(work);
      }
      return Optional.empty();
    } catch (IOException | JdbiException e) {
      return Optional.of(Archive.unreachable(file, e));
    }
  }

  private static void pack(Path copy, Path packed) throws IOException {
    try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(packed))) {
      out.putNextEntry(new ZipEntry(ARCHIVE));
      Files.copy(copy, out);
      out.closeEntry();
    }
  }

  static Optional<Statement> restore(Path file, Path folder) {
    Path home = folder.toAbsolutePath();
    try {
      if (!Archive.Folders.isEmpty(home)) {
        return Optional.of(
            Statement.of(ArchiveTrouble.NOT_EMPTY, new Argument.Text(folder.toString())));
      }
      Files.createDirectories(home);
      Path work = Files.createTempDirectory(home, ".restore");
      try {
        Optional<Statement> wrong = unpack(file, work);
        if (wrong.isPresent()) {
          return wrong;
        }
        Files.move(work.resolve(ARCHIVE), Database.file(home), StandardCopyOption.ATOMIC_MOVE);
        return Optional.empty();
      } finally {
        remove(work);
      }
    } catch (ZipException e) {
      return Optional.of(notBackup(file, String.valueOf(e.getMessage())));
    } catch (IOException e) {
      return Optional.of(Archive.unreachable(file, e));
    }
  }

  private static Optional<Statement> unpack(Path file, Path work) throws IOException {
    try (ZipFile zip = new ZipFile(file.toFile())) {
      ZipEntry entry = zip.getEntry(ARCHIVE);
      if (entry == null) {
        return Optional.of(notBackup(file, ARCHIVE));
      }
      try (InputStream in = zip.getInputStream(entry)) {
        Files.copy(in, work.resolve(ARCHIVE));
      }
    }
    return Database.wrong(work).map(wrong -> notBackup(file, ARCHIVE));
  }

  private static Statement notBackup(Path file, String why) {
    return Statement.of(
        ArchiveTrouble.NOT_A_BACKUP, new Argument.Text(file.toString()), new Argument.Text(why));
  }

  private static void remove(Path folder) throws IOException {
    try (var files = Files.walk(folder)) {
      for (Path path : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(path);
      }
    }
  }
}
