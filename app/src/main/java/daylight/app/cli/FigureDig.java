package daylight.app.cli;

import daylight.app.Job;
import daylight.archive.Bundled;
import daylight.line.book.Place;
import daylight.line.course.Line;
import daylight.line.course.LocateFit;
import daylight.line.course.PlacedFinding;
import daylight.line.dig.Dig;
import daylight.line.dig.DigLimits;
import daylight.line.dig.DigTarget;
import daylight.line.dig.Digger;
import daylight.line.measure.Reading;
import daylight.report.Handout;
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
    return switch (Job.answerWithoutFootage(book, Job.Settings.USUAL)) {
      case Job.Outcome.Refused refused -> Console.of(spec, choices.json()).refused(refused);
      case Job.Outcome.Answered(Handout handout) -> {
        given.usually(handout.shown());
        DigLimits limits =
            DigLimits.usual(
                handout.rules().limits().trenchNotice(), handout.rules().limits().trenchProtect());
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
    Optional<PlacedFinding> finding =
        line.findings().stream()
            .filter(placed -> placed.finding().label().equals(at.strip()))
            .reduce((before, last) -> last);
    Optional<Place> place = finding.map(PlacedFinding::from).or(() -> place(given, line));
    if (place.isEmpty()) {
      if (given.sound()) {
        given.complain("--at", "figure.dig.nowhere", Given.text(at));
      }
      return choices.console(spec, given).misunderstood();
    }
    Dig dig =
        finding
            .map(f -> Digger.target(handout.book(), line, Bundled.priors(), limits, f, day))
            .orElseGet(
                () ->
                    Digger.target(
                        handout.book(), line, Bundled.priors(), limits, place.get(), day));
    Figured figured = new Figured("dig");
    switch (dig) {
      case DigTarget target -> new DigCard(figured, handout, limits).say(target);
      case Dig.Unknown(var missing) -> figured.saying(missing).contradicted();
    }
    return choices.console(spec, given).say(figured);
  }

  /** The place of a locate, or one written as reach and distance. */
  private Optional<Place> place(Given given, Line line) {
    for (LocateFit fit : line.locates()) {
      if (fit.entry().label().equals(at.strip())) {
        return Optional.of(fit.place());
      }
    }
    int colon = at.lastIndexOf(':');
    if (colon < 1 || line.findRun(at.substring(0, colon).strip()).isEmpty()) {
      return Optional.empty();
    }
    Reading distance = given.lengthFromZero("--at", at.substring(colon + 1).strip());
    return Optional.ofNullable(distance)
        .map(d -> new Place(at.substring(0, colon).strip(), d.value()));
  }
}
