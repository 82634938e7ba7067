package daylight.archive;

import daylight.archive.form.Fields;
import daylight.archive.form.FormTrouble;
import daylight.line.book.Papers;
import daylight.line.measure.Argument;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** Checks the files that a book names: inside its folder, there, and unchanged. */
public final class MediaFiles {
  /** Of a label in a file's name; some systems end at 255 bytes for all of it. */
  private static final int LONGEST = 40;

  private final @Nullable Path folder;

  /**
   * @param folder the book's own; null when it has none, and then files are not looked for
   */
  MediaFiles(@Nullable Path folder) {
    this.folder = folder;
  }

  void check(Fields row, Papers.Media media) {
    String digest = media.sha256();
    if (digest != null && !Sha256.isOne(digest)) {
      row.complain(FileTrouble.NOT_A_DIGEST, "sha256", new Argument.Text(digest));
      return;
    }
    if (leadsOut(media.file())) {
      row.complain(FileTrouble.FILE_OUTSIDE, "file", new Argument.Text(media.file()));
      return;
    }
    if (folder != null && row.sound()) {
      look(row, media, folder);
    }
  }

  /**
   * A label as part of a file's name: a label may hold anything, a file's name may not. Letters
   * beyond the Latin ones, and what is longer than any system takes, are lost; who needs names that
   * differ compares them.
   */
  public static String plain(String label) {
    String plain = label.replaceAll("[^A-Za-z0-9_-]+", "-");
    return plain.substring(0, Math.min(LONGEST, plain.length()));
  }

  /** Whether a name leads out of the folder on any system, whichever this one is. */
  public static boolean leadsOut(String name) {
    String slashed = name.replace('\\', '/');
    return slashed.startsWith("/")
        || slashed.matches("[A-Za-z]:.*")
        || ("/" + slashed + "/").contains("/../");
  }

  /** Whether a file that is there lies in the folder, also where links lead. */
  public static boolean isWithin(Path folder, Path file) throws IOException {
    return file.toRealPath().startsWith(folder.toRealPath());
  }

  private static void look(Fields row, Papers.Media media, Path folder) {
    Argument name = new Argument.Text(media.file());
    try {
      Path file = folder.resolve(media.file());
      if (!Files.isRegularFile(file)) {
        row.complain(FileTrouble.FILE_MISSING, "file", name);
      } else if (!isWithin(folder, file)) {
        row.complain(FileTrouble.FILE_OUTSIDE, "file", name);
      } else if (media.sha256() != null) {
        String found = Sha256.of(file).hex();
        if (!found.equals(media.sha256())) {
          row.complain(FileTrouble.FILE_CHANGED, "sha256", name, new Argument.Text(found));
        }
      }
    } catch (InvalidPathException e) {
      row.complain(FileTrouble.FILE_MISSING, "file", name);
    } catch (IOException e) {
      row.complain(FormTrouble.UNREADABLE, "file", new Argument.Text(e.toString()));
    }
  }
}
