package daylight.app.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.archive.FieldBookWriter;
import daylight.archive.ReadBook;
import daylight.archive.Sha256;
import daylight.archive.store.Archive;
import daylight.archive.store.ArchiveTrouble;
import daylight.archive.store.KeptSite;
import daylight.line.book.Catalogue;
import daylight.line.book.FieldBook;
import daylight.line.book.Papers.Media;
import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.TreeMap;
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

  @Option(
      names = "--with-media",
      description = "Write the kept recordings and photographs beside it; none is written over.")
  private boolean withMedia;

  @Mixin private OwnKinds kinds = new OwnKinds();

  @Mixin private ArchiveChoice archive = new ArchiveChoice();

  @Spec private @Nullable CommandSpec spec;

  @Override
  public Integer call() {
    CommandSpec here = ArchiveChoice.known(spec);
    return kinds.with(
        Console.of(here, archive.json()),
        known ->
            archive.open(
                here,
                false,
                open ->
                    OneSite.of(here, archive, open, site, one -> export(here, open, one, known))));
  }

  private int export(CommandSpec here, Archive open, KeptSite one, Catalogue known) {
    FieldBook book = open.book(one.book(), known).map(ReadBook::book).orElse(null);
    if (book == null) {
      throw new IllegalStateException("a kept book cannot be read: " + one.book());
    }
    try {
      Files.write(
          out,
          FieldBookWriter.write(book, known).getBytes(StandardCharsets.UTF_8),
          StandardOpenOption.CREATE_NEW);
    } catch (FileAlreadyExistsException e) {
      Statement why = Statement.of(ArchiveTrouble.THERE_ALREADY, new Argument.Text(out.toString()));
      return archive.refused(here, why, ExitCode.NOT_WRITTEN);
    } catch (IOException e) {
      return Console.of(here, archive.json()).notWritten(out, e);
    }
    archive.say(here, "cli.archive.exported", new Argument.Text(out.toString()));
    ObjectNode reply = JsonReply.reply("exported").put("file", out.toString());
    try {
      if (withMedia) {
        media(here, open, book, reply);
      }
    } catch (IOException e) {
      return Console.of(here, archive.json()).notWritten(out, e);
    }
    archive.json(here, reply);
    return ExitCode.DONE;
  }

  private void media(CommandSpec here, Archive open, FieldBook book, ObjectNode reply)
      throws IOException {
    Map<String, Sha256> kept = new TreeMap<>(open.mediaOf(book.id().uuid()));
    kept.keySet()
        .retainAll(
            book.visits().stream()
                .flatMap(visit -> visit.papers().media().stream())
                .map(Media::file)
                .toList());
    ArrayNode rows = reply.putArray("media");
    for (Map.Entry<String, Sha256> one : kept.entrySet()) {
      Path file = out.resolveSibling(one.getKey());
      Path content = open.media().file(one.getValue()).orElse(null);
      String outcome = "missing";
      if (content != null && Files.exists(file)) {
        outcome = "there";
      } else if (content != null) {
        write(content, file.toAbsolutePath());
        outcome = "written";
      }
      rows.addObject().put("file", one.getKey()).put("outcome", outcome);
      archive.say(here, "cli.archive.media_" + outcome, new Argument.Text(one.getKey()));
    }
  }

  /** What is cut off leaves nothing under the file's name. */
  private static void write(Path content, Path file) throws IOException {
    Path folder = Files.createDirectories(file.resolveSibling(""));
    Path part = Files.createTempFile(folder, ".part", "");
    try {
      Files.copy(content, part, StandardCopyOption.REPLACE_EXISTING);
      Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(part);
    }
  }
}
