package daylight.app.web;

import daylight.archive.MediaFiles;
import daylight.footage.Make;
import daylight.footage.Watch;
import daylight.footage.codec.Footage;
import daylight.footage.codec.Opening;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Copies for the browser of recordings that it cannot play, made one after the other while people
 * look at the rest. They lie in a folder of their own beside the book and may be thrown away; a
 * recording that changed gets a new one.
 */
final class Proxies implements AutoCloseable {
  /** What comes after a book's name for the folder of its copies. */
  static final String FOLDER = "-proxies";

  private static final int LETTERS = 12;
  private static final int PATIENCE_SECONDS = 20;

  private final Map<Path, State> states = new ConcurrentHashMap<>();
  private final ExecutorService maker =
      Executors.newSingleThreadExecutor(
          work -> Thread.ofPlatform().daemon().name("proxies").unstarted(work));
  private volatile boolean closed;

  /** How far a copy is. */
  sealed interface State {
    /** It is there. */
    record Ready(Path file) implements State {}

    /** So much of it is written, from 0 to 1; 0 while others come first. */
    record Making(double share) implements State {}

    /** It could not be made, and what the system said. */
    record Failed(String why) implements State {}
  }

  /** The copy of a recording; where there is none it is begun. */
  State of(Path book, Recording recording) {
    try {
      Path file = place(book, recording);
      return states.compute(file, (place, before) -> looked(place, before, recording));
    } catch (IOException e) {
      return new State.Failed(String.valueOf(e.getMessage()));
    }
  }

  private State looked(Path file, @Nullable State before, Recording recording) {
    if (before instanceof State.Making || before instanceof State.Failed) {
      return before;
    }
    if (Files.isRegularFile(file)) {
      return new State.Ready(file);
    }
    if (closed) {
      return new State.Failed("");
    }
    maker.execute(() -> make(file, recording.file()));
    return new State.Making(0);
  }

  private void make(Path file, Path recording) {
    try {
      Files.createDirectories(file.resolveSibling("."));
      states.put(file, made(file, recording));
      forgetOthers(file);
    } catch (IOException e) {
      states.put(file, new State.Failed(String.valueOf(e.getMessage())));
    }
  }

  private State made(Path file, Path recording) throws IOException {
    Watch watch = watch(file);
    if (!(Footage.open(recording, watch) instanceof Opening.Opened(Footage footage))) {
      return new State.Failed("");
    }
    try (footage) {
      return footage.copy(file, Make.VP9_WEBM, watch)
          ? new State.Ready(file)
          : new State.Failed("");
    }
  }

  private Watch watch(Path file) {
    return new Watch() {
      @Override
      public void done(double share) {
        states.put(file, new State.Making(share));
      }

      @Override
      public boolean stopped() {
        return closed;
      }
    };
  }

  /** Copies of what the same recording was before. */
  private static void forgetOthers(Path file) throws IOException {
    String name = String.valueOf(file.getFileName());
    String own = name.substring(0, name.length() - LETTERS - ".webm".length());
    try (Stream<Path> all = Files.list(file.resolveSibling("."))) {
      List<Path> others =
          all.filter(
                  one -> {
                    String other = String.valueOf(one.getFileName());
                    return other.startsWith(own)
                        && other.substring(own.length()).matches("[0-9a-f]{12}\\.webm")
                        && !other.equals(name);
                  })
              .toList();
      for (Path other : others) {
        Files.deleteIfExists(other);
      }
    }
  }

  private static Path place(Path book, Recording recording) throws IOException {
    String name = String.valueOf(book.getFileName());
    int dot = name.lastIndexOf('.');
    String folder = (dot > 0 ? name.substring(0, dot) : name) + FOLDER;
    String seen =
        recording.media().file()
            + "|"
            + Files.size(recording.file())
            + "|"
            + Files.getLastModifiedTime(recording.file()).toMillis();
    String label = MediaFiles.plain(recording.media().label());
    return book.resolveSibling(folder).resolve(label + "-" + digest(seen) + ".webm");
  }

  private static String digest(String text) {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(hash).substring(0, LETTERS);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  /** Ends what is being made, and waits until nothing of it is left. */
  @Override
  public void close() {
    closed = true;
    maker.shutdown();
    try {
      maker.awaitTermination(PATIENCE_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
