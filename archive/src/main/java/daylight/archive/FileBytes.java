package daylight.archive;

import daylight.archive.form.Desk;
import daylight.archive.form.FormTrouble;
import daylight.archive.form.Mark;
import daylight.archive.form.TreeReader;
import daylight.line.measure.Argument;
import daylight.line.measure.ComplaintCode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** The bytes of a file that is small enough to be a form, or a complaint. */
final class FileBytes {
  private FileBytes() {}

  static byte @Nullable [] read(Path file, Desk desk) {
    if (!Files.exists(file)) {
      return refused(FormTrouble.FILE_MISSING, desk);
    }
    if (!Files.isRegularFile(file)) {
      return refused(FormTrouble.NOT_A_FILE, desk);
    }
    try {
      if (Files.size(file) > TreeReader.LARGEST) {
        Argument limit = new Argument.Count(TreeReader.LARGEST);
        return refused(FormTrouble.TOO_LARGE, desk, limit);
      }
      try (InputStream in = Files.newInputStream(file)) {
        // One byte more than allowed: a file that grows meanwhile is still refused.
        return in.readNBytes(TreeReader.LARGEST + 1);
      }
    } catch (IOException e) {
      return refused(FormTrouble.UNREADABLE, desk, new Argument.Text(e.toString()));
    }
  }

  private static byte @Nullable [] refused(ComplaintCode code, Desk desk, Argument... arguments) {
    desk.complain(code, Mark.NOWHERE, "", arguments);
    return null;
  }
}
