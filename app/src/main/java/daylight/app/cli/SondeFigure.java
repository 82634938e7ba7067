package daylight.app.cli;

import daylight.line.book.Priors;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** A calculation about the transmitter by itself: options in, a figure or complaints out. */
abstract class SondeFigure implements Callable<Integer> {
  @Mixin private FigureChoices choices = new FigureChoices();

  @Spec private @Nullable CommandSpec spec;

  /**
   * What comes out.
   *
   * @param given to read the options with; complaints go there
   * @param priors what is usual where no option says otherwise
   * @return null where an option that is needed is missing or wrong
   */
  abstract @Nullable Figured figured(Given given, Priors priors);

  @Override
  public final Integer call() {
    Given given = choices.given();
    Figured figured = figured(given, choices.priors(given));
    FigureConsole console = choices.console(spec, given);
    return figured == null || !given.sound() ? console.misunderstood() : console.say(figured);
  }
}
