package daylight.app;

import daylight.app.track.BookFiles;
import daylight.archive.FileTrouble;
import daylight.archive.ReadBook;
import daylight.archive.Sha256;
import daylight.archive.store.Archive;
import daylight.line.book.Catalogue;
import daylight.line.book.Papers.Media;
import daylight.line.measure.Argument;
import daylight.line.measure.Complaint;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * A site of the archive as it is now, with where the files lie that its book names.
 *
 * @param read with a complaint of each file that is not kept, or is not the one it should be
 */
record SiteOfArchive(ReadBook read, BookFiles files) {
  /** Refused: an identity of which no book is kept. */
  static SiteOfArchive of(Archive archive, UUID book, Catalogue catalogue) {
    ReadBook read =
        archive
            .book(book, catalogue)
            .orElseThrow(() -> new IllegalArgumentException(book.toString()));
    Map<String, Sha256> kept = archive.mediaOf(book);
    Map<String, Path> named = new HashMap<>();
    kept.forEach(
        (name, content) -> archive.media().file(content).ifPresent(at -> named.put(name, at)));
    List<Complaint> complaints = new ArrayList<>(read.complaints());
    if (read.book() != null) {
      read.book().visits().stream()
          .flatMap(visit -> visit.papers().media().stream())
          .forEach(media -> check(read, media, kept, named, complaints));
    }
    complaints.sort(null);
    ReadBook checked = new ReadBook(read.book(), complaints, read.places());
    return new SiteOfArchive(checked, new BookFiles(null, named));
  }

  private static void check(
      ReadBook read,
      Media media,
      Map<String, Sha256> kept,
      Map<String, Path> named,
      List<Complaint> complaints) {
    Argument name = new Argument.Text(media.file());
    Sha256 content = kept.get(media.file());
    if (content == null || !named.containsKey(media.file())) {
      complaints.add(
          new Complaint(FileTrouble.FILE_MISSING, read.place(media.id(), "file"), List.of(name)));
    } else if (media.sha256() != null && !media.sha256().equals(content.hex())) {
      Argument found = new Argument.Text(content.hex());
      complaints.add(
          new Complaint(
              FileTrouble.FILE_CHANGED, read.place(media.id(), "sha256"), List.of(name, found)));
    }
  }
}
