package daylight.app.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.archive.MediaFiles;
import daylight.archive.Sha256;
import daylight.archive.store.Archive;
import daylight.archive.store.By;
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

  /** Copies what lies in the book's folder and says what does not; a row for each file. */
  void keep(FieldBook whole, Path book, ArrayNode rows) throws IOException {
    List<Media> all =
        whole.visits().stream().flatMap(visit -> visit.papers().media().stream()).toList();
    Path folder = book.toAbsolutePath().resolveSibling("");
    for (Media media : all) {
      ObjectNode row = rows.addObject().put("file", media.file());
      String outcome = keep(whole.id().uuid(), media, folder, row);
      row.put("outcome", outcome);
      archive.say(here, "cli.archive.media_" + outcome, new Argument.Text(media.file()));
    }
  }

  private String keep(UUID book, Media media, Path folder, ObjectNode row) throws IOException {
    Path file = folder.resolve(media.file());
    // A link that leads out of the folder is not followed.
    if (!Files.isRegularFile(file) || !MediaFiles.isWithin(folder, file)) {
      return "missing";
    }
    Sha256 content = open.media().take(file);
    row.put("sha256", content.hex());
    if (media.sha256() != null && !media.sha256().equals(content.hex())) {
      return "other";
    }
    boolean same = content.equals(open.mediaOf(book).get(media.file()));
    open.nameMedia(book, media.file(), content, who);
    return same ? "same" : "kept";
  }
}
