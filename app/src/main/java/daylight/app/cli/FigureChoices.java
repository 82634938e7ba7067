package daylight.app.cli;

import daylight.app.Job;
import daylight.app.RuleChoice;
import daylight.archive.Bundled;
import daylight.archive.DataReader;
import daylight.archive.ReadData;
import daylight.line.book.Priors;
import daylight.line.measure.Argument;
import daylight.line.measure.Complaint;
import daylight.line.measure.Gravity;
import daylight.line.measure.Statement;
import java.nio.file.Path;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/** The choices that every calculation by itself has. */
final class FigureChoices {
  @Option(
      names = "--units",
      paramLabel = "UNITS",
      description = "Show distances in feet-inches, feet or metres; default: as you wrote them.")
  private @Nullable String units;

  @Option(
      names = "--priors",
      paramLabel = "FILE",
      description = "Your own figures for how good each kind of measurement is.")
  private @Nullable Path priors;

  @Option(names = "--json", description = "Print one JSON object instead of sentences.")
  private boolean json;

  /** What was typed, ready to be read option by option. */
  Given given() {
    Given given = new Given();
    if (units != null) {
      Manner.UnitsWord word = Manner.UnitsWord.of(units.strip().toLowerCase(Locale.ROOT));
      if (word == null) {
        given.complain("--units", "cli.option.units", Given.text(units));
      } else {
        given.show(word.shown());
      }
    }
    return given;
  }

  /** What is usual for each kind of measurement: ours, under those of the file that was named. */
  Priors priors(Given given) {
    Priors ours = Bundled.priors();
    Path own = priors;
    if (own == null) {
      return ours;
    }
    return taken(given, "--priors", DataReader.priors(own, ours), ours);
  }

  /** What a file of data that an option named holds; what is wrong in it is complained of. */
  static <T> T taken(Given given, String option, ReadData<T> read, T otherwise) {
    for (Complaint complaint : read.complaints()) {
      if (complaint.code().gravity() == Gravity.STOPS) {
        given.complain(
            option,
            "cli.option.in_file",
            new Argument.Text(String.valueOf(complaint.place().file())),
            new Argument.Number(complaint.place().line()),
            new Argument.Said(new Statement(complaint.code(), complaint.arguments())));
      }
    }
    T found = read.value();
    return found == null ? otherwise : found;
  }

  /** How a book is answered for a calculation about it. */
  Job.Settings settings() {
    return new Job.Settings(null, null, null, RuleChoice.usualOver(priors), null);
  }

  boolean json() {
    return json;
  }

  FigureConsole console(@Nullable CommandSpec spec, Given given) {
    return FigureConsole.of(spec, json, given);
  }
}
