package daylight.app.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * Calendars read by a reader that is not ours: the npm package ical.js in a version that is pinned
 * with its digest. It is brought by npm when a test first asks for it, and never shipped.
 */
final class Calendar {
  private static final Path FROM = Path.of("src", "test", "ical");
  private static final Path TO = Path.of("target", "ical");
  private static final List<String> FILES =
      List.of("package.json", "package-lock.json", "read.mjs");

  private Calendar() {}

  /** What is in a file: its version, its name and its events. */
  static JsonNode read(Path file) throws IOException {
    Files.createDirectories(TO);
    for (String one : FILES) {
      Files.write(TO.resolve(one), Files.readAllBytes(FROM.resolve(one)));
    }
    if (!Files.exists(TO.resolve("node_modules").resolve("ical.js"))) {
      run(
          new ProcessBuilder("npm", "ci", "--no-audit", "--no-fund")
              .redirectOutput(TO.resolve("npm.log").toFile()));
    }
    Path out = TO.resolve("events.json");
    run(
        new ProcessBuilder("node", "read.mjs")
            .redirectInput(file.toFile())
            .redirectOutput(out.toFile()));
    return new JsonMapper().readTree(out.toFile());
  }

  private static void run(ProcessBuilder builder) throws IOException {
    Path errors = TO.resolve("errors.log");
    Process process = builder.directory(TO.toFile()).redirectError(errors.toFile()).start();
    try {
      if (!process.waitFor(5, TimeUnit.MINUTES) || process.exitValue() != 0) {
        process.destroyForcibly();
        throw new AssertionError(
            "needs node and npm (./check --install brings them): "
                + builder.command()
                + " "
                + Files.readString(errors));
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError(e);
    }
  }
}
