package daylight.archive;

import daylight.archive.form.Fields;
import daylight.archive.form.FormTrouble;
import daylight.line.book.Papers;
import daylight.line.measure.Argument;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.jspecify.annotations.Nullable;

/** Checks the files that a book names: inside its folder, there, and unchanged. */
final class MediaFiles {
  private final @Nullable Path folder;

  /**
   * @param folder the book's own; null when it has none, and then files are not looked for
   */
  MediaFiles(@Nullable Path folder) {
    this.folder = folder;
  }

  void check(Fields row, Papers.Media media) {
    String digest = media.sha256();
    if (digest != null && !digest.matches("[0-9a-f]{64}")) {
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

  /** Whether a name leads out of the folder on any system, whichever this one is. */
  private static boolean leadsOut(String name) {
    String slashed = name.replace('\\', '/');
    return slashed.startsWith("/")
        || slashed.matches("[A-Za-z]:.*")
        || ("/" + slashed + "/").contains("/../");
  }

  private static void look(Fields row, Papers.Media media, Path folder) {
    Argument name = new Argument.Text(media.file());
    try {
      Path file = folder.resolve(media.file());
      if (!Files.isRegularFile(file)) {
        row.complain(FileTrouble.FILE_MISSING, "file", name);
      } else if (!file.toRealPath().startsWith(folder.toRealPath())) {
        row.complain(FileTrouble.FILE_OUTSIDE, "file", name);
      } else if (media.sha256() != null) {
        String found = digest(file);
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

  private static String digest(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file);
        DigestInputStream digesting =
            new DigestInputStream(in, MessageDigest.getInstance("SHA-256"))) {
      digesting.transferTo(java.io.OutputStream.nullOutputStream());
      return HexFormat.of().formatHex(digesting.getMessageDigest().digest());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
