package daylight.app.track;

import daylight.footage.FrameTimes;
import daylight.footage.Watch;
import daylight.footage.codec.Footage;
import daylight.footage.counter.CounterReader;
import daylight.footage.counter.Found;
import daylight.footage.counter.Window;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What was read from recordings, kept so that it need not be read again. Everything in it can be
 * thrown away at any time; what does not have the very key and shape that is asked for is not
 * there, nor is a file of which any letter is no longer as it was written.
 */
public final class CounterCache {
  private static final String FORM = "daylight-counter,2";
  private static final String AUTO = "auto";

  private final @Nullable Path folder;

  /**
   * A cache in a folder, which need not be there yet.
   *
   * @param folder null keeps nothing
   */
  public CounterCache(@Nullable Path folder) {
    this.folder = folder;
  }

  /**
   * The usual one: where the system has people's caches (the XDG base directory specification 0.8
   * on Linux), or where the property {@code daylight.cache} says. A book's own folder stays as its
   * owner left it.
   */
  public static CounterCache usual() {
    String told = System.getProperty("daylight.cache");
    if (told != null) {
      return new CounterCache(told.isBlank() ? null : Path.of(told));
    }
    String home = System.getProperty("user.home", "");
    String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    String local = System.getenv("LOCALAPPDATA");
    String xdg = System.getenv("XDG_CACHE_HOME");
    Path base;
    if (system.startsWith("windows") && local != null) {
      base = Path.of(local);
    } else if (system.startsWith("mac")) {
      base = Path.of(home, "Library", "Caches");
    } else if (xdg != null && Path.of(xdg).isAbsolute()) {
      base = Path.of(xdg);
    } else {
      base = Path.of(home, ".cache");
    }
    return new CounterCache(base.resolve("daylight").resolve("counters"));
  }

  /** Whether there is anything at all, so that a recording need not be digested for nothing. */
  boolean isEmpty() {
    if (folder == null || !Files.isDirectory(folder)) {
      return true;
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.findAny().isEmpty();
    } catch (IOException e) {
      return true;
    }
  }

  /** What a counter reading is kept under: the recording, and where it was told to stand. */
  private record Key(String media, String profile) {
    static Key of(String media, @Nullable Window at) {
      return new Key(
          media,
          at == null ? AUTO : at.left() + "," + at.top() + "," + at.width() + "," + at.height());
    }

    private String file(String reader) {
      return media.substring(0, 32) + "-" + reader + "-" + profile.replace(',', '_') + ".csv";
    }

    private List<String> head(String reader) {
      return List.of(FORM, "media," + media, "reader," + reader, "profile," + profile);
    }
  }

  /**
   * What was read of a recording before; empty where nothing was, or where the file is not as
   * written.
   *
   * @param at where the counter was told to stand; null where it was looked for
   */
  Optional<Found> find(Seen media, @Nullable Window at) throws IOException {
    Optional<String> reader = ReaderVersion.ours();
    if (folder == null || reader.isEmpty()) {
      return Optional.empty();
    }
    Optional<Key> key = media.digest().map(digest -> Key.of(digest, at));
    return key.isEmpty() ? Optional.empty() : find(folder, key.get(), reader.get());
  }

  private static Optional<Found> find(Path folder, Key key, String reader) {
    try {
      Path file = folder.resolve(key.file(reader));
      return Files.isRegularFile(file)
          ? KeptCounter.read(Files.readAllLines(file), key.head(reader))
          : Optional.empty();
    } catch (IOException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /**
   * What the counter of a recording shows: as it was read before, else read now and kept.
   *
   * @param media the recording as it was before it was opened
   * @param at where the counter is told to stand, inside the picture; null to look for it
   * @param watch told how it goes where it has to be read
   */
  public Found read(Seen media, Footage footage, @Nullable Window at, Supplier<Watch> watch)
      throws IOException {
    Optional<Found> kept = find(media, at).filter(found -> isOf(found, footage.times()));
    if (kept.isPresent()) {
      return kept.get();
    }
    Found fresh = CounterReader.read(footage, at, watch.get());
    if (!(fresh instanceof Found.Stopped)) {
      keep(media, at, fresh);
    }
    return fresh;
  }

  /** Whether what was kept has just the frames of the recording, each at its time. */
  private static boolean isOf(Found found, FrameTimes times) {
    return !(found instanceof Found.Counter counter)
        || (counter.readings().size() == times.count()
            && IntStream.range(0, times.count())
                .allMatch(i -> counter.readings().get(i).seconds() == times.secondsOf(i)));
  }

  /** Keeps what was read; where that is not possible nothing is kept, and nothing is lost. */
  private void keep(Seen media, @Nullable Window at, Found found) throws IOException {
    Optional<String> reader = ReaderVersion.ours();
    Optional<String> digest =
        folder == null || reader.isEmpty() ? Optional.empty() : media.digest();
    if (folder != null && reader.isPresent() && digest.isPresent()) {
      Key key = Key.of(digest.get(), at);
      write(folder, key.file(reader.get()), KeptCounter.written(key.head(reader.get()), found));
    }
  }

  private static void write(Path folder, String name, List<String> lines) {
    try {
      Files.createDirectories(folder);
      Path fresh = Files.createTempFile(folder, "fresh-", ".csv");
      try {
        Files.write(fresh, lines);
        Files.move(
            fresh,
            folder.resolve(name),
            StandardCopyOption.ATOMIC_MOVE,
            StandardCopyOption.REPLACE_EXISTING);
      } finally {
        Files.deleteIfExists(fresh);
      }
    } catch (IOException e) {
      // A cache that cannot be written only costs time: the recording is read again.
    }
  }
}
