package daylight.app.cli;

import daylight.app.Job;
import daylight.line.course.Line;
import daylight.report.Handout;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A calculation about one place of a field book: options in, a figure or complaints out. */
abstract class BookFigure implements Callable<Integer> {
  @Parameters(
      paramLabel = "BOOK",
      description = "A field book, or a folder that holds field-book.yaml.")
  private Path book = Path.of("field-book.yaml");

  @Option(
      names = "--at",
      paramLabel = "PLACE",
      required = true,
      description = "The label of a finding or locate, or a place: REACH:DISTANCE, as R1:12.5 m.")
  private String at = "";

  @Mixin private FigureChoices choices = new FigureChoices();

  @Spec private @Nullable CommandSpec spec;

  /** Reads the options of its own, before the book is answered; complaints go there. */
  abstract void read(Given given);

  /**
   * What comes out.
   *
   * @return null where an option names nothing in this book
   */
  abstract @Nullable Figured figured(Given given, Handout handout);

  /** The place that it is about; empty, with a complaint, where it is nowhere. */
  final Optional<PlaceWritten> at(Given given, Line line) {
    return PlaceWritten.of(given, line, "--at", at);
  }

  @Override
  public final Integer call() {
    Given given = choices.given();
    read(given);
    if (!given.sound()) {
      return choices.console(spec, given).misunderstood();
    }
    return switch (Job.answerWithoutFootage(book, choices.settings().in(Spoken.chosen(spec)))) {
      case Job.Outcome.Refused refused -> Console.of(spec, choices.json()).refused(refused);
      case Job.Outcome.Answered(Handout handout, var _, var _, var _, var _) -> {
        given.usually(handout.shown());
        Figured figured = figured(given, handout);
        FigureConsole console = choices.console(spec, given);
        yield figured == null || !given.sound() ? console.misunderstood() : console.say(figured);
      }
    };
  }
}
