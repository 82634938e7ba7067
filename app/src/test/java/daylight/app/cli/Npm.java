package daylight.app.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * Files read by packages that are not ours, in versions that are pinned with their digests. They
 * are brought by npm when a test first asks for them, and never shipped.
 */
final class Npm {
  private final Path from;
  private final Path to;
  private final String script;

  /**
   * @param folder under {@code src/test}, with a package and its lock
   * @param script in it, which reads its standard input and writes JSON
   */
  Npm(String folder, String script) {
    this.from = Path.of("src", "test", folder);
    this.to = Path.of("target", folder);
    this.script = script;
  }

  /** What the script says of a file. */
  JsonNode read(Path file) throws IOException {
    Files.createDirectories(to);
    for (String one : List.of("package.json", "package-lock.json", script)) {
      Files.write(to.resolve(one), Files.readAllBytes(from.resolve(one)));
    }
    // Written by npm when it is through; what was interrupted is brought anew.
    if (!Files.exists(to.resolve("node_modules").resolve(".package-lock.json"))) {
      run(
          new ProcessBuilder("npm", "ci", "--no-audit", "--no-fund")
              .redirectOutput(to.resolve("npm.log").toFile()));
    }
    Path out = to.resolve("said.json");
    run(
        new ProcessBuilder("node", script)
            .redirectInput(file.toFile())
            .redirectOutput(out.toFile()));
    return new JsonMapper().readTree(out.toFile());
  }

  private void run(ProcessBuilder builder) throws IOException {
    Path errors = to.resolve("errors.log");
    Process process = builder.directory(to.toFile()).redirectError(errors.toFile()).start();
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
