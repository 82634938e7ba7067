package daylight.app.cli;

import daylight.app.Job;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The book, and the choices that every command about one has. */
final class Choices {
  @Parameters(
      paramLabel = "BOOK",
      description = "A field book, or a folder that holds field-book.yaml.")
  private Path book = Path.of("field-book.yaml");

  @Mixin private Manner manner = new Manner();

  @Option(
      names = "--visit",
      paramLabel = "LABEL",
      description = "Judge the findings of this visit; default: the last.")
  private @Nullable String visit;

  @Option(names = "--json", description = "Print one JSON object instead of sentences.")
  private boolean json;

  Path book() {
    return book;
  }

  boolean json() {
    return json;
  }

  /** What is wrong with the choices, all of it; null when nothing is. */
  @Nullable String wrong() {
    return manner.wrong();
  }

  Job.Settings settings(@Nullable CommandSpec spec) {
    return manner.settings(visit).in(Spoken.chosen(spec));
  }
}
