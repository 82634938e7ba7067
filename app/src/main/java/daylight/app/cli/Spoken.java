package daylight.app.cli;

import daylight.line.measure.Shown;
import daylight.report.words.Language;
import daylight.report.words.Words;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;

/**
 * In which language a command speaks. One option says it for all of them, wherever it stands on the
 * line; what a command is called, its options and its help stay English.
 */
final class Spoken {
  private Spoken() {}

  /** The language that was asked for; null where nobody asked. */
  static @Nullable Language chosen(@Nullable CommandSpec spec) {
    return spec != null && spec.root().userObject() instanceof Main main ? main.language() : null;
  }

  /** The same; English where nobody asked. */
  static Language in(@Nullable CommandSpec spec) {
    Language chosen = chosen(spec);
    return chosen == null ? Language.EN : chosen;
  }

  /** Words of a command that shows no quantities of a book. */
  static Words plain(@Nullable CommandSpec spec) {
    return Words.of(in(spec), Shown.METRES);
  }
}
