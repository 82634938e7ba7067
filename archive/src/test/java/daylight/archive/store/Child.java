package daylight.archive.store;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A program of its own, that can be killed or put where there is no room. */
final class Child {
  private static final File ERRORS = new File("target", "child.txt");

  private Child() {}

  /** How a class is run with the classes of this one. */
  static List<String> command(Class<?> main, String... words) {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "--enable-native-access=ALL-UNNAMED",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                main.getName()));
    command.addAll(List.of(words));
    return command;
  }

  /** Lets it run to its end and returns the lines that it said. */
  static List<String> lines(List<String> command) throws IOException, InterruptedException {
    Process child = new ProcessBuilder(command).redirectError(ERRORS).start();
    List<String> lines;
    try (var said = child.inputReader()) {
      lines = said.lines().toList();
    }
    int code = child.waitFor();
    if (code != 0) {
      throw new IOException(
          "ended with " + code + ": " + lines + Files.readString(ERRORS.toPath()));
    }
    return lines;
  }

  /** Lets it run until it said something and some time more, kills it, returns the whole lines. */
  static List<String> killed(Path said, int milliseconds, Class<?> main, String... words)
      throws IOException, InterruptedException {
    Process child =
        new ProcessBuilder(command(main, words))
            .redirectOutput(said.toFile())
            .redirectError(ERRORS)
            .start();
    try {
      while (Files.size(said) == 0 && child.isAlive()) {
        Thread.sleep(20);
      }
      Thread.sleep(milliseconds);
    } finally {
      child.destroyForcibly().waitFor();
    }
    String text = Files.readString(said);
    Files.delete(said);
    // A line without its end was not said.
    return text.substring(0, text.lastIndexOf('\n') + 1).lines().toList();
  }
}
