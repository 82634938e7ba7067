package daylight.app.track;

import daylight.footage.counter.Found;
import daylight.line.book.Kit;
import daylight.line.counter.Track;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What was read from recordings, kept so that it need not be read again. Everything in it can be
 * thrown away at any time; what does not have the very key and shape that is asked for is not
 * there.
 *
 * <p>One file a recording, comma-separated: head lines, then a line a frame, then how many.
 */
public final class CounterCache {
  private static final String FORM = "daylight-counter,1";
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

  /**
   * What a counter reading is kept under.
   *
   * @param media SHA-256 of the recording
   * @param profile where its counter was told to stand, or that nobody told
   */
  record Key(String media, String profile) {
    static Key of(String media, Kit.@Nullable Region at) {
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

  /** What was read under that key; empty where nothing was, or where the file is not as written. */
  Optional<ScreenCounter> find(Key key) {
    Optional<String> reader = ReaderVersion.ours();
    if (folder == null || reader.isEmpty()) {
      return Optional.empty();
    }
    try {
      Path file = folder.resolve(key.file(reader.get()));
      return Files.isRegularFile(file)
          ? read(Files.readAllLines(file), key.head(reader.get()))
          : Optional.empty();
    } catch (IOException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private static Optional<ScreenCounter> read(List<String> lines, List<String> head) {
    int at = head.size();
    if (lines.size() < at + 2 || !lines.subList(0, at).equals(head)) {
      return Optional.empty();
    }
    String[] first = lines.get(at).split(",", -1);
    if (first[0].equals("none") && first.length == 2 && lines.size() == at + 2) {
      return lines.get(at + 1).equals("end,0")
          ? Optional.of(new ScreenCounter.Untold(Found.Why.valueOf(first[1])))
          : Optional.empty();
    }
    List<String> rows = lines.subList(at + 1, lines.size() - 1);
    if (!first[0].equals("counter")
        || first.length != 3
        || !lines.getLast().equals("end," + rows.size())) {
      return Optional.empty();
    }
    List<Track.Sample> samples = new ArrayList<>();
    for (String row : rows) {
      String[] cells = row.split(",", -1);
      if (cells.length != 3) {
        return Optional.empty();
      }
      samples.add(
          new Track.Sample(finite(cells[0]), finite(cells[1]), Track.State.valueOf(cells[2])));
    }
    double step = finite(first[2]);
    // The track refuses times that do not rise.
    var track = new Track("", samples);
    return step > 0
        ? Optional.of(new ScreenCounter.Told(Boolean.parseBoolean(first[1]), step, track.samples()))
        : Optional.empty();
  }

  private static double finite(String text) {
    double value = Double.parseDouble(text);
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("not finite: " + text);
    }
    return value;
  }

  /** Keeps what was read; where that is not possible nothing is kept, and nothing is lost. */
  void keep(Key key, ScreenCounter counter) {
    Optional<String> reader = ReaderVersion.ours();
    if (folder == null || reader.isEmpty()) {
      return;
    }
    List<String> lines = new ArrayList<>(key.head(reader.get()));
    switch (counter) {
      case ScreenCounter.Untold(Found.Why why) -> {
        lines.add("none," + why.name());
        lines.add("end,0");
      }
      case ScreenCounter.Told told -> {
        lines.add("counter," + told.bare() + "," + told.step());
        told.samples()
            .forEach(one -> lines.add(one.seconds() + "," + one.counter() + "," + one.state()));
        lines.add("end," + told.samples().size());
      }
    }
    write(folder, key.file(reader.get()), lines);
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
