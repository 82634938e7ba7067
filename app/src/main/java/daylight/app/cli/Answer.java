package daylight.app.cli;

import daylight.app.Job;
import daylight.archive.ResultFolder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The main job: a field book in, a folder of results out. */
@Command(
    name = "answer",
    mixinStandardHelpOptions = true,
    description = {
      "Answer a field book: where the line runs, whether it is clear, sound and draining, and what",
      "to do.",
      "",
      "Writes answers.json, line.geojson, plan.svg, profile.svg, strip.svg, report.html, report.pdf and",
      "the pictures taken from the footage into one folder, and under maps/ site.gpkg, site.kml (where",
      "satellite fixes tie the site to the earth), site.dxf, site.xlsx, csv/ and dictionary.html, which",
      "says what is in these: whole or not at all. The same book gives the same bytes.",
      "",
      "With --archive, BOOK is a site of the archive: part of its name or address that no other has,",
      "or the identity of its book. Recordings and photographs are those that are kept of it."
    })
final class Answer implements Callable<Integer> {
  @Option(
      names = {"-o", "--out"},
      paramLabel = "DIR",
      description = "Folder for the results; default: the book's name with -answered, beside it.")
  private @Nullable Path out;

  @Mixin private BookOrSite what = new BookOrSite();

  @Spec private @Nullable CommandSpec spec;

  @Override
  public Integer call() {
    CommandSpec here = ArchiveChoice.known(spec);
    Choices choices = what.choices();
    Console console = Console.of(here, choices.json());
    String wrong = choices.wrong();
    if (wrong != null) {
      return console.misunderstood(wrong);
    }
    if (out == null && what.isSite()) {
      return console.misunderstood("--archive: -o is needed with it, to say where the results go");
    }
    Path folder = out == null ? beside(choices.book()) : out;
    Job.Settings settings = choices.settings(here);
    return what.with(
        here,
        book -> write(console, Job.answer(book, settings, console.progress()), folder),
        (open, site) ->
            write(console, Job.answer(open, site, settings, console.progress()), folder));
  }

  private static int write(Console console, Job.Outcome outcome, Path folder) {
    return switch (outcome) {
      case Job.Outcome.Refused refused -> console.refused(refused);
      case Job.Outcome.Answered answered -> write(console, answered, folder);
    };
  }

  private static int write(Console console, Job.Outcome.Answered answered, Path folder) {
    SortedMap<String, byte[]> files = answered.files();
    return switch (ResultFolder.write(folder, files)) {
      case ResultFolder.Outcome.Written written ->
          console.answered(answered.handout(), files, written.folder());
      case ResultFolder.Outcome.Refused refused -> console.notWritten(folder, refused);
    };
  }

  private static Path beside(Path book) {
    Path file = Files.isDirectory(book) ? book.resolve("field-book.yaml") : book;
    String name = String.valueOf(file.getFileName());
    int dot = name.lastIndexOf('.');
    return file.resolveSibling((dot > 0 ? name.substring(0, dot) : name) + "-answered");
  }
}
