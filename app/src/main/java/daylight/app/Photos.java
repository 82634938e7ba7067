package daylight.app;

import daylight.app.track.BookFiles;
import daylight.archive.ReadBook;
import daylight.footage.FootageTrouble;
import daylight.footage.Raster;
import daylight.footage.Remark;
import daylight.footage.Thumbnail;
import daylight.footage.codec.Jpeg;
import daylight.footage.photo.Photo;
import daylight.line.book.Finding;
import daylight.line.book.Papers.Media;
import daylight.line.book.Visit;
import daylight.line.measure.Argument;
import daylight.line.measure.Complaint;
import daylight.report.shots.Picture;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The photographs that a book gives for its findings, made anew from their pixels alone: upright,
 * at most {@value #ACROSS} pixels across, and without the place, day or device that the files hold.
 */
final class Photos {
  private static final int ACROSS = 1280;

  private final ReadBook read;
  private final BookFiles files;
  private final Visit visit;
  private final List<Complaint> complaints = new ArrayList<>();
  private final StillNames names;

  /**
   * @param files where those lie that it names
   * @param visit the one that is judged
   * @param names what its pictures are called
   */
  Photos(ReadBook read, BookFiles files, Visit visit, StillNames names) {
    this.read = read;
    this.files = files;
    this.visit = visit;
    this.names = names;
  }

  /** What is wrong with them, after {@link #all}. */
  List<Complaint> complaints() {
    return complaints;
  }

  /** Every photograph of a finding, in the order of the findings. */
  List<daylight.report.shots.Photo> all() {
    List<daylight.report.shots.Photo> photos = new ArrayList<>();
    for (var pass : visit.passes()) {
      for (Finding finding : pass.findings()) {
        for (String label : finding.stills()) {
          media(label).flatMap(media -> photo(finding, media)).ifPresent(photos::add);
        }
      }
    }
    return photos;
  }

  private Optional<Media> media(String label) {
    return visit.papers().media().stream()
        .filter(media -> media.label().equals(label) && media.kind() == Media.Kind.PHOTO)
        .findFirst();
  }

  private Optional<daylight.report.shots.Photo> photo(Finding finding, Media media) {
    Path file = file(media);
    if (file == null) {
      return Optional.empty();
    }
    try {
      Optional<Photo> photo = Photo.read(file);
      if (photo.isEmpty()) {
        complain(media, Remark.of(FootageTrouble.NOT_A_PHOTO));
        return Optional.empty();
      }
      Raster small = Thumbnail.of(photo.get().picture(), ACROSS);
      return Optional.of(
          new daylight.report.shots.Photo(
              names.name(finding, media.label()),
              finding.label(),
              media.label(),
              photo.get().taken(),
              photo.get().picture().width(),
              new Picture(small.width(), small.height(), Jpeg.of(small))));
    } catch (IOException e) {
      complain(
          media,
          Remark.of(FootageTrouble.UNREADABLE, new Argument.Text(String.valueOf(e.getMessage()))));
      return Optional.empty();
    }
  }

  /** The file; null where it is not there, of which the reader has complained. */
  private @Nullable Path file(Media media) {
    return files.find(media);
  }

  private void complain(Media media, Remark remark) {
    complaints.add(remark.at(read.place(media.id(), "file")));
  }
}
