package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

/** The command line for tests of other rooms. */
public final class Commands {
  private Commands() {}

  /** Runs a command that must succeed. */
  public static void run(Object... words) {
    Said said = Said.by(words);
    assertThat(said.code()).as(said.err()).isEqualTo(ExitCode.DONE);
  }
}
