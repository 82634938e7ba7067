package daylight.app;

import daylight.archive.Sha256;
import daylight.archive.seal.Bundle;
import daylight.footage.codec.Footage;
import daylight.line.answer.Rules;
import daylight.report.Report;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Which program this is. */
public final class Program {
  /** As it calls itself. */
  public static final String VERSION = "1.0-SNAPSHOT";

  private static final String OURS = "daylight";

  /** One of each room. */
  private static final List<Class<?>> ROOMS =
      List.of(Rules.class, Footage.class, Bundle.class, Report.class, Program.class);

  private Program() {}

  /** A digest of all it is made of, its data too; empty where that cannot be told. */
  static Optional<Sha256> digest() {
    return Held.DIGEST;
  }

  /** Made once, when first asked for. */
  private static final class Held {
    static final Optional<Sha256> DIGEST = made();
  }

  private static Optional<Sha256> made() {
    StringBuilder lines = new StringBuilder();
    try {
      for (Class<?> room : ROOMS) {
        CodeSource source = room.getProtectionDomain().getCodeSource();
        if (source == null) {
          return Optional.empty();
        }
        Path place = Path.of(source.getLocation().toURI());
        if (Files.isDirectory(place)) {
          add(place.resolve(OURS), lines);
        } else {
          try (FileSystem jar = FileSystems.newFileSystem(place)) {
            add(jar.getPath("/" + OURS), lines);
          }
        }
      }
      return Optional.of(Sha256.of(lines.toString()));
    } catch (IOException | URISyntaxException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private static void add(Path folder, StringBuilder lines) throws IOException {
    List<Path> files;
    try (Stream<Path> walked = Files.walk(folder)) {
      files =
          walked
              .filter(Files::isRegularFile)
              .sorted(Comparator.comparing(one -> folder.relativize(one).toString()))
              .toList();
    }
    for (Path file : files) {
      lines.append(Sha256.of(file).hex()).append(' ').append(folder.relativize(file)).append('\n');
    }
  }
}
