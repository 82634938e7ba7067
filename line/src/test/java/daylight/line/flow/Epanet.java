package daylight.line.flow;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;

/**
 * EPANET, the public solver of water networks, as the npm package epanet-js in a version that is
 * pinned with its digest. It is brought by npm when a test first asks for it, and never shipped.
 */
final class Epanet {
  private static final Path FROM = Path.of("src", "test", "epanet");
  private static final Path TO = Path.of("target", "epanet");
  private static final List<String> FILES =
      List.of("package.json", "package-lock.json", "solve.mjs");

  private Epanet() {}

  /** The flow in the link P of each network, in its own unit. */
  static List<Double> flows(List<String> networks) throws IOException, InterruptedException {
    bring();
    String cases =
        networks.stream()
            .map(text -> '"' + text.replace("\n", "\\n") + '"')
            .collect(Collectors.joining(",", "[", "]"));
    Path in = Files.writeString(TO.resolve("cases.json"), cases);
    Path out = TO.resolve("flows.json");
    run(
        new ProcessBuilder("node", "solve.mjs")
            .redirectInput(in.toFile())
            .redirectOutput(out.toFile()));
    String flows = Files.readString(out);
    return Arrays.stream(flows.substring(1, flows.length() - 1).split(","))
        .map(Double::valueOf)
        .toList();
  }

  private static void bring() throws IOException, InterruptedException {
    Files.createDirectories(TO);
    for (String file : FILES) {
      Files.write(TO.resolve(file), Files.readAllBytes(FROM.resolve(file)));
    }
    if (!Files.exists(TO.resolve("node_modules").resolve("epanet-js"))) {
      run(
          new ProcessBuilder("npm", "ci", "--no-audit", "--no-fund")
              .redirectOutput(TO.resolve("npm.log").toFile()));
    }
  }

  private static void run(ProcessBuilder builder) throws IOException, InterruptedException {
    Path errors = TO.resolve("errors.log");
    Process process = builder.directory(TO.toFile()).redirectError(errors.toFile()).start();
    if (!process.waitFor(5, TimeUnit.MINUTES) || process.exitValue() != 0) {
      process.destroyForcibly();
      String said = new String(Files.readAllBytes(errors), StandardCharsets.UTF_8);
      throw new AssertionError(
          "needs node and npm (./check --install brings them): " + builder.command() + " " + said);
    }
  }
}
