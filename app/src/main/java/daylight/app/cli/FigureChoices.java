package daylight.app.cli;

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

  @Option(names = "--json", description = "Print one JSON object instead of sentences.")
  private boolean json;

  /** What was typed, ready to be read option by option. */
  Given given() {
    Given given = new Given();
    if (units != null) {
      Choices.UnitsWord word = Choices.UnitsWord.of(units.strip().toLowerCase(Locale.ROOT));
      if (word == null) {
        given.complain("--units", "cli.option.units", Given.text(units));
      } else {
        given.show(word.shown());
      }
    }
    return given;
  }

  boolean json() {
    return json;
  }

  FigureConsole console(@Nullable CommandSpec spec, Given given) {
    return FigureConsole.of(spec, json, given);
  }
}
