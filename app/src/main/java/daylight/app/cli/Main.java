package daylight.app.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/**
 * The command line's first word: its version, and its help where nothing is asked. Exit codes: 0
 * done, 1 an error while working, 2 wrong use.
 */
@Command(
    name = "daylight",
    mixinStandardHelpOptions = true,
    version = "Daylight 1.0-SNAPSHOT",
    description = "From what was measured on site to where a buried drain runs and how it fares.")
public final class Main implements Runnable {
  private Main() {}

  /** Runs the command that the words name and leaves with its exit code. */
  public static void main(String[] words) {
    System.exit(new CommandLine(new Main()).execute(words));
  }

  @Override
  public void run() {
    CommandLine.usage(this, System.out);
  }
}
