package daylight.app.cli;

import daylight.archive.Bundled;
import daylight.archive.DataReader;
import daylight.archive.ReadData;
import daylight.line.book.Catalogue;
import daylight.line.measure.Shown;
import java.nio.file.Path;
import java.util.function.ToIntFunction;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Kinds of finding of one's own, for commands that only read and write a book. */
final class OwnKinds {
  @Option(
      names = "--catalogue",
      paramLabel = "FILE",
      description = "Your own kinds of finding beside those of Daylight.")
  private @Nullable Path catalogue;

  /** Works with them; says what is wrong with the file where it cannot be used. */
  int with(Console console, ToIntFunction<Catalogue> work) {
    if (catalogue == null) {
      return work.applyAsInt(Bundled.catalogue());
    }
    ReadData<Catalogue> read = DataReader.catalogue(catalogue, Bundled.catalogue());
    Catalogue kinds = read.value();
    return kinds == null
        ? console.refused(read.complaints(), Shown.METRES)
        : work.applyAsInt(kinds);
  }
}
