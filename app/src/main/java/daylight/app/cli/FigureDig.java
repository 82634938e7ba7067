package daylight.app.cli;

import daylight.app.Job;
import daylight.line.book.Priors;
import daylight.line.course.Line;
import daylight.line.course.PlacedFinding;
import daylight.line.dig.Dig;
import daylight.line.dig.DigLimits;
import daylight.line.dig.DigTarget;
import daylight.line.dig.Digger;
import daylight.line.measure.Reading;
import daylight.report.Handout;
import daylight.report.words.DigWords;
import java.nio.file.Path;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Where to open the ground for one place of a line, and what must be known before that. */
@Command(
    name = "dig",
    mixinStandardHelpOptions = true,
    description = {
      "Where to dig for a finding or a place of a field book: the ticket first, then two tapes that",
      "find the spot without paint, how deep, what to open, which marks are near and whose ground it",
      "is under. Leaves with 1 where there is no good ticket or something is not known."
    })
final class FigureDig implements Callable<Integer> {
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

  @Option(
      names = "--tolerance",
      paramLabel = "LENGTH",
      description = "Room to work on every side of where the pipe may be; default: 0.30 m.")
  private @Nullable String tolerance;

  @Option(
      names = "--clear-of",
      paramLabel = "LENGTH",
      description = "How near to a building, well or tree is too near; default: 10 ft.")
  private @Nullable String clearOf;

  @Option(
      names = "--on",
      paramLabel = "DAY",
      description = "The day of the dig, as 2026-04-28; default: today at the site.")
  private @Nullable String on;

  @Mixin private FigureChoices choices = new FigureChoices();

  @Spec private @Nullable CommandSpec spec;

  @Override
  public Integer call() {
    Given given = choices.given();
    Reading margin = given.positiveLength("--tolerance", tolerance);
    Reading clear = given.positiveLength("--clear-of", clearOf);
    LocalDate day = day(given);
    if (!given.sound()) {
      return choices.console(spec, given).misunderstood();
    }
    return switch (Job.answerWithoutFootage(book, choices.settings())) {
      case Job.Outcome.Refused refused -> Console.of(spec, choices.json()).refused(refused);
      case Job.Outcome.Answered(Handout handout) -> {
        given.usually(handout.shown());
        DigLimits limits = handout.rules().limits().dig();
        limits = margin == null ? limits : limits.withMargin(margin.value());
        limits = clear == null ? limits : limits.withClearance(clear.value());
        LocalDate dug =
            day == null ? LocalDate.now(Clock.system(handout.book().site().zone())) : day;
        yield say(given, handout, limits, dug);
      }
    };
  }

  private @Nullable LocalDate day(Given given) {
    if (on == null) {
      return null;
    }
    try {
      return LocalDate.parse(on.strip());
    } catch (DateTimeException e) {
      given.complain("--on", "figure.dig.day", Given.text(on));
      return null;
    }
  }

  private int say(Given given, Handout handout, DigLimits limits, LocalDate day) {
    Line line = handout.line();
    Optional<PlaceWritten> written = PlaceWritten.of(given, line, "--at", at);
    if (written.isEmpty()) {
      return choices.console(spec, given).misunderstood();
    }
    PlacedFinding finding = written.get().finding();
    Priors priors = handout.rules().priors();
    Dig dig =
        finding == null
            ? Digger.target(handout.book(), line, priors, limits, written.get().place(), day)
            : Digger.target(handout.book(), line, priors, limits, finding, day);
    Figured figured = new Figured("dig");
    switch (dig) {
      case DigTarget target ->
          DigWords.of(target, line, handout.book().site(), handout.answers().stops(), limits)
              .forEach(figured::row);
      case Dig.Unknown(var missing) -> figured.saying(missing).contradicted();
    }
    return choices.console(spec, given).say(figured);
  }
}
