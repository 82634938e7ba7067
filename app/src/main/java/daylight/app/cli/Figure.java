package daylight.app.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/**
 * Every calculation by itself. A new one is a class of its own beside this one, and a row in the
 * list of {@link AllCommands}.
 */
@Command(
    name = "figure",
    mixinStandardHelpOptions = true,
    description = {
      "One calculation by itself: a few measurements in, a figure with its uncertainty out. Give",
      "quantities as you write them, with their unit: 4' 7\", 4 ft 7 in, 1.40 m. Nothing is written.",
      "Every result says how far off it may be, 19 times of 20."
    })
final class Figure implements Runnable {
  @Spec private @Nullable CommandSpec spec;

  @Override
  public void run() {
    CommandSpec here = spec;
    if (here != null) {
      here.commandLine().usage(here.commandLine().getOut());
    }
  }
}
