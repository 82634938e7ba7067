package daylight.archive;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Map;
import java.util.NavigableSet;
import java.util.SortedMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Puts results down whole or not at all. They are written beside their place and moved there by
 * renaming, so that whoever looks sees the old results or the new ones, and between the two renames
 * for an instant none, never half.
 *
 * <p>A folder is only taken when it is not there, empty, or holds earlier results and nothing else:
 * a file {@value #LIST} that names exactly what lies beside it. Anything else is left untouched.
 */
public final class ResultFolder {
  /** The file that makes a folder one of results: the names of the others, one a line. */
  static final String LIST = "results.list";

  private ResultFolder() {}

  /** What the system said, without the name of the exception it said it by. */
  private static String said(Exception e) {
    Throwable cause = e instanceof UncheckedIOException && e.getCause() != null ? e.getCause() : e;
    String reason = cause instanceof FileSystemException file ? file.getReason() : null;
    if (reason != null) {
      return reason;
    }
    return switch (cause) {
      case AccessDeniedException _ -> "permission denied";
      case NoSuchFileException _ -> "no such folder";
      case FileAlreadyExistsException _ -> "a file is in its way";
      default -> String.valueOf(cause.getMessage());
    };
  }

  /** Why a folder was not taken. */
  public enum Refusal {
    /** It is a file. */
    NOT_A_FOLDER,
    /** It holds something that is not of earlier results. */
    HOLDS_OTHER_FILES,
    /** It could not be written. */
    NOT_WRITABLE
  }

  /** What became of the results. */
  public sealed interface Outcome {
    /** They lie in the folder. */
    record Written(Path folder) implements Outcome {}

    /** Whoever filled it did not want the results any more; nothing changed. */
    record NotWanted() implements Outcome {}

    /**
     * Nothing changed.
     *
     * @param what the file that stood in the way, or what the system said
     */
    record Refused(Refusal reason, String what) implements Outcome {}
  }

  /**
   * Puts files into a folder in place of earlier results.
   *
   * @param files by name relative to the folder, with {@code /} between folders; none may lead out
   * @throws IllegalArgumentException for a name that leads out or is {@value #LIST}
   */
  public static Outcome write(Path folder, SortedMap<String, byte[]> files) {
    return write(folder, files, room -> true);
  }

  /** Who fills a folder with files that are too large for memory. */
  public interface Filler {
    /**
     * Writes files beside those that are there already.
     *
     * @return whether the results are wanted; false leaves the place as it was
     */
    boolean fill(Room room) throws IOException;
  }

  /**
   * Where a filler writes: files of the results that nobody sees before all are there.
   *
   * @param folder where they lie until then
   */
  public record Room(Path folder, NavigableSet<String> names) {
    /**
     * Where to write a file of that name; only its folder is made. A file that is not there in the
     * end is not of the results.
     *
     * @throws IllegalArgumentException for a name that leads out, is {@value #LIST} or is taken
     */
    public Path place(String name) throws IOException {
      requireInside(name);
      if (!names.add(name)) {
        throw new IllegalArgumentException("two results of one name: " + name);
      }
      Path path = folder.resolve(name);
      Files.createDirectories(path.resolveSibling("."));
      return path;
    }

    /** Writes a file of that name. */
    public void write(String name, byte[] bytes) throws IOException {
      writeThrough(place(name), bytes);
    }
  }

  /**
   * The same with files of any size, each written where it will be moved from as it is, so that
   * none passes through memory. Whether the folder can be taken is known before anything is made.
   */
  public static Outcome write(Path folder, SortedMap<String, byte[]> files, Filler filler) {
    files.keySet().forEach(ResultFolder::requireInside);
    try {
      Path given = folder.toAbsolutePath().normalize();
      Path target = Files.exists(given) ? given.toRealPath() : given;
      Path old = target.resolveSibling("." + target.getFileName() + ".old");
      takeUp(old, target);
      Outcome.Refused refused = refusal(target);
      if (refused != null) {
        return refused;
      }
      return replace(target, old, files, filler)
          ? new Outcome.Written(folder)
          : new Outcome.NotWanted();
    } catch (IOException | UncheckedIOException e) {
      return new Outcome.Refused(Refusal.NOT_WRITABLE, said(e));
    }
  }

  /** Puts earlier results back that a process killed between the two renames left aside. */
  private static void takeUp(Path old, Path target) throws IOException {
    if (Files.isDirectory(old) && !Files.exists(target)) {
      Files.move(old, target, StandardCopyOption.ATOMIC_MOVE);
    }
    remove(old);
  }

  private static Outcome.@Nullable Refused refusal(Path target) throws IOException {
    if (!Files.exists(target)) {
      return null;
    }
    if (!Files.isDirectory(target)) {
      return new Outcome.Refused(Refusal.NOT_A_FOLDER, target.toString());
    }
    NavigableSet<String> foreign = foreign(target);
    return foreign.isEmpty()
        ? null
        : new Outcome.Refused(Refusal.HOLDS_OTHER_FILES, foreign.first());
  }

  private static boolean replace(
      Path target, Path old, SortedMap<String, byte[]> files, Filler filler) throws IOException {
    long process = ProcessHandle.current().pid();
    Path fresh = target.resolveSibling("." + target.getFileName() + ".new-" + process);
    try {
      Files.createDirectories(fresh);
      Room room = new Room(fresh, new TreeSet<>());
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        room.write(file.getKey(), file.getValue());
      }
      if (!filler.fill(room)) {
        return false;
      }
      list(room);
      swap(fresh, target, old);
    } finally {
      remove(fresh);
    }
    remove(old);
    return true;
  }

  private static void requireInside(String name) {
    boolean inside = name.matches("[^/\\\\:]+(/[^/\\\\:]+)*") && !name.equals(LIST);
    if (!inside || ("/" + name + "/").contains("/../")) {
      throw new IllegalArgumentException("a result must lie in its folder, was " + name);
    }
  }

  /** What lies in a folder without belonging to earlier results. */
  private static NavigableSet<String> foreign(Path target) throws IOException {
    NavigableSet<String> found = new TreeSet<>();
    try (Stream<Path> walk = Files.walk(target)) {
      walk.filter(path -> !path.equals(target) && !isFullFolder(path))
          .forEach(path -> found.add(target.relativize(path).toString().replace('\\', '/')));
    }
    Path list = target.resolve(LIST);
    if (Files.isRegularFile(list)) {
      found.remove(LIST);
      Files.readAllLines(list).forEach(found::remove);
    }
    return found;
  }

  /** A folder with something in it is told by what is in it; a link is something by itself. */
  private static boolean isFullFolder(Path path) {
    if (!Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    try (Stream<Path> within = Files.list(path)) {
      return within.findAny().isPresent();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What lies there in the end, as the list that makes it a folder of results. */
  private static void list(Room room) throws IOException {
    Path fresh = room.folder();
    room.names().removeIf(name -> !Files.exists(fresh.resolve(name)));
    String list = String.join("\n", room.names()) + "\n";
    writeThrough(fresh.resolve(LIST), list.getBytes(StandardCharsets.UTF_8));
    settle(fresh);
  }

  /** Waits until the disk has a folder's own entries, on systems where a folder can be opened. */
  private static void settle(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      // Windows opens no folders; there the renames are settled by the file system's own journal.
    }
  }

  /** Writes a file and waits until the disk has it. */
  private static void writeThrough(Path path, byte[] bytes) throws IOException {
    try (FileChannel channel =
        FileChannel.open(path, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      ByteBuffer rest = ByteBuffer.wrap(bytes);
      while (rest.hasRemaining()) {
        channel.write(rest);
      }
      channel.force(true);
    }
  }

  private static void swap(Path fresh, Path target, Path old) throws IOException {
    boolean replaced = Files.exists(target);
    if (replaced) {
      Files.move(target, old, StandardCopyOption.ATOMIC_MOVE);
    }
    try {
      Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException e) {
      if (replaced) {
        Files.move(old, target, StandardCopyOption.ATOMIC_MOVE);
      }
      throw e;
    }
    settle(target.resolveSibling("."));
  }

  private static void remove(Path folder) throws IOException {
    if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      Files.walkFileTree(folder, new Removal());
    }
  }

  private static final class Removal extends SimpleFileVisitor<Path> {
    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
      Files.delete(file);
      return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult postVisitDirectory(Path folder, @Nullable IOException e)
        throws IOException {
      Files.delete(folder);
      return FileVisitResult.CONTINUE;
    }
  }
}
