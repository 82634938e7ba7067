package daylight.app.track;

import daylight.footage.codec.Footage;
import daylight.footage.counter.CounterReader;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Which reader of counters this is: a digest of what it is made of and of the version of the
 * library that decodes for it, so that nobody can forget to count a version up.
 */
final class ReaderVersion {
  private static final String ROOM = "daylight/footage";
  private static final int LENGTH = 16;
  private static final Optional<String> OURS = made();

  private ReaderVersion() {}

  /** Of the reader that is running; empty where that cannot be told. */
  static Optional<String> ours() {
    return OURS;
  }

  private static Optional<String> made() {
    CodeSource source = CounterReader.class.getProtectionDomain().getCodeSource();
    if (source == null) {
      return Optional.empty();
    }
    try {
      Path place = Path.of(source.getLocation().toURI());
      if (Files.isDirectory(place)) {
        return Optional.of(digest(place.resolve(ROOM)));
      }
      try (FileSystem jar = FileSystems.newFileSystem(place)) {
        return Optional.of(digest(jar.getPath("/" + ROOM)));
      }
    } catch (IOException | URISyntaxException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private static String digest(Path room) throws IOException {
    MessageDigest digest = sha256();
    digest.update(Footage.library().getBytes(StandardCharsets.UTF_8));
    try (Stream<Path> walk = Files.walk(room)) {
      List<Path> files =
          walk.filter(Files::isRegularFile)
              .filter(file -> !room.relativize(file).startsWith("scene"))
              .sorted((a, b) -> a.toString().compareTo(b.toString()))
              .toList();
      for (Path file : files) {
        digest.update(Files.readAllBytes(file));
      }
    }
    return HexFormat.of().formatHex(digest.digest()).substring(0, LENGTH);
  }

  static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
