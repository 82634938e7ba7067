package daylight.app;

import daylight.archive.LetterTrouble;
import daylight.archive.MediaFiles;
import daylight.footage.Raster;
import daylight.footage.Thumbnail;
import daylight.footage.codec.Jpeg;
import daylight.footage.photo.Photo;
import daylight.line.measure.Argument;
import daylight.line.measure.Complaint;
import daylight.line.measure.FilePlace;
import daylight.report.shots.Picture;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The picture at the head of a letter, made small enough to travel with every page. */
final class Logo {
  /** Twice as many as a logo of 60 mm has at 150 a inch. */
  private static final int ACROSS = 720;

  private Logo() {}

  /**
   * What became of it.
   *
   * @param picture null where there is none to show
   * @param complaints why not
   */
  record Read(@Nullable Picture picture, List<Complaint> complaints) {
    Read {
      complaints = List.copyOf(complaints);
    }
  }

  /** The file; empty where there is none of that name within the folder of the letterhead. */
  static Optional<Path> file(Path letterhead, String logo) {
    try {
      Path folder = letterhead.toAbsolutePath().resolveSibling(".").normalize();
      Path file = folder.resolve(logo);
      return Files.isRegularFile(file) && MediaFiles.isWithin(folder, file)
          ? Optional.of(file)
          : Optional.empty();
    } catch (InvalidPathException | IOException e) {
      return Optional.empty();
    }
  }

  /**
   * The logo that a letterhead names.
   *
   * @param letterhead its file
   * @param logo as the letterhead names it
   */
  static Read read(Path letterhead, String logo) {
    Path file = file(letterhead, logo).orElse(null);
    if (file == null) {
      return none(LetterTrouble.LOGO_MISSING, letterhead, logo);
    }
    try {
      Optional<Photo> photo = Photo.read(file);
      if (photo.isEmpty()) {
        return none(LetterTrouble.LOGO_NO_PICTURE, letterhead, logo);
      }
      Raster small = Thumbnail.of(photo.get().picture(), ACROSS);
      return new Read(new Picture(small.width(), small.height(), Jpeg.of(small)), List.of());
    } catch (IOException e) {
      return none(LetterTrouble.LOGO_NO_PICTURE, letterhead, logo);
    }
  }

  private static Read none(LetterTrouble why, Path letterhead, String logo) {
    return new Read(
        null,
        List.of(
            new Complaint(
                why,
                FilePlace.at("logo").withPosition(letterhead.toString(), 0, 0),
                List.of(new Argument.Text(logo)))));
  }
}
