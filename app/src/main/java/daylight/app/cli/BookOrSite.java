package daylight.app.cli;

import daylight.archive.store.Archive;
import java.nio.file.Path;
import java.util.UUID;
import java.util.function.ToIntBiFunction;
import java.util.function.ToIntFunction;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/** What is to be answered: a field book, or with an archive a site of it. */
final class BookOrSite {
  @Option(
      names = "--archive",
      paramLabel = "DIR",
      description = "The folder of the archive that BOOK is a site of; -o is needed with it.")
  private @Nullable Path archive;

  @Mixin private Choices choices = new Choices();

  Choices choices() {
    return choices;
  }

  boolean isSite() {
    return archive != null;
  }

  /** Works on the one or the other; says so where there is no such site, or more than one. */
  int with(CommandSpec here, ToIntFunction<Path> book, ToIntBiFunction<Archive, UUID> site) {
    if (archive == null) {
      return book.applyAsInt(choices.book());
    }
    ArchiveChoice choice = ArchiveChoice.of(archive, choices.json());
    String named = choices.book().toString();
    return choice.open(
        here,
        false,
        open -> OneSite.of(here, choice, open, named, one -> site.applyAsInt(open, one.book())));
  }
}
