package daylight.app.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.archive.store.Archive;
import daylight.archive.store.By;
import daylight.archive.store.Sha256;
import daylight.line.book.FieldBook;
import daylight.line.book.Papers.Media;
import daylight.line.measure.Argument;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import picocli.CommandLine.Model.CommandSpec;

/** The files that a book names, into the archive. */
final class KeptMedia {
  private final ArchiveChoice archive;
  private final CommandSpec here;
  private final Archive open;
  private final By who;

  KeptMedia(ArchiveChoice archive, CommandSpec here, Archive open, By who) {
    this.archive = archive;
    this.here = here;
    this.open = open;
    this.who = who;
  }

  /**
   * Copies what lies beside the book and says what does not; answers with the reply given, to which
   * the files are added.
   */
  int keep(FieldBook whole, Path book, ObjectNode reply) {
    ArrayNode kept = reply.putArray("media");
    List<Media> all =
        whole.visits().stream().flatMap(visit -> visit.papers().media().stream()).toList();
    for (Media media : all) {
      Path file = book.resolveSibling(media.file());
      ObjectNode row = kept.addObject().put("file", media.file());
      try {
        row.put("outcome", keep(whole.id().uuid(), media, file, row));
      } catch (IOException e) {
        return Console.of(here, archive.json()).notWritten(open.folder(), e);
      }
    }
    archive.json(here, reply);
    return ExitCode.DONE;
  }

  private String keep(UUID book, Media media, Path file, ObjectNode row) throws IOException {
    Argument name = new Argument.Text(media.file());
    if (!Files.isRegularFile(file)) {
      archive.say(here, "cli.archive.media_missing", name);
      return "missing";
    }
    Sha256 content = open.media().take(file);
    row.put("sha256", content.hex());
    if (media.sha256() != null && !media.sha256().equals(content.hex())) {
      archive.say(here, "cli.archive.media_other", name);
      return "other";
    }
    boolean same = content.equals(open.media(book).get(media.file()));
    open.name(book, media.file(), content, who);
    archive.say(here, same ? "cli.archive.media_same" : "cli.archive.media_kept", name);
    return same ? "same" : "kept";
  }
}
