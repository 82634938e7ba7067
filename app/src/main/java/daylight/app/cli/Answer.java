package daylight.app.cli;

import daylight.app.HandedFootage;
import daylight.app.Job;
import daylight.app.Progress;
import daylight.archive.ResultFolder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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
      "Writes answers.json, line.geojson, plan.svg, profile.svg, strip.svg, report.html, report.pdf,",
      "report-short.pdf on two pages, crew-cards.pdf with a sheet for each place to dig, and",
      "the pictures taken from the footage into one folder, and under maps/ site.gpkg, site.kml (where",
      "satellite fixes tie the site to the earth), site.dxf, site.xlsx, csv/ and dictionary.html, which",
      "says what is in these: whole or not at all. The same book gives the same bytes.",
      "follow-ups.ics has what is to be done or looked at again, a day each, for any calendar;",
      "pictures in stills/ are named by distance, so that their names sort along the drain.",
      "",
      "With --footage, footage/ holds what is handed over of each recording: a copy in MP4 with a chapter",
      "for everything found, chapters and captions as WebVTT, and a page of small pictures. Copies begin",
      "where the camera enters the pipe, are silent, and hold no place, day or device. This takes its time,",
      "and can be stopped: then nothing is written.",
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

  @Option(
      names = "--footage",
      description = "Write copies of the recordings to hand over, too, into footage/.")
  private boolean footage;

  @Option(
      names = "--sound",
      description =
          "With --footage: copies with their sound; default: silent. Rooms and voices are on it.")
  private boolean sound;

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
    if (sound && !footage) {
      return console.misunderstood("--sound: it goes with --footage");
    }
    if (out == null && what.isSite()) {
      return console.misunderstood("--archive: -o is needed with it, to say where the results go");
    }
    Path folder = out == null ? beside(choices.book()) : out;
    Job.Settings settings = choices.settings(here);
    if (!footage) {
      return answer(here, settings, console, console.progress(), null, folder);
    }
    try (Halt halt = Halt.begin()) {
      Progress progress = console.progress();
      Progress watched = (step, what) -> halt.over(progress.begin(step, what));
      return answer(here, settings, console, watched, halt, folder);
    }
  }

  /**
   * @param halt who may end it; null where copies of recordings are not wanted
   */
  private int answer(
      CommandSpec here,
      Job.Settings settings,
      Console console,
      Progress progress,
      @Nullable Halt halt,
      Path folder) {
    return what.with(
        here,
        book -> write(console, Job.answer(book, settings, progress), progress, halt, folder),
        (open, site) ->
            write(console, Job.answer(open, site, settings, progress), progress, halt, folder));
  }

  private int write(
      Console console, Job.Outcome outcome, Progress progress, @Nullable Halt halt, Path folder) {
    if (halt != null && halt.asked()) {
      return console.stopped();
    }
    return switch (outcome) {
      case Job.Outcome.Refused refused -> console.refused(refused);
      case Job.Outcome.Answered answered ->
          write(
              console,
              answered,
              halt == null ? null : new HandedFootage(answered, sound, progress),
              folder);
    };
  }

  private static int write(
      Console console, Job.Outcome.Answered answered, @Nullable HandedFootage handed, Path folder) {
    SortedMap<String, byte[]> files = answered.files();
    return switch (ResultFolder.write(folder, files, room -> handed == null || handed.fill(room))) {
      case ResultFolder.Outcome.Written written ->
          console.answered(
              answered.handout(),
              files.keySet(),
              written.folder(),
              handed == null ? List.of() : handed.told());
      case ResultFolder.Outcome.Refused refused -> console.notWritten(folder, refused);
      case ResultFolder.Outcome.NotWanted _ -> console.stopped();
    };
  }

  private static Path beside(Path book) {
    Path file = Files.isDirectory(book) ? book.resolve("field-book.yaml") : book;
    String name = String.valueOf(file.getFileName());
    int dot = name.lastIndexOf('.');
    return file.resolveSibling((dot > 0 ? name.substring(0, dot) : name) + "-answered");
  }
}
