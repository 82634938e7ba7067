package daylight.app.cli;

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
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Where to open the ground for one place of a line, and what must be known before that. */
@Command(
    name = "dig",
    mixinStandardHelpOptions = true,
    description = {
      "Where to dig for a finding or a place of a field book: the ticket first, then two tapes that",
      "find the spot without paint, how deep, what to open, which marks are near and whose ground it",
      "is under. Leaves with 1 where there is no good ticket or something is not known."
    })
final class FigureDig extends BookFigure {
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

  private @Nullable Reading margin;
  private @Nullable Reading clear;
  private @Nullable LocalDate day;

  @Override
  void read(Given given) {
    margin = given.positiveLength("--tolerance", tolerance);
    clear = given.positiveLength("--clear-of", clearOf);
    day = day(given);
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

  @Override
  @Nullable Figured figured(Given given, Handout handout) {
    Line line = handout.line();
    Optional<PlaceWritten> written = at(given, line);
    if (written.isEmpty()) {
      return null;
    }
    DigLimits limits = limits(handout);
    LocalDate dug = day == null ? LocalDate.now(Clock.system(handout.book().site().zone())) : day;
    PlacedFinding finding = written.get().finding();
    Priors priors = handout.rules().priors();
    Dig dig =
        finding == null
            ? Digger.target(handout.book(), line, priors, limits, written.get().place(), dug)
            : Digger.target(handout.book(), line, priors, limits, finding, dug);
    Figured figured = new Figured("dig");
    switch (dig) {
      case DigTarget target ->
          DigWords.of(target, line, handout.book().site(), handout.answers().stops(), limits)
              .forEach(figured::row);
      case Dig.Unknown(var missing) -> figured.saying(missing).contradicted();
    }
    return figured;
  }

  private DigLimits limits(Handout handout) {
    DigLimits limits = handout.rules().limits().dig();
    limits = margin == null ? limits : limits.withMargin(margin.value());
    return clear == null ? limits : limits.withClearance(clear.value());
  }
}
