package daylight.app.cli;

import daylight.app.Job;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Before the van doors close. */
@Command(
    name = "leaving",
    mixinStandardHelpOptions = true,
    description = {
      "Before the van doors close: what contradicts what, and which of the owner's questions cannot",
      "be answered yet and what they want. Writes nothing."
    })
final class Leaving implements Callable<Integer> {
  @Mixin private Choices choices = new Choices();

  @Spec private @Nullable CommandSpec spec;

  @Override
  public Integer call() {
    Console console = Console.of(spec, choices.json());
    String wrong = choices.wrong();
    if (wrong != null) {
      return console.misunderstood(wrong);
    }
    return switch (Job.answerWithoutFootage(choices.book(), choices.settings(spec))) {
      case Job.Outcome.Refused refused -> console.refused(refused);
      case Job.Outcome.Answered answered -> console.leaving(answered);
    };
  }
}
