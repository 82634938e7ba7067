package daylight.archive.store;

import daylight.archive.Sha256;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Recordings, photographs and notes by their content: each is there once, under its SHA-256,
 * whatever it was called. A file has its name when all of it is on the disk, and is never changed.
 */
public final class MediaFolder {
  static final String NAME = "media";
  private static final String COMING = "coming";

  private final Path folder;
  private final Set<Sha256> busy = ConcurrentHashMap.newKeySet();

  MediaFolder(Path archive) {
    folder = archive.resolve(NAME);
  }

  /** Where a content lies; empty where it is not there. */
  public Optional<Path> file(Sha256 content) {
    return Optional.of(place(content)).filter(Files::isRegularFile);
  }

  private Path shelf(Sha256 content) {
    return folder.resolve(content.hex().substring(0, 2));
  }

  private Path place(Sha256 content) {
    return shelf(content).resolve(content.hex());
  }

  private Path coming(String name) throws IOException {
    return Files.createDirectories(folder.resolve(COMING)).resolve(name);
  }

  /** Takes in a file, which stays where it is. */
  public Sha256 take(Path file) throws IOException {
    Sha256 content = Sha256.of(file);
    if (file(content).isPresent()) {
      return content;
    }
    try (InputStream in = Files.newInputStream(file)) {
      return take(in);
    }
  }

  /** Takes in all that comes. */
  Sha256 take(InputStream in) throws IOException {
    Path part = coming(UUID.randomUUID().toString());
    try {
      Sha256 content;
      try (OutputStream out = Files.newOutputStream(part, StandardOpenOption.CREATE_NEW)) {
        content = Sha256.copied(in, out);
      }
      settle(part, content);
      return content;
    } finally {
      Files.deleteIfExists(part);
    }
  }

  /** How much of a content is there already, bytes. */
  public long arrived(Sha256 content) throws IOException {
    Optional<Path> whole = file(content);
    Path part = whole.isPresent() ? whole.get() : coming(content.hex());
    return Files.exists(part) ? Files.size(part) : 0;
  }

  /**
   * Takes a piece of a content. What was taken before the line was cut stays, and the rest can come
   * later, also after a restart.
   *
   * @param length of all of it, bytes
   * @param from how many bytes go before this piece; where fewer are there, nothing is taken
   * @param in the piece; where it breaks off, what came is kept and told
   */
  public Arrival receive(Sha256 content, long length, long from, InputStream in)
      throws IOException {
    if (!busy.add(content)) {
      return new Arrival.Busy();
    }
    try {
      if (file(content).isPresent()) {
        return new Arrival.Whole();
      }
      long there = arrived(content);
      if (from < 0 || from > there) {
        return new Arrival.Partly(there);
      }
      Path part = coming(content.hex());
      append(part, length, from, in);
      long now = Files.size(part);
      if (now < length) {
        return new Arrival.Partly(now);
      }
      if (now > length || !Sha256.of(part).equals(content)) {
        Files.delete(part);
        return new Arrival.Other();
      }
      settle(part, content);
      return new Arrival.Whole();
    } finally {
      busy.remove(content);
    }
  }

  /** One byte more than announced is taken, so that too much is seen to be. */
  private static void append(Path part, long length, long from, InputStream in) throws IOException {
    try (FileChannel channel =
        FileChannel.open(part, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
      channel.truncate(from);
      channel.position(from);
      try {
        channel.transferFrom(Channels.newChannel(in), from, Math.max(0, length - from) + 1);
      } finally {
        channel.force(true);
      }
    }
  }

  /** Gives a file that is whole its name, once the disk has it. */
  private void settle(Path part, Sha256 content) throws IOException {
    try (FileChannel channel = FileChannel.open(part, StandardOpenOption.WRITE)) {
      channel.force(true);
    }
    Path place = place(content);
    Path shelf = Files.createDirectories(shelf(content));
    Files.move(part, place, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    settleNames(shelf);
    settleNames(folder);
  }

  /** Waits until the disk has the names in a folder. */
  private static void settleNames(Path folder) throws IOException {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (AccessDeniedException e) {
      // Windows does not open folders; there the system keeps a journal of names.
    }
  }
}
