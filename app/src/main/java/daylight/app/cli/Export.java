package daylight.app.cli;

import daylight.archive.FieldBookWriter;
import daylight.archive.ReadBook;
import daylight.archive.store.Archive;
import daylight.archive.store.ArchiveTrouble;
import daylight.archive.store.KeptSite;
import daylight.line.book.FieldBook;
import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A book out of the archive, as a file. */
@Command(
    name = "export",
    mixinStandardHelpOptions = true,
    description = {
      "Write a book of the archive as a file that answer and keep read.",
      "",
      "With every identity and every value in the words it was written in; comments are not kept."
    })
final class Export implements Callable<Integer> {
  @Parameters(
      paramLabel = "SITE",
      description = "Part of its name or address that no other has, or the identity of its book.")
  private String site = "";

  @Option(
      names = {"-o", "--out"},
      paramLabel = "FILE",
      required = true,
      description = "The file to write; it must not be there yet.")
  private Path out = Path.of("field-book.yaml");

  @Mixin private ArchiveChoice archive = new ArchiveChoice();

  @Spec private @Nullable CommandSpec spec;

  @Override
  public Integer call() {
    CommandSpec here = ArchiveChoice.known(spec);
    return archive.open(here, false, open -> export(here, open));
  }

  private int export(CommandSpec here, Archive open) {
    List<KeptSite> found =
        open.sites("").stream().filter(s -> s.book().toString().equals(site)).toList();
    if (found.isEmpty()) {
      found = open.sites(site);
    }
    if (found.size() != 1) {
      return archive.refused(here, notOne(found), ExitCode.BOOK_REFUSED);
    }
    FieldBook book = open.book(found.getFirst().book()).map(ReadBook::book).orElse(null);
    if (book == null) {
      throw new IllegalStateException("a kept book cannot be read: " + found.getFirst().book());
    }
    try {
      Files.write(
          out,
          FieldBookWriter.write(book).getBytes(StandardCharsets.UTF_8),
          StandardOpenOption.CREATE_NEW);
    } catch (FileAlreadyExistsException e) {
      Statement why = Statement.of(ArchiveTrouble.THERE_ALREADY, new Argument.Text(out.toString()));
      return archive.refused(here, why, ExitCode.NOT_WRITTEN);
    } catch (IOException e) {
      return Console.of(here, archive.json()).notWritten(out, e);
    }
    archive.say(here, "cli.archive.exported", new Argument.Text(out.toString()));
    archive.json(here, JsonReply.reply("exported").put("file", out.toString()));
    return ExitCode.DONE;
  }

  private Statement notOne(List<KeptSite> found) {
    Argument called = new Argument.Text(site);
    return found.isEmpty()
        ? Statement.of(ArchiveSays.NO_SITE, called)
        : Statement.of(
            ArchiveSays.SEVERAL_SITES,
            called,
            new Argument.Choices(
                found.stream().limit(5).map(s -> s.name() + " (" + s.book() + ")").toList()));
  }
}
