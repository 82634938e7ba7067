package daylight.app.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.app.BookInFilm;
import daylight.archive.FieldBookReader;
import daylight.archive.ReadBook;
import daylight.archive.store.Archive;
import daylight.archive.store.By;
import daylight.archive.store.Keeping;
import daylight.line.book.Catalogue;
import daylight.line.book.FieldBook;
import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import java.io.IOException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Puts a field book into the archive, or what is new in it. */
@Command(
    name = "keep",
    mixinStandardHelpOptions = true,
    description = {
      "Keep a field book in the archive: its entries, each with its history.",
      "",
      "A book that is kept already gets a revision of every entry that says something else; what it",
      "has no more is withdrawn, and stays in the history. All of it is kept or nothing. Recordings and",
      "photographs in the book's folder are copied into the archive afterwards, each content once."
    })
final class Keep implements Callable<Integer> {
  @Parameters(
      paramLabel = "BOOK",
      description = "A field book, or a folder that holds field-book.yaml.")
  private Path book = Path.of("field-book.yaml");

  @Option(
      names = "--by",
      paramLabel = "NAME",
      description = "Who keeps it; default: who is logged in.")
  private @Nullable String by;

  @Option(
      names = "--device",
      paramLabel = "NAME",
      description = "On which device; default: this machine's name.")
  private @Nullable String device;

  @Option(
      names = "--even-if-other",
      description = "Keep it even where most of what is kept under its name would change.")
  private boolean whatever;

  @Option(
      names = "--without-media",
      description = "Leave recordings and photographs where they are.")
  private boolean withoutMedia;

  @Mixin private OwnKinds kinds = new OwnKinds();

  @Mixin private ArchiveChoice archive = new ArchiveChoice();

  @Spec private @Nullable CommandSpec spec;

  @Override
  public Integer call() {
    CommandSpec here = ArchiveChoice.known(spec);
    Path file = Files.isDirectory(book) ? book.resolve("field-book.yaml") : book;
    Console console = Console.of(here, archive.json());
    return kinds.with(console, known -> keep(here, console, file, known));
  }

  private int keep(CommandSpec here, Console console, Path file, Catalogue known) {
    ReadBook read = FieldBookReader.read(file, known);
    FieldBook whole = read.book();
    return whole == null || !read.sound()
        ? console.refused(read.complaints(), BookInFilm.shown(whole))
        : archive.open(here, true, open -> keep(here, open, whole, file, known));
  }

  private int keep(CommandSpec here, Archive open, FieldBook whole, Path file, Catalogue known) {
    By who =
        new By(
            named(by, System.getProperty("user.name")),
            named(device, host()),
            Instant.now().truncatedTo(ChronoUnit.SECONDS));
    return switch (open.keep(whole, known, who, whatever)) {
      case Keeping.Kept kept -> {
        archive.say(
            here,
            "cli.archive.kept",
            new Argument.Text(whole.site().name()),
            new Argument.Count(kept.added()),
            new Argument.Count(kept.changed()),
            new Argument.Count(kept.withdrawn()),
            new Argument.Count(kept.same()));
        ObjectNode reply =
            JsonReply.reply("kept")
                .put("book", whole.id().uuid().toString())
                .put("added", kept.added())
                .put("changed", kept.changed())
                .put("withdrawn", kept.withdrawn())
                .put("same", kept.same());
        try {
          if (!withoutMedia) {
            new KeptMedia(archive, here, open, who).keep(whole, file, reply.putArray("media"));
          }
        } catch (IOException e) {
          yield Console.of(here, archive.json()).notWritten(open.folder(), e);
        }
        archive.json(here, reply);
        yield ExitCode.DONE;
      }
      case Keeping.NotWritten(Statement why) -> archive.refused(here, why, ExitCode.NOT_WRITTEN);
      case Keeping.LikelyAnother(int other, int of) ->
          archive.refused(
              here,
              Statement.of(
                  ArchiveSays.LIKELY_ANOTHER,
                  new Argument.Text(whole.site().name()),
                  new Argument.Count(other),
                  new Argument.Count(of)),
              ExitCode.BOOK_REFUSED);
    };
  }

  private static String named(@Nullable String given, @Nullable String usual) {
    String name = given == null ? usual : given;
    return name == null || name.isBlank() ? "unknown" : name;
  }

  private static String host() {
    try {
      return InetAddress.getLocalHost().getHostName();
    } catch (UnknownHostException e) {
      return "";
    }
  }
}
