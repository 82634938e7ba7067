package daylight.archive.store;

import daylight.archive.Folders;
import daylight.archive.Sha256;
import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;

/**
 * An archive in one file, and back. Nothing is half there: the last step is a rename of what is on
 * the disk already.
 */
final class Backups {
  private static final String MEDIA = MediaFolder.NAME + "/";

  private Backups() {}

  static Optional<Statement> save(Jdbi jdbi, MediaFolder media, Path file) {
    if (Files.exists(file)) {
      return Optional.of(
          Statement.of(ArchiveTrouble.THERE_ALREADY, new Argument.Text(file.toString())));
    }
    Path folder = file.toAbsolutePath().getParent();
    try {
      Files.createDirectories(folder);
      Path work = Files.createTempDirectory(folder, ".backup");
      try {
        Path copy = Database.file(work);
        // A copy of one moment, whatever is written meanwhile.
        jdbi.useHandle(handle -> handle.execute("VACUUM INTO ?", copy.toString()));
        Path packed = work.resolve("packed");
        // Whatever that copy names is there since before it was made, for a file comes first.
        pack(copy, media, Database.reading(jdbi, MediaNames::all), packed);
        settle(packed);
        Files.move(packed, file, StandardCopyOption.ATOMIC_MOVE);
      } finally {
        Folders.delete(work);
      }
      return Optional.empty();
    } catch (IOException | JdbiException e) {
      return Optional.of(Archive.unreachable(file, e));
    }
  }

  private static void pack(Path copy, MediaFolder media, List<Sha256> contents, Path packed)
      throws IOException {
    try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(packed))) {
      out.putNextEntry(new ZipEntry(Database.NAME));
      Files.copy(copy, out);
      out.closeEntry();
      // Recordings are packed already.
      out.setLevel(Deflater.NO_COMPRESSION);
      for (Sha256 content : contents) {
        Path file = media.file(content).orElseThrow(() -> new NoSuchFileException(content.hex()));
        out.putNextEntry(new ZipEntry(MEDIA + content.hex()));
        Files.copy(file, out);
        out.closeEntry();
      }
    }
  }

  static Optional<Statement> restore(Path file, Path folder) {
    Path home = folder.toAbsolutePath();
    try {
      if (!Folders.isEmpty(home)) {
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
        settle(Database.file(work));
        if (Files.exists(work.resolve(MediaFolder.NAME))) {
          Files.move(work.resolve(MediaFolder.NAME), home.resolve(MediaFolder.NAME));
        }
        // Last: with it the archive is there.
        Files.move(Database.file(work), Database.file(home), StandardCopyOption.ATOMIC_MOVE);
        return Optional.empty();
      } finally {
        Folders.delete(work);
      }
    } catch (ZipException e) {
      return Optional.of(notBackup(file, String.valueOf(e.getMessage())));
    } catch (IOException e) {
      return Optional.of(Archive.unreachable(file, e));
    }
  }

  private static Optional<Statement> unpack(Path file, Path work) throws IOException {
    try (ZipFile zip = new ZipFile(file.toFile())) {
      ZipEntry entry = zip.getEntry(Database.NAME);
      if (entry == null) {
        return Optional.of(notBackup(file, Database.NAME));
      }
      try (InputStream in = zip.getInputStream(entry)) {
        Files.copy(in, Database.file(work));
      }
      Optional<Statement> wrong = Database.wrong(work).map(_ -> notBackup(file, Database.NAME));
      return wrong.isPresent() ? wrong : unpackMedia(zip, file, work);
    }
  }

  private static Optional<Statement> unpackMedia(ZipFile zip, Path file, Path work)
      throws IOException {
    MediaFolder media = new MediaFolder(work);
    Optional<Statement> newer = Database.migrate(work);
    if (newer.isPresent()) {
      return newer;
    }
    for (Sha256 content :
        Database.reading(Database.connect(Database.file(work)), MediaNames::all)) {
      ZipEntry entry = zip.getEntry(MEDIA + content.hex());
      if (entry == null) {
        return Optional.of(notBackup(file, MEDIA + content.hex()));
      }
      try (InputStream in = zip.getInputStream(entry)) {
        if (!media.take(in).equals(content)) {
          return Optional.of(notBackup(file, MEDIA + content.hex()));
        }
      }
    }
    return Optional.empty();
  }

  /** Waits until the disk has a file. */
  private static void settle(Path file) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      channel.force(true);
    }
  }

  private static Statement notBackup(Path file, String why) {
    return Statement.of(
        ArchiveTrouble.NOT_A_BACKUP, new Argument.Text(file.toString()), new Argument.Text(why));
  }
}
